import { describe, expect, test } from 'vitest';
import { digestOf, versionedData } from '../src/dataVersion.ts';
import { columns, dataVersionOf, demoPrices, type PriceList } from '../src/index.ts';

describe('the data version', () => {
  test('is twelve hexadecimal digits, the same every time', () => {
    expect(dataVersionOf(null)).toMatch(/^[0-9a-f]{12}$/);
    expect(dataVersionOf(demoPrices)).toBe(dataVersionOf(structuredClone(demoPrices)));
  });

  test('changes with every single element value', () => {
    const seen = new Set([dataVersionOf(null)]);
    for (const { id } of columns) {
      const data = structuredClone(versionedData(null));
      const before = data.elements.Fe![id];
      data.elements.Fe![id] =
        typeof before === 'number' ? before * (1 + Number.EPSILON) + Number.EPSILON : null;
      seen.add(digestOf(data));
    }
    expect(seen.size).toBe(1 + columns.length);
  });

  test('changes when a missing value becomes zero', () => {
    const data = structuredClone(versionedData(null));
    data.elements.C!.meltingTemperature = 0;
    expect(digestOf(data)).not.toBe(dataVersionOf(null));
  });

  test('changes with every pair enthalpy', () => {
    const pairs = versionedData(null).pairs;
    const seen = new Set([dataVersionOf(null)]);
    for (let index = 0; index < pairs.length; index += 77) {
      const changed = pairs.map((pair, at) =>
        at === index ? { ...pair, mixingEnthalpy: pair.mixingEnthalpy + 1 } : pair,
      );
      seen.add(digestOf({ ...versionedData(null), pairs: changed }));
    }
    expect(seen.size).toBe(1 + Math.ceil(pairs.length / 77));
  });

  test('changes with the price list: any price, its date, its source, the currency, none at all', () => {
    const changes: ((list: PriceList) => void)[] = [
      () => {},
      (list) => {
        list.prices.Fe!.pricePerKilogram += 0.01;
      },
      (list) => {
        list.prices.Fe!.date = '2026-11-26';
      },
      (list) => {
        list.prices.Fe!.source = 'another';
      },
      (list) => {
        list.currency = 'CHF';
      },
      (list) => {
        list.invented = false;
      },
      (list) => {
        delete list.prices.Fe;
      },
    ];
    const versions = changes.map((change) => {
      const list = structuredClone(demoPrices);
      change(list);
      return dataVersionOf(list);
    });
    expect(new Set([...versions, dataVersionOf(null)]).size).toBe(changes.length + 1);
  });

  test('does not depend on the order in which a list names its elements', () => {
    const reversed = {
      ...demoPrices,
      prices: Object.fromEntries(Object.entries(demoPrices.prices).reverse()),
    };
    expect(dataVersionOf(reversed)).toBe(dataVersionOf(demoPrices));
  });
});

// SHA-256 of the text {"a":1,"b":[2,null]} by the sha256sum of GNU coreutils.
test('the digest is the beginning of a SHA-256 of sorted JSON', () => {
  expect(digestOf({ b: [2, null], a: 1 })).toBe('cc243773f70c');
});
