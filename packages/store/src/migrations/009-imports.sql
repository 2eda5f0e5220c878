-- Data that a person brought in, as JSON whose meaning is not the store's, each file under a number
-- that is never given again. `subject`: the id of a column, else ''. `key`: the Idempotency-Key of
-- the request that brought it. Nothing is changed but whether it was withdrawn, so that one can see
-- what there was.
create table data_import (
  number integer primary key autoincrement,
  kind text not null,
  subject text not null,
  name text not null,
  at text not null,
  key text unique,
  data text not null,
  rows integer not null,
  counts text not null,
  withdrawn_at text
) strict;

create index data_import_kind on data_import (kind, number);

-- Price lists and columns were tables of their own. An invented list, and a column that is null,
-- took those before it out of force.
insert into data_import (kind, subject, name, at, data, rows, counts, withdrawn_at)
select 'prices', '', '', entered_at, list, rows,
  json_object('new', rows, 'changed', 0, 'same', 0, 'refused', 0),
  (select min(entered_at) from price_list as later
   where later.number > one.number and coalesce(later.list ->> 'invented', 0))
from (select *, (select count(*) from json_each(list, '$.prices')) as rows from price_list) as one
where not coalesce(list ->> 'invented', 0)
order by number;

insert into data_import (kind, subject, name, at, data, rows, counts, withdrawn_at)
select 'column', id, coalesce("column" ->> 'name', id), entered_at, "column", rows,
  json_object('new', rows, 'changed', 0, 'same', 0, 'refused', 0),
  (select min(entered_at) from own_column as later
   where later.id = one.id and later.number > one.number and later."column" is null)
from (select *, (select count(*) from json_each("column", '$.values')) as rows from own_column) as one
where "column" is not null
order by number;

drop table price_list;
drop table own_column;

-- Numbers of the imports that a search was planned with, as JSON; null: planned before they had numbers.
alter table search add column imports text;
