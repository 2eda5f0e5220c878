import { expect, test } from 'vitest';
import { alloyAddress } from '../../../src/alloy/entry/alloyAddress.ts';
import { readAlloyView, writeAlloyView } from '../../../src/alloy/state/alloyView.ts';

test('a view comes back from its address', () => {
  const view = {
    conditions: { annealTemperature: 900, grainSize: 20 },
    replace: 'Co',
    partners: ['Ni', 'Mn'],
    mass: 20,
    resolution: 0.01,
  };
  const text = writeAlloyView(view);
  expect(text).toBe('annealTemperature=900&grainSize=20&replace=Co&with=Ni,Mn&mass=20&resolution=0.01');
  expect(readAlloyView(text)).toEqual(view);
});

test('what is usual leaves no trace, what makes no sense is left out', () => {
  expect(writeAlloyView(readAlloyView(''))).toBe('');
  const read = readAlloyView('annealTemperature=hot&strainRate=1e9&grainSize=&replace=c0&with=Ni,,x&mass=-1');
  expect(read).toEqual({ conditions: {}, replace: null, partners: ['Ni'], mass: 50, resolution: 0.001 });
});

test('an alloy has the address of its canonical composition, in the light of a search where there is one', () => {
  expect(alloyAddress({ Ni: 1, Co: 1 })).toBe('/alloys/Co50Ni50');
  expect(alloyAddress({ Ni: 50, Co: 50 }, { grainSize: 4 }, 'ab')).toBe(
    '/searches/ab/candidates/Co50Ni50?grainSize=4',
  );
});
