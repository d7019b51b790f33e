-- The book. Plain SQL that SQLite and PostgreSQL both take: text ids, ISO dates as text, no vendor types.

create table customer (
    id text primary key,
    name text not null,
    phone text,
    email text
);

create table vehicle (
    id text primary key,
    customer_id text not null references customer (id),
    name text not null,
    plate text not null,
    vin text,
    drive text not null check (drive in ('FRONT', 'REAR', 'ALL')),
    electric integer not null check (electric in (0, 1)),
    jurisdiction text not null,
    fastener_thread text not null,
    fastener_count integer not null,
    fastener_seat text not null,
    fastener_torque_nm double precision not null,
    retorque_after_km double precision not null,
    battery_chemistry text not null,
    battery_capacity_ah double precision not null,
    battery_cranking_a double precision,
    battery_standard text,
    battery_installed_on text
);

create table vehicle_axle (
    vehicle_id text not null references vehicle (id),
    axle text not null check (axle in ('FRONT', 'REAR')),
    axle_load_kg double precision not null,
    tyre_size text not null,
    load_index integer not null,
    speed_symbol text not null,
    placard_pressure_kpa double precision not null,
    caliper text not null,
    electric_parking_brake integer not null check (electric_parking_brake in (0, 1)),
    pad_new_mm double precision not null,
    pad_minimum_mm double precision not null,
    disc_new_mm double precision not null,
    disc_minimum_mm double precision not null,
    runout_limit_mm double precision not null,
    thickness_variation_limit_mm double precision not null,
    primary key (vehicle_id, axle)
);

create table wheel_set (
    vehicle_id text not null references vehicle (id),
    id text not null,
    place_in_list integer not null,
    season text not null check (season in ('SUMMER', 'WINTER', 'ALL_SEASON')),
    store_place text,
    primary key (vehicle_id, id)
);

create table wheel (
    tag text primary key,
    vehicle_id text not null,
    set_id text not null,
    place_in_list integer not null,
    tyre_model text not null,
    tyre_size text not null,
    load_index integer not null,
    speed_symbol text not null,
    tin text,
    directional integer not null check (directional in (0, 1)),
    "asymmetric" integer not null check ("asymmetric" in (0, 1)),
    new_depth_mm double precision not null check (new_depth_mm > 0),
    sensor_id text,
    foreign key (vehicle_id, set_id) references wheel_set (vehicle_id, id)
);

create table visit (
    id text primary key,
    vehicle_id text not null references vehicle (id),
    visit_date text not null,
    odometer_km double precision not null check (odometer_km >= 0),
    technician text,
    notes text,
    next_visit_due text
);
create index visit_by_date on visit (visit_date);
create index visit_by_vehicle on visit (vehicle_id, visit_date);

create table work_line (
    visit_id text not null references visit (id),
    place_in_list integer not null,
    line text not null,
    primary key (visit_id, place_in_list)
);

-- Which wheel stood at which corner when the car came and when it left: one wheel, one corner.
create table visit_wheel (
    visit_id text not null references visit (id),
    moment text not null check (moment in ('ARRIVED', 'LEFT')),
    corner text not null check (corner in ('LF', 'RF', 'LR', 'RR')),
    wheel_tag text not null references wheel (tag),
    primary key (visit_id, moment, corner),
    unique (visit_id, moment, wheel_tag)
);

-- Which wheel ran at which corner from which odometer to which; open while it runs.
create table fitting (
    wheel_tag text not null references wheel (tag),
    vehicle_id text not null references vehicle (id),
    corner text not null check (corner in ('LF', 'RF', 'LR', 'RR')),
    from_date text not null,
    from_odometer_km double precision not null,
    to_date text,
    to_odometer_km double precision,
    check ((to_date is null) = (to_odometer_km is null)),
    check (to_odometer_km is null or to_odometer_km >= from_odometer_km)
);
create unique index one_open_fitting_per_wheel on fitting (wheel_tag) where to_date is null;
create unique index one_open_fitting_per_corner on fitting (vehicle_id, corner) where to_date is null;

-- Append-only: a correction is a new reading that names the one it corrects, with a reason.
create table reading (
    id text primary key,
    visit_id text not null references visit (id),
    place_in_list integer not null,
    measure text not null,
    corner text check (corner in ('LF', 'RF', 'LR', 'RR')),
    wheel_tag text references wheel (tag),
    spot text check (spot in ('INNER', 'CENTRE', 'OUTER')),
    amount double precision not null,
    as_written text not null,
    corrects text references reading (id) deferrable initially deferred,
    reason text,
    check ((corrects is null) = (reason is null)),
    check (wheel_tag is null or corner is not null),
    check (wheel_tag is not null
        or measure not in ('TREAD_DEPTH', 'PRESSURE_FOUND', 'PRESSURE_SET', 'WHEEL_TORQUE'))
);
create index reading_by_visit on reading (visit_id, place_in_list);

create table retorque (
    visit_id text primary key references visit (id),
    due_odometer_km double precision not null,
    due_date text not null,
    torque_nm double precision not null,
    recorded_date text,
    recorded_odometer_km double precision,
    recorded_torque_nm double precision,
    check ((recorded_date is null) = (recorded_odometer_km is null)),
    check ((recorded_date is null) = (recorded_torque_nm is null))
);
