-- An event that contradicts the shop's state is kept with its cause and takes no effect.
alter table shop_event add column parked text;

-- The rooms' lists and every plan read the newest of a type.
create index shop_event_by_type on shop_event (plant, type, time);
