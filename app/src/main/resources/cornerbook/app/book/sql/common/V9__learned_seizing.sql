-- The hazard of seizing as the book has learned it; computed anew, whole, each time.

create table learned_seizing (
    only_row integer primary key check (only_row = 1),
    cars integer not null,
    pad_times integer not null,
    scale double precision not null,
    log_likelihood double precision not null
);

-- Coefficients, and their covariance with that of the logarithm of the scale, row by row.
create table learned_seizing_number (
    part text not null check (part in ('COEFFICIENT', 'COVARIANCE')),
    place_in_list integer not null,
    amount double precision not null,
    primary key (part, place_in_list)
);
