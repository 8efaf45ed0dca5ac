-- A run of which the press crew has told something, with its line on the plan that was in force when
-- the first thing was told: what was planned stays comparable whatever plans come after.
create table floor_run (
    id             bigint generated always as identity primary key,
    plant          text        not null references plant (id),
    run            text        not null,
    order_ref      text        not null,
    design         text        not null,
    position       text        not null,
    lot            int         not null,
    press          text        not null,
    planned        jsonb       not null,
    unique (plant, run)
);
create index floor_run_by_order on floor_run (plant, order_ref);

-- What was told of it. The state of a run is what these add up to, in whatever order they came in.
create table floor_mark (
    id      bigint generated always as identity primary key,
    plant   text        not null references plant (id),
    run     text        not null,
    mark    text        not null,
    at      timestamptz not null,
    good    int,
    spoiled int,
    cause   text,
    person  text
);
create index floor_mark_by_run on floor_mark (plant, run, at);
create index floor_mark_by_time on floor_mark (plant, at);

-- When the order's document was last told, so that an older one that comes in late undoes nothing.
alter table customer_order add column told_at timestamptz;
update customer_order set told_at = changed_at;
alter table customer_order alter column told_at set not null;
