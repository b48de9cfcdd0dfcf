-- What the organiser said of what a class taught its room: that it counts, or that it is taken back. Of whatever
-- nothing was said the lesson counts and is new.
create table room_decision (
    class_id   text    not null primary key,
    counts     integer not null,   -- 1 it counts, 0 it is taken back
    lesson_seq integer not null,   -- the event of the class up to which the lesson went that was looked at
    decided_ms integer not null
) strict, without rowid;
