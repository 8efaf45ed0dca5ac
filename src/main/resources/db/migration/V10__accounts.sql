-- People. A password is kept as Argon2id in its text form; roles are words with a space between.
create table account (
    id            bigint generated always as identity primary key,
    name          text        not null unique check (name = lower(name)),
    full_name     text        not null,
    password_hash text        not null,
    must_change   boolean     not null,
    roles         text        not null,
    active        boolean     not null,
    made_at       timestamptz not null,
    changed_at    timestamptz not null,
    password_at   timestamptz not null
);

-- Of a session, a token and a link only the SHA-256 of their random secret is kept.
create table account_session (
    kept         text        primary key,
    account      bigint      not null references account (id) on delete cascade,
    begun_at     timestamptz not null,
    last_used_at timestamptz not null
);
create index account_session_by_account on account_session (account);

create table access_token (
    id           bigint generated always as identity primary key,
    kept         text        not null unique,
    plant        text        not null references plant (id),
    name         text        not null,
    roles        text        not null,
    made_by      text        not null,
    made_at      timestamptz not null,
    last_used_at timestamptz,
    revoked_at   timestamptz
);
create unique index access_token_in_use on access_token (plant, name) where revoked_at is null;

-- Failures in a row per account name and per address, both hashed: a name that was typed in may be a
-- password in the wrong field.
create table sign_in_failure (
    kept     text        primary key,
    failures int         not null,
    last_at  timestamptz not null
);
create index sign_in_failure_by_age on sign_in_failure (last_at);

create table set_up_link (
    kept    text        primary key,
    made_at timestamptz not null
);

-- Who did what and when, for every write: no bodies, no secrets. An entry comes into being with the
-- write's first transaction and gets the answer's status afterwards.
create table trail_entry (
    id     uuid        primary key,
    seq    bigint generated always as identity unique,
    at     timestamptz not null,
    who    text        not null,
    kind   text        not null check (kind in ('account', 'token', 'organisation', 'open')),
    method text        not null,
    path   text        not null,
    plant  text,
    about  text,
    status int
);
create index trail_entry_by_plant on trail_entry (plant, seq);
create index trail_entry_by_who on trail_entry (who, seq);
create index trail_entry_by_age on trail_entry (at);
