-- Who tightened the wheels again; null where nobody was named.
alter table retorque add column recorded_by text;
