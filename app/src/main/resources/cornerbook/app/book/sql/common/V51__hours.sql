-- When people work, by the day of the week (1 is Monday, ISO 8601), and when the shop is closed. Both are what holds now; one may be
-- replaced.
create table work_hours (
    person text not null references person (name),
    weekday integer not null check (weekday between 1 and 7),
    -- As 08:00-12:00,12:30-17:00.
    spans text not null,
    primary key (person, weekday)
);
create table closed_day (
    day text primary key,
    why text not null
);
