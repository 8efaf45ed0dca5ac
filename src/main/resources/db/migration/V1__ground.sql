-- A plant with its set-up. data_stamp moves with every change of its shop or orders, in the same
-- transaction: a plan made at an older stamp is stale.
create table plant (
    id          text primary key,
    shop        jsonb       not null,
    version     bigint      not null,
    data_stamp  bigint      not null default 0,
    changed_at  timestamptz not null
);

create table customer_order (
    plant        text        not null references plant (id),
    reference    text        not null,
    body         jsonb       not null,
    due_at       timestamptz not null,
    priority     int         not null,
    state        text        not null check (state in ('open', 'started', 'finished', 'cancelled')),
    version      bigint      not null,
    content_hash text        not null,
    created_at   timestamptz not null,
    changed_at   timestamptz not null,
    primary key (plant, reference)
);
create index customer_order_by_due on customer_order (plant, due_at, reference);

create table idempotency_key (
    plant      text        not null references plant (id),
    key        text        not null,
    body_hash  text        not null,
    status     int         not null,
    response   text        not null,
    created_at timestamptz not null,
    primary key (plant, key)
);

create table plan (
    id            text        primary key,
    plant         text        not null references plant (id),
    version       int         not null,
    state         text        not null
        check (state in ('solving', 'draft', 'published', 'superseded', 'failed')),
    day           date        not null,
    solve_seconds int         not null,
    seed          bigint      not null,
    planned_at    timestamptz,
    requested_at  timestamptz not null,
    finished_at   timestamptz,
    published_at  timestamptz,
    data_stamp    bigint      not null,
    sheet         jsonb,
    audit         jsonb,
    progress      jsonb,
    failure       text,
    row_version   bigint      not null default 0,
    unique (plant, version)
);
-- One plan in force per plant, whatever the service does.
create unique index plan_in_force on plan (plant) where state = 'published';

-- What happened, in the order in which it was recorded; seq is what a stream resumes from.
create table shop_event (
    plant       text        not null references plant (id),
    seq         bigserial   primary key,
    source      text        not null,
    event_id    text        not null,
    type        text        not null,
    time        timestamptz not null,
    data        jsonb       not null,
    recorded_at timestamptz not null,
    unique (plant, source, event_id)
);
create index shop_event_by_plant on shop_event (plant, seq);

-- The job library's own table, as its documentation gives it for PostgreSQL.
create table scheduled_tasks (
    task_name            text        not null,
    task_instance        text        not null,
    task_data            bytea,
    execution_time       timestamptz not null,
    picked               boolean     not null,
    picked_by            text,
    last_success         timestamptz,
    last_failure         timestamptz,
    consecutive_failures int,
    last_heartbeat       timestamptz,
    version              bigint      not null,
    priority             smallint,
    primary key (task_name, task_instance)
);
create index execution_time_idx on scheduled_tasks (execution_time);
create index last_heartbeat_idx on scheduled_tasks (last_heartbeat);
create index priority_execution_time_idx on scheduled_tasks (priority desc, execution_time asc);
