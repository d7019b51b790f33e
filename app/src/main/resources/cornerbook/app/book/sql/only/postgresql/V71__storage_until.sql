-- On which day at the shop a set was moved: in the evening the moment is of another day elsewhere. Null for what was moved before the
-- book kept it.
alter table set_move add column moved_on text;

-- Until when the storage of a set is agreed or paid for; what was said last counts.
create table set_term (
    id text primary key,
    vehicle_id text not null,
    set_id text not null,
    place_in_list integer not null,
    stored_until text not null,
    person text not null,
    made_at text not null,
    foreign key (vehicle_id, set_id) references wheel_set (vehicle_id, id)
);
create unique index set_term_by_place on set_term (vehicle_id, set_id, place_in_list);
create index bill_by_day on bill (day);

create trigger set_term_stays before update or delete on set_term
for each row execute function refuse_change_of_store();

create trigger set_term_is_never_emptied before truncate on set_term
for each statement execute function refuse_change_of_store();
