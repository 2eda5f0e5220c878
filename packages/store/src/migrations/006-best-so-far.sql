-- The best grid point that a search has found so far and how it became better, as JSON; null before the first.
alter table search add column best_so_far text;
