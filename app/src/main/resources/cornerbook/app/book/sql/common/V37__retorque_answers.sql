-- What came of asking a customer for a re-torque, as often as somebody asked. A wheel that was tightened stands in retorque.
create table retorque_answer (
    id text primary key,
    visit_id text not null references visit (id),
    place_in_list integer not null,
    answer text not null check (answer in ('CALLED', 'DECLINED')),
    person text not null,
    made_at text not null
);
create unique index retorque_answer_by_place on retorque_answer (visit_id, place_in_list);
