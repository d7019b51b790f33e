-- Which work a line of an estimate is about, as the bay sheet names it. A line of older estimates has none: its advice tells.
create table estimate_line_work (
    estimate_id text not null references estimate (id),
    place_in_list integer not null,
    work text not null,
    primary key (estimate_id, place_in_list, work)
);

-- What was said of work that no agreed line stands for. Of each work of a visit the last answer counts.
create table work_answer (
    id text primary key,
    visit_id text not null references visit (id),
    place_in_list integer not null,
    work text not null,
    kind text not null check (kind in ('WITHOUT_CHARGE', 'AS_LINE', 'ASKED_AGAIN')),
    -- The key of the line that it was agreed by; null where it is none.
    line_key text,
    -- Why nothing is charged; empty where something is.
    reason text not null,
    person text not null,
    made_at text not null
);
create unique index work_answer_by_place on work_answer (visit_id, place_in_list);
