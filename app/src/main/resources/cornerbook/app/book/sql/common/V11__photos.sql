-- Photos stand in the book itself, so that a backup has them all.
create table photo (
    id text primary key,
    visit_id text not null references visit (id),
    corner text check (corner in ('LF', 'RF', 'LR', 'RR')),
    person text not null,
    made_at text not null,
    sha256 text not null,
    jpeg ${bytes} not null
);
create index photo_by_visit on photo (visit_id);
