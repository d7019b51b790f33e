-- What the book has learned from all its cars. Nothing here was measured: it is computed anew, whole, each time.

create table learned (
    only_row integer primary key check (only_row = 1),
    learned_on text not null
);

-- All tyre models together stand under the empty name.
create table learned_wear (
    drive text not null check (drive in ('FRONT', 'REAR', 'ALL')),
    season text not null check (season in ('SUMMER', 'WINTER', 'ALL_SEASON')),
    tyre_model text not null,
    reading_sd_mm double precision not null,
    new_depth_sd_mm double precision not null,
    front_rate_mm_per_1000_km double precision not null,
    rear_rate_mm_per_1000_km double precision not null,
    vehicle_spread double precision not null,
    corner_spread double precision not null,
    reading_sd_error double precision not null,
    new_depth_sd_error double precision not null,
    front_rate_error double precision not null,
    rear_rate_error double precision not null,
    vehicle_spread_error double precision not null,
    corner_spread_error double precision not null,
    cars integer not null,
    readings integer not null,
    primary key (drive, season, tyre_model)
);

create table learned_distance (
    season text primary key check (season in ('SUMMER', 'WINTER', 'ALL_SEASON')),
    mean_km_per_day double precision not null,
    car_sd_km_per_day double precision not null,
    season_sd_km_per_day double precision not null,
    cars integer not null
);
