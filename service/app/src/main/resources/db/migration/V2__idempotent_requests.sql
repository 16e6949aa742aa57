-- A request that came with an Idempotency-Key. The row is claimed before the work begins (no status yet; then expires_at
-- ends the claim) and filled in by the transaction that holds the effect (then expires_at ends what is kept).
create table idempotent_request (
    key         text primary key,
    fingerprint text        not null,
    claim       uuid        not null,
    expires_at  timestamptz not null,
    status      integer,
    location    text,
    etag        text,
    body        bytea
);

create index idempotent_request_expiry on idempotent_request (expires_at);

-- the keys of opened projects stood with the projects before
alter table project drop column idempotency_key;
alter table project drop column request_digest;
