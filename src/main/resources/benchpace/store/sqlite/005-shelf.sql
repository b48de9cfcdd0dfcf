-- What happened at the pickup shelf, in order. Rows are added; the one change ever made to a row is the erasure of a
-- guest's name and claim word from the row that put a candle there.
create table shelf_event (
    seq         integer primary key check (seq >= 1),
    command_id  text    not null unique,
    entry       integer not null check (entry >= 1),
    type        text    not null,
    at_ms       integer not null,   -- milliseconds since 1970 UTC
    payload     text    not null    -- the fields of the event, JSON
) strict;

create index shelf_event_of_entry on shelf_event (entry);

create trigger shelf_event_is_only_erased before update on shelf_event
when old.type <> 'put' or new.seq <> old.seq or new.command_id <> old.command_id or new.entry <> old.entry
    or new.type <> old.type or new.at_ms <> old.at_ms
    or json_type(new.payload, '$.claim') is not null or json_type(new.payload, '$.name') is not null
begin
    select raise(abort, 'events of the shelf are never changed but to erase words');
end;

create trigger shelf_event_is_never_removed before delete on shelf_event
begin
    select raise(abort, 'events of the shelf are never removed');
end;

create trigger shelf_event_follows_the_last before insert on shelf_event
when new.seq <> (select coalesce(max(seq), 0) + 1 from shelf_event)
begin
    select raise(abort, 'event does not follow the last');
end;
