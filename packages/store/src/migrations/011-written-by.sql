-- Whose token a version of a melt was written with; null where nobody is asked for one.
alter table melt_version add column written_by text;
