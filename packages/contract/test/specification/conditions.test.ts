import { expect, test } from 'vitest';
import { faultsOf } from '../../src/index.ts';
import { conditionsSchema } from '../../src/specification/conditions.ts';

const schema = conditionsSchema([
  { name: 'pressure', label: 'Pressure', unit: 'Pa', default: 1e5, range: { min: 1, max: 1e9 } },
  { name: 'coolingRate', label: 'Cooling rate', unit: 'K/s', default: null, range: { min: 0.1, max: 10 } },
]);
const faults = (sent: unknown) => faultsOf(schema, sent);

test('what lies in its range is taken, the ends included, and all may be left out', () => {
  expect(schema.parse({ pressure: 1, coolingRate: 10 })).toEqual({ pressure: 1, coolingRate: 10 });
  expect(schema.parse({})).toEqual({});
});

test('what lies outside is named with the range, the unit and the default', () => {
  const [pressure, cooling] = faults({ pressure: 0.5, coolingRate: 11 });
  expect(pressure).toMatchObject({ code: 'request/out-of-range', pointer: '/pressure' });
  expect(pressure!.remedy).toBe(
    'Write the pressure as a number from 1 to 1000000000 Pa; the default is 100000.',
  );
  expect(cooling!.remedy).toMatch(/from 0\.1 to 10 K\/s; the default is none\./);
});

test('an unknown condition is named with the near one, and a text is no number', () => {
  expect(faults({ presure: 2 })[0]).toMatchObject({ code: 'request/unknown-key', pointer: '/presure' });
  expect(faults({ presure: 2 })[0]!.detail).toContain('"pressure"');
  expect(faults({ pressure: '2' })[0]).toMatchObject({ code: 'request/wrong-value', pointer: '/pressure' });
});
