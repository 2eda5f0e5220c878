import { ProblemError } from '@tiegel/contract';
import { parseAlloy } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { lateQuantityById, lateValuesOf } from '../../src/index.ts';
import { facts } from '../fixtures/alloys.ts';

test('those asked for, in the order asked for', () => {
  expect(Object.keys(lateValuesOf(parseAlloy('AlNi'), facts, ['kingPhi', 'demixingRatio']))).toEqual([
    'kingPhi',
    'demixingRatio',
  ]);
});

test('the anneal temperature reaches what depends on it', () => {
  const at = (annealTemperature: number) =>
    lateValuesOf(parseAlloy('AlNi'), facts, ['hullDistance', 'kappaMargin', 'kingPhi'], {
      annealTemperature,
    });
  expect(at(500).hullDistance).toBeGreaterThan(at(1500).hullDistance!);
  expect(at(500).kappaMargin).toBeLessThan(at(1500).kappaMargin!);
  expect(at(500).kingPhi).toBe(at(1500).kingPhi);
});

test('an id that is not known is refused with the nearest and its place', () => {
  let fault: ProblemError['faults'][number] | undefined;
  try {
    lateQuantityById('hulldistance', '/keptOnly/0/quantity');
  } catch (error) {
    if (error instanceof ProblemError) fault = error.faults[0];
  }
  expect(fault).toMatchObject({ code: 'quantity/unknown', pointer: '/keptOnly/0/quantity' });
  expect(fault!.detail).toContain('did you mean "hullDistance"?');
  expect(() => lateValuesOf({ Al: 1 }, facts, ['nonsense'])).toThrow(ProblemError);
});
