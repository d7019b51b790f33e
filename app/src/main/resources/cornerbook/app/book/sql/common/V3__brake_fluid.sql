-- Grade of brake fluid that the vehicle manufacturer asks for; null while nobody has looked.
alter table vehicle add column brake_fluid text;
