-- What each car may need by its coming visit, as its latest visit was judged. Written with the car's verdict, and as old as that.
create table car_need (
    vehicle_id text not null references vehicle (id),
    place_in_list integer not null,
    visit_id text not null references visit (id),
    part text not null,
    -- Season of a tyre, axle of a brake part, chemistry of a battery, seat of a nut; empty where there is none.
    kind text not null,
    article text not null,
    -- That go together; chance of so many, and of twice as many.
    pieces integer not null,
    chance_once double precision not null,
    chance_twice double precision not null,
    due text not null,
    primary key (vehicle_id, place_in_list)
);
create index car_need_by_due on car_need (due);
