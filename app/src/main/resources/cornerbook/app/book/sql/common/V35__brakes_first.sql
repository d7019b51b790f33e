-- Whether the shop looks at the brakes before the wheels come off.
create table shop_rule_of_two (
    rule text primary key check (rule in ('SECOND_CHECK', 'BRAKES_FIRST'))
);
insert into shop_rule_of_two (rule) select rule from shop_rule;
drop table shop_rule;
alter table shop_rule_of_two rename to shop_rule;
