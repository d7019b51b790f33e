-- The voltage at rest under which the maker of the 12 V battery has it charged; null while nobody has looked it up.

alter table vehicle add column battery_charge_below_v double precision;
