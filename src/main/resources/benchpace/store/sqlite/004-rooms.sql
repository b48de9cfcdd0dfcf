-- What each class taught about its room: the loss multiplier (lognormal) and the ready fraction (normal). The room's
-- latest lesson is what the next class starts from.
create table room_lesson (
    room          text    not null,   -- the plan's place; empty is "this room"
    ordinal       integer not null,   -- in the order in which classes ended
    class_id      text    not null,
    log_loss_mean real    not null,
    log_loss_sd   real    not null,
    ready_mean    real    not null,
    ready_sd      real    not null,
    observations  integer not null,
    learned_ms    integer not null,
    primary key (room, ordinal),
    unique (class_id)
) strict, without rowid;

-- What a class started from, fixed when its first candle was poured, so that its forecasts can be computed again.
create table class_prior (
    class_id      text    not null primary key,
    room          text    not null,
    log_loss_mean real    not null,
    log_loss_sd   real    not null,
    ready_mean    real    not null,
    ready_sd      real    not null,
    observations  integer not null,
    lesson_seq    integer not null default 0   -- the event up to which its lesson was drawn; 0 before
) strict, without rowid;
