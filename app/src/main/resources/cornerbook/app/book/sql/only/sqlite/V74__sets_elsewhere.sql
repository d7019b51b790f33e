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

create trigger store_room_is_never_updated before update on store_room
begin
    select raise(abort, 'a row of store_room is never changed; what came later is another row');
end;

create trigger store_room_is_never_deleted before delete on store_room
begin
    select raise(abort, 'a row of store_room is never deleted; what came later is another row');
end;

create trigger set_bringing_is_never_updated before update on set_bringing
begin
    select raise(abort, 'a row of set_bringing is never changed; what came later is another row');
end;

create trigger set_bringing_is_never_deleted before delete on set_bringing
begin
    select raise(abort, 'a row of set_bringing is never deleted; what came later is another row');
end;
