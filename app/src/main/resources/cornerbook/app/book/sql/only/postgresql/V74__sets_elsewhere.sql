-- Rooms of the store that are elsewhere, and how long a set takes to come from there; what was said of a room last counts.
create table store_room (
    id text primary key,
    -- The name of the room as names are compared.
    room_key text not null,
    turn integer not null,
    elsewhere integer not null check (elsewhere in (0, 1)),
    working_days integer check (working_days >= 0),
    last_hour text,
    person text not null,
    made_at text not null,
    check ((elsewhere = 1) = (working_days is not null)),
    check (elsewhere = 1 or last_hour is null)
);
create unique index store_room_by_turn on store_room (room_key, turn);

-- That a set was asked for from there, or came. It counts until the set is moved or is on its car again.
create table set_bringing (
    id text primary key,
    vehicle_id text not null,
    set_id text not null,
    place_in_list integer not null,
    step text not null check (step in ('ASKED', 'HERE', 'NOT_ASKED')),
    -- How many moves the set had then.
    moves integer not null,
    -- At the shop.
    day text not null,
    -- When it was to come.
    comes_on text,
    person text not null,
    made_at text not null,
    foreign key (vehicle_id, set_id) references wheel_set (vehicle_id, id),
    check ((step = 'ASKED') = (comes_on is not null))
);
create unique index set_bringing_by_place on set_bringing (vehicle_id, set_id, place_in_list);

create trigger store_room_stays before update or delete on store_room
for each row execute function refuse_change_of_store();

create trigger store_room_is_never_emptied before truncate on store_room
for each statement execute function refuse_change_of_store();

create trigger set_bringing_stays before update or delete on set_bringing
for each row execute function refuse_change_of_store();

create trigger set_bringing_is_never_emptied before truncate on set_bringing
for each statement execute function refuse_change_of_store();
