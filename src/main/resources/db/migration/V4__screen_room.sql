-- Looks at screens in a cabinet, each with what its load had dried until then. Plans come and go:
-- what a look tells of the cabinet is kept when it comes in.
create table emulsion_look (
    id           bigint generated always as identity primary key,
    plant        text             not null references plant (id),
    cabinet      text             not null,
    screen       text             not null,
    stage        text             not null,
    load_in      timestamptz      not null,
    at           timestamptz      not null,
    dry          boolean          not null,
    required_pah double precision not null check (required_pah > 0),
    deficit_pah  double precision not null check (deficit_pah >= 0)
);
create index emulsion_look_by_plant on emulsion_look (plant, at);
