-- Every recipe that an ink of the plant has had. A version is never changed: what was weighed by it
-- stays readable.
create table ink_recipe (
    id            bigint generated always as identity primary key,
    plant         text             not null references plant (id),
    ink           text             not null,
    version       int              not null,
    agent_percent double precision not null,
    recipe        jsonb            not null,
    since         timestamptz      not null,
    unique (plant, ink, version)
);

insert into ink_recipe (plant, ink, version, agent_percent, recipe, since)
select p.id, i ->> 'id', 1, coalesce((i ->> 'agentPercent')::double precision, 0), i -> 'recipe',
       p.changed_at
from plant p, jsonb_array_elements(p.shop -> 'inks') i;
