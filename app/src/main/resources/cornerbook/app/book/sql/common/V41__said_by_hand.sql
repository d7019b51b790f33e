-- Why a step, or the place of a reading, is left open.
alter table work_tick add column reason text;

-- A photo that was taken at the wrong corner or car stays where it was, struck; this is the same one in its right place. Why, and who
-- said so, stands in visit_change.
alter table photo add column moved_to text;

-- A re-torque may be recorded without figures: no odometer where nobody read it, no torque where the one that is asked for was confirmed.
create table retorque_as_said (
    visit_id text primary key references visit (id),
    due_odometer_km double precision not null,
    due_date text not null,
    recorded_date text,
    recorded_odometer_km double precision,
    recorded_torque_nm double precision,
    superseded_by text references visit (id),
    check (recorded_date is not null or (recorded_odometer_km is null and recorded_torque_nm is null))
);
insert into retorque_as_said (visit_id, due_odometer_km, due_date, recorded_date, recorded_odometer_km, recorded_torque_nm, superseded_by)
select visit_id, due_odometer_km, due_date, recorded_date, recorded_odometer_km, recorded_torque_nm, superseded_by from retorque;
drop table retorque;
alter table retorque_as_said rename to retorque;
create index retorque_by_superseder on retorque (superseded_by);
