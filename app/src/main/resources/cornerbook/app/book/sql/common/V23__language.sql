-- The language in which a person wants pages, and that in which a customer gets papers.
alter table preference add column language text not null default 'ENGLISH';
alter table customer add column language text;
