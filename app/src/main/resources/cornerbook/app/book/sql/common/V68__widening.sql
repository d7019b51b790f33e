-- By how much the bands are wider than the model's own, where the book's readings lay outside them too often.
alter table learned_wear add column widening double precision not null default 1;
