-- Classes whose guests are forgotten. While one stands here its events may lose their words, and nothing else about them
-- may change.
create table forgotten_class (
    class_id     text    not null primary key,
    forgotten_ms integer not null,
    by_age       integer not null check (by_age in (0, 1))   -- 1: by the setting; 0: somebody asked for it
) strict, without rowid;

drop trigger event_is_never_changed;

create trigger event_is_only_changed_to_forget before update on event
when old.type not in ('create', 'set-up', 'add-seat', 'correct-guest', 'arrive', 'note')
    or new.class_id <> old.class_id or new.seq <> old.seq or new.command_id <> old.command_id
    or new.type <> old.type or new.by_whom <> old.by_whom or new.at_ms <> old.at_ms
    or new.recorded_ms <> old.recorded_ms or new.device <> old.device
    or not exists (select 1 from forgotten_class where class_id = old.class_id)
begin
    select raise(abort, 'events are never changed');
end;
