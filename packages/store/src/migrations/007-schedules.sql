-- When a search is worked on, as JSON; null where nobody said: at any time, in turn with the others.
alter table search add column schedule text;
