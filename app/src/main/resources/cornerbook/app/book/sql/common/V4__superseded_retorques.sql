-- A re-torque that is still open when the wheels are touched again is superseded by that visit's own.

alter table retorque add column superseded_by text references visit (id);

update retorque set superseded_by = (
    select later.visit_id
    from retorque as later
    join visit as later_visit on later_visit.id = later.visit_id
    join visit as this_visit on this_visit.vehicle_id = later_visit.vehicle_id
    where this_visit.id = retorque.visit_id and later_visit.visit_date > this_visit.visit_date
    order by later_visit.visit_date
    limit 1
)
where recorded_date is null;
