-- Whether a motor or a pump closes the brakes, and the pedal only says how hard; null while nobody has said.
alter table vehicle add column brakes_by_wire integer check (brakes_by_wire in (0, 1));
