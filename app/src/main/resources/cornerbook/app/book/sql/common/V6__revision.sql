-- Counts the changes of a car's history, so that what was computed from it is known to be old.
alter table vehicle add column revision integer not null default 0;
