-- A batch of the plan once something is told of it, or a container that stands on the shelf. What
-- came in less what went out is what is left: nothing is ever taken out of the books.
create table ink_container (
    id            bigint generated always as identity primary key,
    plant         text        not null references plant (id),
    name          text        not null,
    ink           text        not null,
    stock         boolean     not null,
    light_only    boolean     not null,
    origin        text,
    since         timestamptz not null,
    mixed_at      timestamptz,
    activated_at  timestamptz,
    use_by        timestamptz,
    gone_at       timestamptz,
    planned_g     int         not null,
    mixed_g       int         not null,
    agent_g       int         not null,
    found_g       int         not null,
    printed_g     int         not null,
    screens_g     int         not null,
    returned_g    int         not null,
    discarded_g   int         not null,
    lost_g        int         not null,
    unique (plant, name),
    check (mixed_g + agent_g + found_g
        >= printed_g + screens_g + returned_g + discarded_g + lost_g)
);

-- Who did what to it and when.
create table ink_mark (
    id        bigint generated always as identity primary key,
    plant     text        not null references plant (id),
    container text        not null,
    mark      text        not null,
    at        timestamptz not null,
    person    text,
    mass_g    int,
    run       text,
    remark    text
);
create index ink_mark_by_container on ink_mark (plant, container, at);

-- Grams per piece that closed runs have taught.
create table ink_learned (
    id               bigint generated always as identity primary key,
    plant            text             not null references plant (id),
    design           text             not null,
    position         text             not null,
    ink              text             not null,
    mesh_per_cm      double precision not null,
    thread_um        double precision not null,
    width_mm         int              not null,
    height_mm        int              not null,
    coverage_percent double precision not null,
    passes           int              not null,
    grams            double precision not null,
    observations     int              not null,
    changed_at       timestamptz      not null,
    unique (plant, design, position, ink, mesh_per_cm, thread_um, width_mm, height_mm,
        coverage_percent, passes)
);
