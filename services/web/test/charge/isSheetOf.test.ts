import { expect, test } from 'vitest';
import type { ChargeBody } from '../../src/charge/chargeOf.ts';
import { isSheetOf } from '../../src/charge/isSheetOf.ts';

const body: ChargeBody = {
  ...{
    composition: { Al: 50, Ni: 50 },
    mass: 50,
    resolution: 0.001,
    loss: {},
    currency: 'EUR',
    name: ' Trial ',
  },
  materials: [{ name: 'Al', purity: 100, price: 2 }],
};
const { name: _, ...request } = body;

test('a sheet is the one that was asked for, whatever the order of its keys and the spaces about its name', () => {
  const turned = Object.fromEntries(Object.entries(request).toReversed());
  expect(isSheetOf({ name: 'Trial', request: turned }, body)).toBe(true);
});

test.each<[string, Partial<ChargeBody>]>([
  ['another mass', { mass: 60 }],
  ['another name', { name: 'Trial 2' }],
  ['another price', { materials: [{ name: 'Al', purity: 100, price: 3 }] }],
])('%s makes it another', (_, part) => {
  expect(isSheetOf({ name: 'Trial', request }, { ...body, ...part })).toBe(false);
});
