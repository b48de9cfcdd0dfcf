-- On which device an event was tapped, so that each takes back its own; empty for all that was written before.
alter table event add column device text not null default '';
