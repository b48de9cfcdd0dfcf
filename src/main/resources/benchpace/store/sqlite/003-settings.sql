create table setting (
    key   text not null primary key,
    value text not null
) strict, without rowid;
