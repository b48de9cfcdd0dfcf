-- Who may tap. A token itself is never kept, only its SHA-256.
create table session (
    token_hash   text    not null primary key,
    role         text    not null,
    label        text    not null,   -- shown to people: a device, or a helper's initials
    created_ms   integer not null,
    last_seen_ms integer not null
) strict, without rowid;

create index session_by_last_seen on session (last_seen_ms);
