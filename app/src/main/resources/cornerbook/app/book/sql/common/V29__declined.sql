-- Work that was advised or required and that the customer did not want, or wants after all; of each advice the last one counts.
create table declined_work (
    id text primary key,
    visit_id text not null references visit (id),
    advice text not null,
    sentence text not null,
    declined integer not null check (declined in (0, 1)),
    said_by text not null,
    person text not null,
    made_at text not null,
    place_in_list integer not null
);
create unique index declined_work_by_place on declined_work (visit_id, place_in_list);
