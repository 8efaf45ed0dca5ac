-- What is told to others, numbered within its plant in the order of the commits: a transaction takes its numbers
-- with its last statements, under the lock of the plant's row here, and keeps the lock to its end. So no number is
-- missing, and none appears before a lower one. Without foreign keys to the plant: their check would wait for
-- whoever holds the plant's row, who may be waiting for the numbers.
create table outbox_head (
    plant    text   primary key,
    last_seq bigint not null
);

create table outbox_event (
    plant       text        not null,
    seq         bigint      not null,
    type        text        not null,
    event       text        not null,
    recorded_at timestamptz not null default now(),
    primary key (plant, seq)
);
create index outbox_event_by_age on outbox_event (recorded_at);

-- Which plan was last told to be in force.
create table plan_told (
    plant text primary key references plant (id),
    plan  text not null
);

-- What was last said of an order, so that only what differs is told.
create table promise_told (
    plant          text   not null references plant (id),
    reference      text   not null,
    planned_finish timestamptz,
    late_minutes   bigint not null,
    cause          text,
    primary key (plant, reference)
);

-- Addresses that get the events. position is the number up to which all is delivered or set aside;
-- tries counts how often the next one failed.
create table webhook (
    plant             text        not null references plant (id),
    name              text        not null,
    url               text        not null,
    types             text        not null,
    secret            text        not null,
    version           bigint      not null,
    position          bigint      not null,
    tries             int         not null default 0,
    last_failure      text,
    last_delivered_at timestamptz,
    primary key (plant, name)
);

-- Events that a hook did not take. redelivery is set when somebody asked to try again.
create table dead_letter (
    plant        text        not null,
    name         text        not null,
    seq          bigint      not null,
    type         text        not null,
    event        text        not null,
    tries        int         not null,
    last_failure text        not null,
    last_try_at  timestamptz not null,
    redelivery   boolean     not null default false,
    primary key (plant, name, seq),
    foreign key (plant, name) references webhook (plant, name) on delete cascade
);

-- The job library's table for deliveries, apart from that of the plans: each scheduler takes jobs of kinds that it
-- does not know for left-overs and removes them in the end.
create table outbox_task (like scheduled_tasks including all);
