import { expect, test } from 'vitest';
import { readSettings } from '../../src/searching/settings.ts';
import { faultsOf } from '../faultsOf.ts';

test('what is not set has its default', () => {
  expect(readSettings({ REDIS_URL: '', WORKERS: '' })).toMatchObject({ redisUrl: null, maxPoints: null });
  expect(readSettings({}).workers).toBeGreaterThanOrEqual(1);
});

test('settings are read', () => {
  const environment = { REDIS_URL: 'redis://localhost:6379', WORKERS: '3', MAX_POINTS: '1000' };
  expect(readSettings(environment)).toEqual({
    redisUrl: 'redis://localhost:6379',
    workers: 3,
    maxPoints: 1000,
  });
});

test('a setting that is no such number is refused by name', async () => {
  expect(await faultsOf(() => readSettings({ WORKERS: 'many' }))).toEqual(['configuration/invalid /WORKERS']);
  expect(await faultsOf(() => readSettings({ MAX_POINTS: '0' }))).toEqual([
    'configuration/invalid /MAX_POINTS',
  ]);
});

test('no thread is a setting where worker processes do the work', async () => {
  expect(readSettings({ REDIS_URL: 'redis://localhost:6379', WORKERS: '0' }).workers).toBe(0);
  expect(await faultsOf(() => readSettings({ WORKERS: '0' }))).toEqual(['configuration/invalid /WORKERS']);
});

test('a number is written in digits, a large one also as 1e13', async () => {
  expect(readSettings({ MAX_POINTS: '1e13' }).maxPoints).toBe(1e13);
  expect(await faultsOf(() => readSettings({ MAX_POINTS: '0x10' }))).toEqual([
    'configuration/invalid /MAX_POINTS',
  ]);
});
