import { expect, test } from 'vitest';
import { openConnections } from '../../src/sharing/connections.ts';
import { freshFile } from '../fixtures/files.ts';

test('one connection leaves the last commits to the system, the other writes each through', () => {
  const connections = openConnections(freshFile());
  const read = (which: 'main' | 'durable', name: string) => connections[which].pragma(name, { simple: true });
  expect(read('main', 'journal_mode')).toBe('wal');
  // SQLite's numbers: 1 is NORMAL, 2 is FULL (sqlite.org/pragma.html#pragma_synchronous).
  expect([read('main', 'synchronous'), read('durable', 'synchronous')]).toEqual([1, 2]);
  expect([read('main', 'foreign_keys'), read('durable', 'foreign_keys')]).toEqual([1, 1]);
  connections.close();
});

test('a reader cannot write, and does not keep others from writing', () => {
  const connections = openConnections(freshFile());
  const sheet = "insert into charge_sheet (saved_at, sheet) values ('2027-01-14T08:00:00Z', '{}')";
  connections.main.exec(sheet);
  connections.main.exec(sheet);
  const reader = connections.openReader();
  const rows = reader.prepare('select * from charge_sheet').iterate();
  rows.next();
  connections.main.exec(sheet);
  rows.return?.();
  expect(() => reader.exec(sheet)).toThrow(/readonly/);
  reader.close();
  connections.close();
});
