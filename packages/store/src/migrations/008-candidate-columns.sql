-- The values of kept candidates once more, as columns: what filters and orders are worked out from.
-- `name`: the id of a quantity (64-bit floats, NaN: no value), or a word in brackets for what is not
-- one: (composition) 32-bit hashes, (front) bytes, (has Fe) bytes, (order density asc) ranks less one
-- as 32-bit integers. `first`: the place of a block's first number, from 0. Little-endian.
create table candidate_block (
  search integer not null references search (number),
  name text not null,
  first integer not null,
  bytes blob not null,
  primary key (search, name, first)
) strict;

-- Orders are such columns now, and are made anew where they are asked for.
drop table candidate_place;
drop table candidate_order;

-- Whether a candidate is on the Pareto front; null where the search asked for none.
alter table candidate add column front integer;
