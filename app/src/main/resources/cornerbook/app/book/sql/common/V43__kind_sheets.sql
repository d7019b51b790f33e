-- What the shop has looked up of a kind of car, as a data sheet; its text is that of the file it came from or goes out as.
create table kind_sheet (
    name text primary key,
    sheet text not null
);
