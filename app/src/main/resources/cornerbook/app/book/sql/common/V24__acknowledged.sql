-- Who of the customer's side was told what is unsafe, and took the car all the same.
alter table departure add column acknowledged_by text;
