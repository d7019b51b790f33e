-- Whose data were erased because the person asked for it, or because nobody needed them any longer; the car's record stays.
create table customer_erased (
    customer_id text primary key references customer (id),
    reason text not null,
    person text,
    erased_on text not null
);
