import type { SearchSpecification } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { readPlot } from '../../../src/look/scatter/plotState.ts';
import { usualPlot } from '../../../src/look/scatter/usualPlot.ts';
import type { ShownQuantity } from '../../../src/server/types.ts';

const quantities = ['density', 'omega', 'sizeMismatch', 'cost', 'meltingTemperature'].map(
  (id) => ({ id, name: id }) as ShownQuantity,
);
const specification = {
  rank: [
    { quantity: 'sizeMismatch', prefer: 'low' },
    { quantity: 'cost', prefer: { target: 10 } },
  ],
  limits: [
    { quantity: 'density', max: 8 },
    { quantity: 'meltingTemperature', min: 1500, max: 2000 },
  ],
} as unknown as SearchSpecification;
const wishes = (address: string, asked = specification) =>
  usualPlot(readPlot(new URLSearchParams(address)), asked, quantities).wishes;

test('a side of a quantity is better only where the search says so', () => {
  expect(wishes('x=density&y=sizeMismatch')).toEqual(['low', 'low']);
  expect(wishes('x=omega&y=density')).toEqual(['none', 'low']);
  expect(wishes('x=cost&y=meltingTemperature')).toEqual(['none', 'none']);
});

test('what a search asks of its own front holds, and what a person chooses goes before', () => {
  const fronted = { ...specification, front: [{ quantity: 'omega', prefer: 'high' }] } as SearchSpecification;
  expect(wishes('x=omega&y=density', fronted)).toEqual(['high', 'low']);
  expect(wishes('x=omega&y=density&better=low,none')).toEqual(['low', 'none']);
});
