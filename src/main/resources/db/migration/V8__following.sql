-- A moved run is priced by how far and how soon, no longer by the piece.
update plant
set shop = jsonb_set(shop #- '{settings,runMoved}', '{settings,runShiftedPerHour}',
    shop #> '{settings,runMoved}')
where jsonb_typeof(shop #> '{settings,runMoved}') = 'number';

-- Who asked for a plan; why one that was made by itself waits for the planner; which plan it brings
-- back; how far it is from the plan before; and that its search is to begin anew on newer data.
alter table plan
    add column origin            text    not null default 'planner'
        check (origin in ('planner', 'events', 'restoration')),
    add column held              text,
    add column restores          text,
    add column stability         jsonb,
    add column restart_requested boolean not null default false,
    add column restarts          int     not null default 0;

-- Changes of a plant that no plan has been asked for yet. task names the job that looks after them.
create table plan_pending (
    plant    text        primary key references plant (id),
    task     text        not null,
    first_at timestamptz not null,
    last_at  timestamptz not null
);

-- A parked event that a person set aside for good.
alter table shop_event add column dismissed boolean not null default false;
create index shop_event_parked on shop_event (plant, seq) where parked is not null;

-- Who settled a parked event, when and how; cause is what it was parked for, outcome what became of
-- it. Kept for ever.
create table event_settlement (
    id      bigint generated always as identity primary key,
    plant   text        not null references plant (id),
    seq     bigint      not null references shop_event (seq),
    how     text        not null check (how in ('apply-again', 'dismiss')),
    person  text        not null,
    note    text,
    at      timestamptz not null,
    cause   text        not null,
    outcome text        not null check (outcome in ('applied', 'parked', 'dismissed'))
);
create index event_settlement_by_event on event_settlement (seq);
