import { ProblemError } from '@tiegel/contract';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { storeProblem } from '../src/storeProblem.ts';
import { freshFile } from './fixtures/files.ts';

// Rights of files do not hold for root, so a connection that may only read stands for them.
test('a database that may only be read is told as such, not as if something had been written', () => {
  const file = freshFile();
  new Database(file).exec('create table one (number)').close();
  const reading = new Database(file, { readonly: true });
  let told: unknown;
  try {
    reading.exec('insert into one values (1)');
  } catch (error) {
    told = storeProblem(error, file);
  }
  reading.close();
  expect(told).toBeInstanceOf(ProblemError);
  const [fault] = (told as ProblemError).faults;
  expect(fault).toMatchObject({ code: 'store/read-only', detail: expect.stringContaining(file) });
  expect(fault!.remedy).toContain('copy the file into a folder of your own');
});
