import { columns } from '@tiegel/elements';
import { describe, expect, test } from 'vitest';
import { atomicVolume } from './dataChecks/atomicVolume.ts';
import { type CheckedData, copyOfData, type DataCheck } from './dataChecks/checkedData.ts';
import { miedemaModel } from './dataChecks/miedemaModel.ts';
import { moduli } from './dataChecks/moduli.ts';
import { order } from './dataChecks/order.ts';
import { outsidePackages } from './dataChecks/outsidePackages.ts';
import { valence } from './dataChecks/valence.ts';

const checks: Record<string, DataCheck> = {
  order,
  outsidePackages,
  atomicVolume,
  moduli,
  valence,
  miedemaModel,
};
const everyCheck = (data: CheckedData): string[] => Object.values(checks).flatMap((check) => check(data));

describe('the element and pair data', () => {
  test.for(Object.keys(checks))('pass the check: %s', (name) => {
    expect(checks[name]!(copyOfData())).toEqual([]);
  });
});

type ColumnId = (typeof columns)[number]['id'];
const ids: ColumnId[] = columns.map(({ id }) => id);

function rotated(data: CheckedData, column: ColumnId): CheckedData {
  const values = data.elements.map((element) => element[column]);
  data.elements.forEach((element, index) => {
    element[column] = values.at(index - 1)!;
  });
  return data;
}

function swapped(data: CheckedData, first: ColumnId, second: ColumnId): CheckedData {
  for (const element of data.elements) {
    [element[first], element[second]] = [element[second], element[first]];
  }
  return data;
}

describe('the checks object', () => {
  test.for(ids)('when the column %s slips by one row', (column) => {
    expect(everyCheck(rotated(copyOfData(), column))).not.toEqual([]);
  });

  test('when any two columns are exchanged', () => {
    const unseen = ids.flatMap((first, index) =>
      ids
        .slice(index + 1)
        .filter((second) => everyCheck(swapped(copyOfData(), first, second)).length === 0)
        .map((second) => `${first} and ${second}`),
    );
    expect(unseen).toEqual([]);
  });

  test('when melting and boiling temperatures are exchanged, and name the elements', () => {
    const found = outsidePackages(swapped(copyOfData(), 'meltingTemperature', 'boilingTemperature'));
    expect(found.length).toBeGreaterThan(100);
    expect(found).toContain('Fe: meltingTemperature (periodic-table) is 3134, expected 1811');
  });

  test('when the pair enthalpies slip by one row', () => {
    const data = copyOfData();
    const values = data.pairs.map(({ mixingEnthalpy }) => mixingEnthalpy);
    data.pairs.forEach((pair, index) => {
      pair.mixingEnthalpy = values.at(index - 1)!;
    });
    expect(miedemaModel(data)).toHaveLength(2);
  });

  test('when two rows change places or one is missing', () => {
    const exchanged = copyOfData();
    exchanged.elements.reverse();
    expect(order(exchanged)).not.toEqual([]);
    const shortened = copyOfData();
    shortened.elements.splice(20, 1);
    expect(order(shortened)).not.toEqual([]);
  });
});
