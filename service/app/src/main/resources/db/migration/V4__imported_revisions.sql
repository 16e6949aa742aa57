-- When a revision was made where it was imported from; null if it was not imported, or that is not known.
alter table revision add column made_at timestamptz;
