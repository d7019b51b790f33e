-- The words by which a car is found, folded to plain letters; written anew when its history or its customer has changed since.
create table car_words (
    vehicle_id text primary key references vehicle (id),
    revision integer not null,
    customer text not null,
    words text not null
);
