-- A project numbers its revisions; each of its branches has a head of its own. head_* name the branch's latest revision;
-- before the first one of a project, number 0 and the project's own digest.
create table branch (
    id          uuid primary key,
    project_id  uuid        not null references project (id),
    name        text        not null,
    created_at  timestamptz not null,
    start       integer,
    head_number integer     not null check (head_number >= 0),
    head_digest text        not null,
    unique (project_id, name)
);

insert into branch (id, project_id, name, created_at, head_number, head_digest)
select gen_random_uuid(), id, 'main', created_at, head_number, head_digest from project;

alter table project add column last_number integer not null default 0 check (last_number >= 0);
update project set last_number = head_number;
alter table project drop column head_number;
alter table project drop column head_digest;

alter table revision add column branch text not null default 'main';
alter table revision add column parent integer;
alter table revision add column restores integer;
update revision set parent = number - 1 where number > 1;

create table revision_label (
    project_id uuid        not null,
    number     integer     not null,
    name       text        not null,
    author     text        not null,
    set_at     timestamptz not null,
    primary key (project_id, number, name),
    foreign key (project_id, number) references revision (project_id, number)
);
