-- The climate of the shop's place, °C: one place, or none.
create table climate (
    id integer primary key check (id = 1),
    place text not null,
    source text not null,
    coldest_morning_c double precision not null
);

create table climate_month (
    month integer primary key check (month between 1 and 12),
    mean_daily_minimum_c double precision not null,
    mean_daily_maximum_c double precision not null
);
