-- What the planner of a plant has decided himself: one document, which every further plan follows.
create table plan_instruction (
    plant      text        primary key references plant (id),
    version    bigint      not null,
    document   jsonb       not null,
    changed_at timestamptz not null
);
