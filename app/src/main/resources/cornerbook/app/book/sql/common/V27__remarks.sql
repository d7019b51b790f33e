-- What the customer complains of, what was damaged before work began, and what was noted in a step; of each the last one counts.
create table visit_remark (
    id text primary key,
    visit_id text not null references visit (id),
    topic text not null,
    words text not null,
    person text not null,
    made_at text not null,
    place_in_list integer not null
);
create unique index visit_remark_by_place on visit_remark (visit_id, place_in_list);
