-- Keys are UUID version 7, made by the application. Documents are kept as the very bytes they are served as, so that
-- their SHA-256 (the digest, also their ETag) holds for ever.

create table catalogue (
    id            uuid primary key,
    name          text        not null unique,
    latest        integer     not null,
    latest_digest text        not null
);

create table catalogue_version (
    id         uuid primary key,
    name       text        not null references catalogue (name),
    version    integer     not null check (version > 0),
    created_at timestamptz not null,
    digest     text        not null,
    document   bytea       not null,
    unique (name, version)
);

-- head_* name the latest revision; before the first one, number 0 and the project's own digest.
create table project (
    id               uuid primary key,
    name             text        not null,
    description      text,
    created_at       timestamptz not null,
    head_number      integer     not null check (head_number >= 0),
    head_digest      text        not null,
    idempotency_key  text unique,
    request_digest   text        not null
);

create table revision (
    id                uuid primary key,
    project_id        uuid        not null references project (id),
    number            integer     not null check (number > 0),
    created_at        timestamptz not null,
    message           text        not null,
    author            text        not null,
    code_basis        text        not null,
    catalogue_name    text        not null,
    catalogue_version integer     not null,
    engine_version    text        not null,
    buildable         boolean     not null,
    digest            text        not null,
    document          bytea       not null,
    unique (project_id, number),
    foreign key (catalogue_name, catalogue_version) references catalogue_version (name, version)
);
