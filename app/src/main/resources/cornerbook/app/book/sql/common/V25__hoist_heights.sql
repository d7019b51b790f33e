-- What ends a lift besides the ratings: adapters, what a car drives over, the ceiling, and how high the car is. Null where nobody measured it.
-- An arm whose plate was not read has no rating of its own from now on.

alter table shop_tool add column adapter_rating_kg double precision;
alter table shop_tool add column drive_over_mm double precision;
alter table shop_tool add column ceiling_mm double precision;

alter table visit_tool add column adapter_rating_kg double precision;
alter table visit_tool add column drive_over_mm double precision;
alter table visit_tool add column ceiling_mm double precision;

alter table vehicle add column height_mm double precision;
