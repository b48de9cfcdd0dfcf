-- Every version of the organiser's own plans. Rows are added, never changed: a deleted plan keeps all of them.
create table saved_plan (
    plan_id  text    not null,
    version  integer not null check (version >= 1),
    saved_ms integer not null,
    by_whom  text    not null,      -- a role, or the folder it was found in
    device   text    not null,      -- the mark of the device; empty if it was none
    plan     text    not null,      -- the plan, JSON
    primary key (plan_id, version)
) strict, without rowid;

create trigger saved_plan_is_never_changed before update on saved_plan
begin
    select raise(abort, 'versions of plans are never changed');
end;

create trigger saved_plan_is_never_removed before delete on saved_plan
begin
    select raise(abort, 'versions of plans are never removed');
end;

create trigger saved_plan_follows_the_last before insert on saved_plan
when new.version <> (select coalesce(max(version), 0) + 1 from saved_plan where plan_id = new.plan_id)
begin
    select raise(abort, 'version does not follow the last');
end;

-- Those that are not to be listed; taking the row away brings one back.
create table deleted_plan (
    plan_id    text    not null primary key,
    deleted_ms integer not null
) strict, without rowid;

-- What the plan files of the data folder held when the board last wrote or read them, by SHA-256.
create table plan_file (
    file    text not null primary key,
    plan_id text not null,
    sha256  text not null
) strict, without rowid;
