import { ProblemError } from '@tiegel/contract/terms';
import { expect, test } from 'vitest';
import { readConfiguration } from '../src/configuration.ts';

function faultsOf(environment: NodeJS.ProcessEnv) {
  try {
    readConfiguration(environment);
  } catch (error) {
    if (error instanceof ProblemError) return error.faults.map(({ code, pointer }) => ({ code, pointer }));
    throw error;
  }
  return [];
}

test('a setting that is missing and one that is wrong are told by code and name', () => {
  expect(faultsOf({ WORKERS: 'many' })).toEqual([
    { code: 'configuration/missing', pointer: '/REDIS_URL' },
    { code: 'configuration/invalid', pointer: '/WORKERS' },
  ]);
});

test('an address alone is enough', () => {
  expect(readConfiguration({ REDIS_URL: 'redis://localhost' }).workers).toBeGreaterThan(0);
});
