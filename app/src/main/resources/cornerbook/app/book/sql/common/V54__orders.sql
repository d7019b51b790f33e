-- What the shop ordered: a line for each article, never changed. What became of it stands in order_event.
create table order_line (
    id text primary key,
    part text not null,
    kind text not null,
    article text not null,
    quantity integer not null check (quantity > 0),
    -- Of whom, as the person wrote it.
    supplier text not null,
    person text not null,
    made_at text not null
);
create index order_line_by_article on order_line (part, kind, article);

create table order_event (
    id text primary key,
    line_id text not null references order_line (id),
    event text not null check (event in ('CAME_IN', 'CALLED_OFF', 'GIVEN')),
    quantity integer not null check (quantity > 0),
    -- The visit from which it was known that the car needs it; of what was given alone.
    visit_id text references visit (id),
    person text not null,
    made_at text not null,
    check ((event = 'GIVEN') = (visit_id is not null))
);
create index order_event_by_line on order_event (line_id);

-- What came of calling a customer, about wheels to be tightened again or about a part: as often as somebody called.
create table call_answer (
    id text primary key,
    visit_id text not null references visit (id),
    -- RETORQUE, or a part that is ordered.
    about text not null,
    place_in_list integer not null,
    answer text not null check (answer in ('CALLED', 'WILL_COME', 'DECLINED')),
    person text not null,
    made_at text not null
);
create unique index call_answer_by_place on call_answer (visit_id, about, place_in_list);
insert into call_answer (id, visit_id, about, place_in_list, answer, person, made_at)
select id, visit_id, 'RETORQUE', place_in_list, answer, person, made_at from retorque_answer;
drop table retorque_answer;
