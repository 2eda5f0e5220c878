import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { migrate, migrations } from '../src/migrate.ts';

const form = (database: Database.Database) => database.pragma('user_version', { simple: true });

test('a new database goes through every migration, an old one through those that it lacks', () => {
  const steps = ['create table first (x integer) strict', 'create table second (x integer) strict'];
  const database = new Database(':memory:');
  migrate(database, steps.slice(0, 1));
  expect(form(database)).toBe(1);
  migrate(database, steps);
  migrate(database, steps);
  expect(form(database)).toBe(2);
  database.exec('insert into first values (1); insert into second values (2)');
});

test('a database of the next release is refused', () => {
  const steps = ['create table first (x integer) strict', 'create table second (x integer) strict'];
  const database = new Database(':memory:');
  migrate(database, steps);
  expect(() => migrate(database, steps.slice(0, 1))).toThrow(/has form 2/);
  expect(form(database)).toBe(2);
});

test('a migration that fails changes nothing', () => {
  const database = new Database(':memory:');
  const steps = ['create table first (x integer) strict; insert into nowhere values (1)'];
  expect(() => migrate(database, steps)).toThrow(/nowhere/);
  expect(form(database)).toBe(0);
  expect(database.prepare('select count(*) from sqlite_schema').pluck().get()).toBe(0);
});

test('every table of the newest form is strict', () => {
  const database = new Database(':memory:');
  migrate(database, migrations());
  const lax = `select name from pragma_table_list
    where type = 'table' and strict = 0 and name not like 'sqlite_%'`;
  expect(database.prepare(lax).pluck().all()).toEqual([]);
});
