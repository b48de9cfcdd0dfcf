-- What is ticked off of a class's lists of the day before. What is not ticked has no row, so that the same tick sent
-- twice is one; a class that is deleted takes its ticks with it.
create table prep_tick (
    class_id text    not null,
    item     text    not null,   -- the list and the thing on it, such as place:wick; the plan may change around it
    by_whom  text    not null,   -- "instructor", or a helper's initials, which may be empty
    at_ms    integer not null,
    primary key (class_id, item)
) strict, without rowid;
