-- What steps are expected to take, by plan and place, once the organiser has accepted what past classes taught.
create table step_lesson (
    plan_id     text    not null,
    place       text    not null,   -- the plan's place; empty is "this room"
    classes     integer not null,   -- how many classes taught it
    accepted_ms integer not null,
    primary key (plan_id, place)
) strict, without rowid;

create table step_belief (
    plan_id        text not null,
    place          text not null,
    step_id        text not null,
    log_shift      real not null,   -- log of the usual time over the plan's
    log_variance   real not null,   -- how sure, in the next class
    noise_variance real,            -- of one guest's log time around it; null is the general one
    primary key (plan_id, place, step_id)
) strict, without rowid;

-- What a class started from, fixed when it was first judged, so that it is judged the same again. The row without a
-- step says that it is fixed, also where nothing was accepted.
create table class_belief (
    class_id       text not null,
    step_id        text not null,
    log_shift      real,
    log_variance   real,
    noise_variance real,
    primary key (class_id, step_id)
) strict, without rowid;
