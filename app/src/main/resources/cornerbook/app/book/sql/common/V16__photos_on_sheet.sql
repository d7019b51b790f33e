-- What a photo belongs to, and whether the hand-over sheet shows it. A choice, no reading: it may be changed.
alter table photo add column part text;
alter table photo add column on_sheet integer not null default 0 check (on_sheet in (0, 1));
