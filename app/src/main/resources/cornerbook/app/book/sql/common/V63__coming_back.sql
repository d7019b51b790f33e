-- For what each car is to come back, and by when, as its latest visit was judged. Written with the car's verdict, and as old as
-- that. Wheels to be tightened again stand in retorque.
create table car_due (
    vehicle_id text not null references vehicle (id),
    -- By which it is known.
    visit_id text not null references visit (id),
    matter text not null,
    due text not null,
    -- An appointment from this day on is for it; one before is for something else.
    due_from text not null,
    primary key (vehicle_id, matter)
);
create index car_due_by_day on car_due (due);
create index vehicle_by_customer on vehicle (customer_id);
-- Verdicts of before say nothing of it.
update judged_by set number = number + 1;

-- What came of calling: that nobody answered, and that somebody was written to, are kept as well.
create table call_answer_more (
    id text primary key,
    visit_id text not null references visit (id),
    -- A matter for which the car is to come back, or a part that is ordered.
    about text not null,
    place_in_list integer not null,
    answer text not null check (answer in ('CALLED', 'NOT_REACHED', 'WRITTEN', 'WILL_COME', 'DECLINED')),
    person text not null,
    made_at text not null
);
insert into call_answer_more (id, visit_id, about, place_in_list, answer, person, made_at)
select id, visit_id, about, place_in_list, answer, person, made_at from call_answer;
drop table call_answer;
alter table call_answer_more rename to call_answer;
create unique index call_answer_by_place on call_answer (visit_id, about, place_in_list);
