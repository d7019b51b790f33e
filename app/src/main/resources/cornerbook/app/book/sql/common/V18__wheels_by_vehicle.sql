-- What belongs to one car is found without going through all cars.

create index wheel_by_vehicle on wheel (vehicle_id, set_id, place_in_list);
create index fitting_by_vehicle on fitting (vehicle_id);
create index retorque_by_superseder on retorque (superseded_by);
