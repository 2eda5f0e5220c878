-- Columns of element data that a person entered, as JSON. The newest row of an id is in force; one
-- without a column took it out of force. Rows are never changed, so that one can see what there was.
create table own_column (
  number integer primary key autoincrement,
  id text not null,
  entered_at text not null,
  "column" text
) strict;

create index own_column_id on own_column (id, number);
