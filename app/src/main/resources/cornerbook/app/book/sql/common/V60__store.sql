-- The store as the shop names it: a row for a rack, and another when it is named or placed otherwise or taken down. The places of a
-- rack follow from its row.
create table store_rack (
    id text primary key,
    rack_id text not null,
    turn integer not null,
    room text not null,
    pattern text not null,
    shelves integer not null check (shelves > 0),
    places integer not null check (places > 0),
    capacity integer not null check (capacity > 0),
    x_m double precision not null,
    y_m double precision not null,
    along text not null check (along in ('RIGHT', 'LEFT', 'INWARD', 'OUTWARD')),
    width_m double precision not null check (width_m >= 0),
    stands integer not null check (stands in (0, 1)),
    person text not null,
    made_at text not null
);
create unique index store_rack_by_turn on store_rack (rack_id, turn);

-- Who laid a set where, and who took it out for whom. Where it lies now stands with the set itself.
create table set_move (
    id text primary key,
    vehicle_id text not null,
    set_id text not null,
    place_in_list integer not null,
    move text not null check (move in ('PUT', 'OUT_TO_CAR', 'OUT_TO_CUSTOMER')),
    from_place text,
    to_place text,
    -- The visit that it went out for.
    visit_id text references visit (id),
    person text not null,
    made_at text not null,
    foreign key (vehicle_id, set_id) references wheel_set (vehicle_id, id),
    check ((move = 'PUT') = (to_place is not null)),
    check ((move = 'OUT_TO_CAR') = (visit_id is not null))
);
create unique index set_move_by_place on set_move (vehicle_id, set_id, place_in_list);

-- How a set was when it was taken into the store.
create table set_intake (
    id text primary key,
    vehicle_id text not null,
    set_id text not null,
    place_in_list integer not null,
    lies text not null check (lies in ('HUNG', 'STACKED', 'STANDING')),
    on_rims integer not null check (on_rims in (0, 1)),
    -- Gauge; of all its tyres, as it is stored.
    pressure_kpa double precision check (pressure_kpa > 0),
    person text not null,
    made_at text not null,
    foreign key (vehicle_id, set_id) references wheel_set (vehicle_id, id)
);
create unique index set_intake_by_place on set_intake (vehicle_id, set_id, place_in_list);

-- A count of what lies in the store.
create table stock_count (
    id text primary key,
    person text not null,
    begun_at text not null
);

-- What was scanned at a place. A code that is no wheel of the book has no set.
create table stock_scan (
    id text primary key,
    count_id text not null references stock_count (id),
    place_in_list integer not null,
    place text not null,
    code text not null,
    vehicle_id text,
    set_id text,
    person text not null,
    made_at text not null,
    foreign key (vehicle_id, set_id) references wheel_set (vehicle_id, id)
);
create unique index stock_scan_by_place on stock_scan (count_id, place_in_list);

create table stock_count_end (
    count_id text primary key references stock_count (id),
    person text not null,
    ended_at text not null
);

-- What the count found otherwise than the book had it when the count ended.
create table stock_difference (
    id text primary key,
    count_id text not null references stock_count (id),
    place_in_list integer not null,
    kind text not null check (kind in ('MISSING', 'ELSEWHERE', 'UNKNOWN')),
    code text not null,
    vehicle_id text,
    set_id text,
    book_place text,
    found_place text,
    foreign key (vehicle_id, set_id) references wheel_set (vehicle_id, id)
);
create unique index stock_difference_by_place on stock_difference (count_id, place_in_list);

-- What was done about it.
create table stock_answer (
    difference_id text primary key references stock_difference (id),
    answer text not null check (answer in ('BOOK_FOLLOWS', 'LAID_BACK', 'NOT_HERE', 'LEFT_SO')),
    person text not null,
    made_at text not null
);
