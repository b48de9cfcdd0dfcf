-- What happened, in order. Rows are added, never changed: everything else can be rebuilt from them.
create table event (
    class_id    text    not null,
    seq         integer not null check (seq >= 1),
    command_id  text    not null,
    type        text    not null,
    by_whom     text    not null,
    at_ms       integer not null,   -- when it happened in the room, milliseconds since 1970 UTC
    recorded_ms integer not null,   -- when it was written down
    payload     text    not null,   -- the fields of the event, JSON
    primary key (class_id, seq),
    unique (class_id, command_id)
) strict, without rowid;

create trigger event_is_never_changed before update on event
begin
    select raise(abort, 'events are never changed');
end;

create trigger event_is_never_removed before delete on event
begin
    select raise(abort, 'events are never removed');
end;

-- Two writers, or one that lost count, must not leave a hole.
create trigger event_follows_the_last before insert on event
when new.seq <> (select coalesce(max(seq), 0) + 1 from event where class_id = new.class_id)
begin
    select raise(abort, 'event does not follow the last');
end;

create index class_begins on event (recorded_ms, class_id) where seq = 1;
