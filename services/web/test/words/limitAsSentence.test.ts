import { expect, test } from 'vitest';
import { limitAsSentence } from '../../src/words/limitAsSentence.ts';

const lookup = (id: string) =>
  id === 'density' ? { name: 'Density', unit: 'g/cm³' } : { name: id, unit: 'MPa' };

test.each([
  [{ quantity: 'density', max: 8 }, 'Density ≤ 8 g/cm³'],
  [{ quantity: 'yieldPerMass', min: 1 }, 'yieldPerMass ≥ 1 MPa'],
  [{ quantity: 'merit', min: -1 }, 'merit ≥ −1 MPa'],
  [{ quantity: 'Merit', min: 1, max: 2.5 }, 'Merit 1 to 2.5 MPa'],
])('%o begins as it was written', (limit, shown) => {
  expect(limitAsSentence(limit, lookup).replaceAll('\u00a0', ' ')).toBe(shown);
});

test('a number stays with its sign and unit, of an expression too', () => {
  expect(limitAsSentence({ quantity: 'merit', min: 1 }, lookup)).toBe('merit ≥\u00a01\u00a0MPa');
});
