-- A change of a visit has the name of who made it, and the identity that it was born with at a tablet; older ones have neither.
alter table visit_change add column person text;
alter table visit_change add column entry_id text;
create index visit_change_by_entry on visit_change (entry_id);

-- A visit that was opened by mistake is kept and counts nowhere; why, and who said so, stands in visit_change.
alter table visit add column cancelled integer not null default 0 check (cancelled in (0, 1));

-- Which wheel ran where follows from the visits. Nothing read this, and it could not hold an odometer that runs back.
drop table fitting;

-- Where the car of a visit is, as somebody said by hand; it holds until something new happens at the visit.
create table visit_state (
    id text primary key,
    visit_id text not null references visit (id),
    place_in_list integer not null,
    state text not null,
    happened text not null,
    person text not null,
    made_at text not null
);
create unique index visit_state_by_place on visit_state (visit_id, place_in_list);
