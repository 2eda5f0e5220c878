import { expect, test } from 'vitest';
import { migrate } from '../../src/specification/migrate.ts';
import { faultsIn, request } from '../fixtures/known.ts';

// Two made-up migrations: the hook is tested before the first real one exists.
const steps = [
  ({ keep, ...rest }: Record<string, unknown>) => ({ ...rest, retain: keep }),
  ({ retain, ...rest }: Record<string, unknown>) => ({ ...rest, retained: { best: retain } }),
];

test('each version is brought forward through all that follow it', () => {
  expect(migrate({ version: 1, keep: 5 }, steps)).toEqual({ version: 3, retained: { best: 5 } });
  expect(migrate({ version: 2, retain: 5 }, steps)).toEqual({ version: 3, retained: { best: 5 } });
  expect(migrate({ version: 3, retained: 5 }, steps)).toEqual({ version: 3, retained: 5 });
});

test('without a version it is the first', () => {
  expect(migrate({ keep: 5 }, steps)).toEqual({ version: 3, retained: { best: 5 } });
});

test('the current version is not touched', () => {
  const specification = { version: 1, keep: 5 };
  expect(migrate(specification)).toBe(specification);
});

test('an unknown version is refused and nothing else is guessed', () => {
  for (const version of [0, 2, 1.5, '1', null]) {
    expect(faultsIn(request({ version, unknown: 1 }))).toEqual(['specification/version-unknown /version']);
  }
});
