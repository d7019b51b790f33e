-- What torque is asked is the car's to know, and may be known only later.
alter table retorque drop column torque_nm;
