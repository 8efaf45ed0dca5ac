-- What a plan was made from, so that its lists and its audit stay true whatever changes later; its
-- score apart from the sheet, so that a list of plans need not read the sheets; and what the
-- solving job needs to know.
alter table plan
    add column basis              jsonb,
    add column score              jsonb,
    add column audit_passed       boolean,
    add column publish_when_sound boolean not null default false,
    add column stop_requested     boolean not null default false,
    add column attempts           int     not null default 0;

create index plan_newest_first on plan (plant, version desc);
