-- In which order the steps of a visit stand: the shop's, and that of each kind of car that has its own. Names of the steps, parted by blanks.
create table step_order (
    -- One car of the kind; none for the shop.
    vehicle_id text unique references vehicle (id),
    steps text not null
);
insert into step_order (steps)
select 'RECEIVE LIFT BRAKES PEDAL OFF ON PRESSURE TORQUE BATTERY BURNISH DEPART' from shop_rule where rule = 'BRAKES_FIRST';
create table shop_rule_left (
    rule text primary key check (rule in ('SECOND_CHECK'))
);
insert into shop_rule_left (rule) select rule from shop_rule where rule <> 'BRAKES_FIRST';
drop table shop_rule;
alter table shop_rule_left rename to shop_rule;
