-- With which chance the pieces of the order list are to be enough, as the shop keeps it: what was said last counts.
create table order_level (
    id text primary key,
    place_in_list integer not null unique,
    -- In per cent; null where it follows from two costs.
    percent integer check (percent between 50 and 99),
    -- What one piece too few and one too many cost, as they were written; both empty where the chance was chosen.
    cost_missing text not null,
    cost_left text not null,
    person text not null,
    made_at text not null,
    check ((percent is null) = (cost_missing <> '')),
    check ((cost_missing = '') = (cost_left = ''))
);

create trigger order_level_stays before update or delete on order_level
for each row execute function refuse_change_of_order();

create trigger order_level_is_never_emptied before truncate on order_level
for each statement execute function refuse_change_of_order();
