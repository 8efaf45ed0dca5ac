-- A draft that is still to be published by itself, or held: written with the draft, so that a kill
-- between the two loses nothing.
alter table plan add column decision_due boolean not null default false;
