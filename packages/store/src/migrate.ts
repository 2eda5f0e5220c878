import { readdirSync, readFileSync } from 'node:fs';
import { problem } from '@tiegel/contract/terms';
import type Database from 'better-sqlite3';

/** Marks a file as ours: 'Tieg' in ASCII. */
const APPLICATION_ID = 0x54696567;

const folder = new URL('./migrations/', import.meta.url);

/** The migrations in their order; number k (from 1) leads from form k − 1 of the database to form k. */
export function migrations(): string[] {
  const names = readdirSync(folder).toSorted();
  names.forEach((name, place) => {
    if (Number.parseInt(name, 10) !== place + 1) throw new Error(`migration ${name} is out of order`);
  });
  return names.map((name) => readFileSync(new URL(name, folder), 'utf8'));
}

/** Throws store/foreign, before anything is changed, for a database that another program made. */
export function refuseForeign(database: Database.Database): void {
  const mark = database.pragma('application_id', { simple: true });
  const tables = database.prepare('select count(*) from sqlite_schema').pluck().get();
  const ours = mark === APPLICATION_ID || (mark === 0 && tables === 0);
  if (!ours) throw problem('store/foreign', { file: database.name });
}

/**
 * Brings a database to the newest form, each migration in a transaction of its own. Forms are
 * counted by SQLite's user_version. Throws store/newer for a database of a later release.
 */
export function migrate(database: Database.Database, steps: readonly string[] = migrations()): void {
  const form = checkedForm(database, steps);
  for (const [place, step] of steps.entries()) {
    if (place >= form) database.transaction(() => advance(database, step, place + 1)).immediate();
  }
}

/** Whether migrate would change a database. Throws store/newer as it does. */
export function formOf(database: Database.Database): 'older' | 'newest' {
  const steps = migrations();
  return checkedForm(database, steps) < steps.length ? 'older' : 'newest';
}

function checkedForm(database: Database.Database, steps: readonly string[]): number {
  const form = database.pragma('user_version', { simple: true }) as number;
  if (form > steps.length) {
    throw problem('store/newer', { file: database.name, found: form, known: steps.length });
  }
  return form;
}

function advance(database: Database.Database, step: string, form: number): void {
  database.exec(step);
  database.pragma(`application_id = ${APPLICATION_ID}`);
  database.pragma(`user_version = ${form}`);
}
