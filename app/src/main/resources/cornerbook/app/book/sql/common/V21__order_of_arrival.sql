-- Ticks and hand-overs count in the order in which the book took them; the clock of a tablet decides nothing.

-- A tick that was made without knowing that the step was taken back is kept and does not count. Of a fastener it names the wheel.
alter table work_tick add column place_in_list integer not null default 0;
alter table work_tick add column counts integer not null default 1 check (counts in (0, 1));
alter table work_tick add column wheel_tag text;
update work_tick set place_in_list = (
    select count(*) from work_tick as earlier
    where earlier.visit_id = work_tick.visit_id
    and (earlier.made_at < work_tick.made_at or (earlier.made_at = work_tick.made_at and earlier.id < work_tick.id))
);
drop index work_tick_by_visit;
create unique index work_tick_by_place on work_tick (visit_id, place_in_list);

-- The ticks and readings that a person who checked had before the eyes.
create table work_tick_seen (
    tick_id text not null references work_tick (id),
    seen_id text not null,
    primary key (tick_id, seen_id)
);

alter table departure add column place_in_list integer not null default 0;
update departure set place_in_list = (
    select count(*) from departure as earlier
    where earlier.visit_id = departure.visit_id
    and (earlier.made_at < departure.made_at or (earlier.made_at = departure.made_at and earlier.id < departure.id))
);
drop index departure_by_visit;
create unique index departure_by_place on departure (visit_id, place_in_list);

-- Born at the tablet, so that an answer that is sent again is told from another person's; older ones have none.
alter table rival_answer add column id text;
