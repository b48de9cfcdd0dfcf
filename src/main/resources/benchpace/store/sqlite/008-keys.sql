-- What still lets a device in, and what still lets a guest speak for a seat: by SHA-256. The keys and codes themselves
-- are told once and never kept.
create table pairing_key (
    key_hash text    not null primary key,
    role     text    not null,
    made_ms  integer not null
) strict, without rowid;

create table seat_code (
    code_hash text    not null primary key,
    class_id  text    not null,
    seat      integer not null
) strict, without rowid;

create index seat_code_of_class on seat_code (class_id);

-- What people call a device: "Counter tablet".
alter table session add column name text not null default '';
