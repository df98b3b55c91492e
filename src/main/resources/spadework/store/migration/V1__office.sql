-- SPDX-License-Identifier: Apache-2.0
-- An office: folders with their files, each state that they had, and the register, which only grows.

do $$
declare
  role_name text;
begin
  foreach role_name in array array[
    'spadework_owner', 'spadework_estimator', 'spadework_crew', 'spadework_bookkeeper'] loop
    -- Roles are the server's: another office there may have made them, or be making them just now.
    begin
      execute format('create role %I nologin', role_name);
    exception
      when duplicate_object or unique_violation then null;
    end;
  end loop;
end
$$;

-- A job's folder, or the firm's own with the empty name.
create table folder (
  id bigint generated always as identity primary key,
  name text not null unique,
  version text not null,
  changed_at timestamptz not null default clock_timestamp(),
  number text not null default '',
  title text not null default '',
  customer text not null default '',
  stands text not null default 'draft'
    check (stands in ('draft', 'issued', 'accepted', 'closed', 'lost', 'canceled')),
  job jsonb,
  words tsvector not null default ''::tsvector
);
create unique index folder_number on folder (lower(number)) where number <> '';
create index folder_words on folder using gin (words);
create index folder_changed on folder (changed_at desc);
create index folder_stands on folder (stands, changed_at desc);

-- What is in files, once for all that are alike; pictures and papers are compressed already.
create table content (
  sha256 text primary key check (sha256 ~ '^[0-9a-f]{64}$'),
  bytes bytea not null check (encode(sha256(bytes), 'hex') = sha256)
);
alter table content alter column bytes set storage external;

create table file (
  folder bigint not null references folder,
  path text not null,
  kind text not null,
  sha256 text not null,
  length bigint not null check (length >= 0),
  primary key (folder, path)
);
create index file_sha256 on file (sha256);

create table folder_version (
  folder bigint not null references folder,
  count bigint not null,
  version text not null,
  at timestamptz not null default clock_timestamp(),
  by text not null default session_user,
  what text not null,
  files jsonb not null,
  primary key (folder, count)
);

-- The register. Each line holds the SHA-256 of the line before it and of itself.
create table register_line (
  folder bigint not null references folder,
  line int not null check (line >= 1),
  text text not null,
  primary key (folder, line)
);

create function register_grows() returns trigger language plpgsql security definer set search_path from current as $$
declare
  before text;
  last int;
begin
  select r.line, r.text into last, before from register_line r where r.folder = new.folder order by r.line desc limit 1;
  if new.line <> coalesce(last, 0) + 1 then
    raise exception 'register line % does not follow line %', new.line, coalesce(last, 0) using errcode = 'SW001';
  end if;
  if new.text::jsonb ->> 'line' <> new.line::text
     or new.text::jsonb ->> 'previous' <>
        coalesce(encode(sha256(convert_to(before, 'UTF8')), 'hex'), repeat('0', 64)) then
    raise exception 'register line % does not follow the one before it', new.line using errcode = 'SW001';
  end if;
  -- ,"seal":"<64 digits>"} ends a line: 75 signs, and the seal is of all before them.
  if right(new.text, 75) <>
     ',"seal":"' || encode(sha256(convert_to(left(new.text, -75), 'UTF8')), 'hex') || '"}' then
    raise exception 'register line % does not fit its seal', new.line using errcode = 'SW001';
  end if;
  return new;
end
$$;

create function register_stays() returns trigger language plpgsql as $$
begin
  raise exception 'the register only grows' using errcode = 'SW002';
end
$$;

create trigger register_grows before insert on register_line for each row execute function register_grows();
create trigger register_stays before update or delete on register_line for each row execute function register_stays();
create trigger register_is_kept before truncate on register_line for each statement execute function register_stays();
create trigger versions_stay before update or delete on folder_version for each row execute function register_stays();
create trigger versions_are_kept before truncate on folder_version for each statement execute function register_stays();
create trigger content_stays before update on content for each row execute function register_stays();

-- Who has what open.
create table presence (
  folder text not null,
  who text not null,
  seen_at timestamptz not null default clock_timestamp(),
  primary key (folder, who)
);

-- Who may do what. An estimator prices on a machine of his own and so reads what prices are made of; only the owner
-- changes margin, wages and state rules.
grant usage on schema spadework to spadework_owner, spadework_estimator, spadework_crew, spadework_bookkeeper;
grant select on flyway_schema_history to spadework_owner, spadework_estimator, spadework_crew, spadework_bookkeeper;
grant select, insert, update on folder to spadework_owner, spadework_estimator;
grant select, insert, update, delete on file to spadework_owner, spadework_estimator;
grant select, insert on content, folder_version, register_line to spadework_owner, spadework_estimator;
grant select (id, name, version, number, title, stands, changed_at) on folder to spadework_crew;
grant select (id, name, version, number, title, customer, stands, changed_at) on folder to spadework_bookkeeper;
grant select on file, content to spadework_crew, spadework_bookkeeper;
grant select on register_line to spadework_bookkeeper;
grant select, insert, update, delete on presence to spadework_owner, spadework_estimator;

alter table folder enable row level security;
alter table file enable row level security;
alter table content enable row level security;
alter table folder_version enable row level security;
alter table register_line enable row level security;

create policy office_folder on folder to spadework_owner, spadework_estimator using (true) with check (true);
create policy crew_folder on folder for select to spadework_crew using (stands = 'accepted');
create policy bookkeeper_folder on folder for select to spadework_bookkeeper using (stands = 'closed');

create policy owner_file on file to spadework_owner using (true) with check (true);
create policy estimator_reads on file for select to spadework_estimator using (true);
create policy estimator_adds on file for insert to spadework_estimator
  with check (kind not in ('company', 'state rules'));
create policy estimator_changes on file for update to spadework_estimator
  using (kind not in ('company', 'state rules')) with check (kind not in ('company', 'state rules'));
create policy estimator_takes_away on file for delete to spadework_estimator
  using (kind not in ('company', 'state rules'));
create policy crew_file on file for select to spadework_crew
  using (kind in ('crew', 'picture') and folder in (select id from folder));
create policy bookkeeper_file on file for select to spadework_bookkeeper
  using (kind in ('money', 'register') and folder in (select id from folder));

create policy office_content on content to spadework_owner, spadework_estimator using (true) with check (true);
create policy others_content on content for select to spadework_crew, spadework_bookkeeper
  using (sha256 in (select f.sha256 from file f));

create policy office_version on folder_version to spadework_owner, spadework_estimator using (true) with check (true);
create policy office_line on register_line to spadework_owner, spadework_estimator using (true) with check (true);
create policy bookkeeper_line on register_line for select to spadework_bookkeeper
  using (folder in (select id from folder));
