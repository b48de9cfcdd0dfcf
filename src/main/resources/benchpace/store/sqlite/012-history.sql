-- What a closed class came to, so that many can be looked back on together: figures and ids, nobody's name. Each row can
-- be made anew from the class's events, and is when the class or the reckoning has changed.
create table class_summary (
    class_id         text    not null primary key,
    seq              integer not null,   -- the class's last event that it rests on
    reckoning        integer not null,   -- the version of how its figures are made
    promised_ms      integer not null,
    ended_ms         integer not null,
    planned_ready_ms integer not null,
    ready_ms         integer,            -- null where no candle was poured
    ready_by         text    not null,   -- who told when the last candle was ready
    idle_seats       integer not null,   -- that had a wait to fill
    idle_minutes     integer not null,   -- in which they had nothing to do, of all together
    flags            integer not null,
    flags_answered   integer not null,
    answer_minutes   real,               -- the median; null where none was answered
    flags_wrong      integer not null,
    cures            integer not null,   -- candles tried by hand
    cures_in_range   integer not null,
    cure_minutes     real                -- later than foretold, in the mean; null without any
) strict, without rowid;

create table class_lost (
    class_id text    not null,
    ordinal  integer not null,           -- the most first, from 0
    cause    text    not null,
    step_id  text    not null,           -- empty where it is no step's
    minutes  real    not null,
    primary key (class_id, ordinal)
) strict, without rowid;
