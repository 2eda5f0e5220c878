import { ProblemError } from '@tiegel/contract';
import { demoPrices, elementNumber, parseAlloy } from '@tiegel/elements';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ChargeRequest, type ChargeSheet, chargeSheet, pureMaterials } from '../src/index.ts';
import { outsideMasses, requests } from './fixtures/requests.ts';

const plain = (alloy: string, more: Partial<ChargeRequest> = {}): ChargeRequest => {
  const composition = parseAlloy(alloy);
  const pure = pureMaterials(Object.keys(composition), demoPrices);
  return { composition, mass: 50, resolution: 0.001, ...pure, ...more };
};

/** at.% of weighed masses after losses, by the atomic masses of another package: no line of this project's code. */
function readBack(
  { lines, loss }: Pick<ChargeSheet, 'lines' | 'loss'>,
  atomicMass = (symbol: string) => outsideMasses.get(symbol)!,
): Record<string, number> {
  const moles: Record<string, number> = {};
  for (const { mass, contains, purity } of lines) {
    for (const [symbol, percent] of Object.entries(contains)) {
      const grams = mass * (purity / 100) * (percent / 100) * (1 - (loss[symbol] ?? 0) / 100);
      moles[symbol] = (moles[symbol] ?? 0) + grams / atomicMass(symbol);
    }
  }
  const sum = Object.values(moles).reduce((total, one) => total + one, 0);
  return Object.fromEntries(Object.entries(moles).map(([symbol, one]) => [symbol, (100 * one) / sum]));
}

/** A request that can be weighed, or null: some element may come out below half a step. */
function sheetOf(request: ChargeRequest): ChargeSheet | null {
  try {
    return chargeSheet(request);
  } catch (error) {
    if (error instanceof ProblemError && error.faults[0]!.code === 'charge/too-light') return null;
    throw error;
  }
}

test('masses, read back with the atomic masses of another package, give the target within the stated rounding', () => {
  let weighed = 0;
  fc.assert(
    fc.property(requests, (request) => {
      const sheet = sheetOf(request);
      if (sheet === null) return;
      weighed += 1;
      const shares = readBack(sheet);
      for (const [symbol, share] of Object.entries(request.composition)) {
        // Masses of the two tables differ by at most 1e-4 of themselves (test/published), so shares by twice that.
        const tolerance = sheet.rounding[symbol]! + 2e-4 * share;
        expect(Math.abs(shares[symbol]! - share)).toBeLessThanOrEqual(tolerance);
        expect(Math.abs(sheet.resulting[symbol]! - share)).toBeLessThanOrEqual(
          sheet.rounding[symbol]! + 1e-7,
        );
      }
      expect(Object.keys(shares).sort()).toEqual(Object.keys(request.composition).sort());
    }),
    { numRuns: 400 },
  );
  expect(weighed).toBeGreaterThan(300);
});

test('the stated rounding is not wider than it must be: some corner of half a step each comes near it', () => {
  let compared = 0;
  fc.assert(
    fc.property(requests, (request) => {
      const pure = request.materials.filter(({ contains }) => Object.keys(contains).length === 1);
      const sheet = sheetOf({ ...request, materials: pure });
      const half = request.resolution / 2;
      // Where half a step is much of a mass the two differ in the second order.
      if (sheet === null || sheet.lines.some(({ exact }) => exact < 200 * half)) return;
      for (const symbol of Object.keys(request.composition)) {
        // More of one and less of all others, and the other way round.
        const off = [half, -half].map((by) => {
          const lines = sheet.lines.map((line) => ({
            ...line,
            mass: line.exact + (line.element === symbol ? by : -by),
          }));
          const shares = readBack({ lines, loss: sheet.loss }, (one) => elementNumber(one, 'atomicMass')!);
          return Math.abs(shares[symbol]! - request.composition[symbol]!);
        });
        compared += 1;
        expect(Math.max(...off)).toBeGreaterThan(0.97 * sheet.rounding[symbol]!);
      }
    }),
    { numRuns: 200 },
  );
  expect(compared).toBeGreaterThan(300);
});

test('every mass is a multiple of the resolution, and the total is the batch mass within half a step for each line', () => {
  fc.assert(
    fc.property(requests, (request) => {
      const sheet = sheetOf(request);
      if (sheet === null) return;
      const { mass, resolution } = request;
      for (const line of sheet.lines) {
        const steps = Math.round(line.mass / resolution);
        expect(steps).toBeGreaterThan(0);
        expect(line.mass).toBe(Number((steps * resolution).toFixed(6)));
        expect(Math.abs(line.mass - line.exact)).toBeLessThanOrEqual(resolution * (0.5 + 1e-6));
      }
      expect(Math.abs(sheet.total - mass)).toBeLessThanOrEqual(
        resolution * sheet.lines.length * (0.5 + 1e-6),
      );
      expect(sheet.total).toBeCloseTo(
        sheet.lines.reduce((sum, line) => sum + line.mass, 0),
        6,
      );
    }),
    { numRuns: 300 },
  );
});

test('what is weighed is ingot, loss and nothing else', () => {
  fc.assert(
    fc.property(requests, (request) => {
      const sheet = sheetOf(request);
      if (sheet === null) return;
      const { ingot, lost } = sheet.expected;
      expect(ingot + Object.values(lost).reduce((sum, one) => sum + one, 0)).toBeCloseTo(sheet.total, 9);
    }),
    { numRuns: 50 },
  );
});

/*
 * Worked by hand, 50 g of CoCrFeMnNi with manganese of 99.7 % of which 1.5 % evaporates, on a balance
 * of 1 mg. Atomic masses in u as in any table: Co 58.933, Cr 51.996, Fe 55.845, Mn 54.938, Ni 58.693.
 *
 * 1. One mole of alloy holds 0.2 mol of each:  Co 11.7866  Cr 10.3992  Fe 11.1690  Mn 10.9876  Ni 11.7386 g
 * 2. Manganese before its loss:                10.9876 / (1 − 0.015)  = 11.1549 g
 * 3. Manganese as bought:                      11.1549 / 0.997        = 11.1885 g
 * 4. To weigh for one mole: 11.7866 + 10.3992 + 11.1690 + 11.1885 + 11.7386 = 56.2819 g
 * 5. For 50 g, times 50 / 56.2819 = 0.888385:  Co 10.4710  Cr 9.2385  Fe 9.9224  Mn 9.9397  Ni 10.4284 g
 * 6. On the balance:                           10.471      9.238      9.922      9.940      10.428 g
 * 7. In all 49.999 g, of which 0.3 % of 9.940 = 0.030 g is impurity, and 1.5 % of 9.910 = 0.149 g evaporates.
 */
test('a batch worked by hand: a purity and a loss', () => {
  const composition = parseAlloy('CoCrFeMnNi');
  const materials = pureMaterials(Object.keys(composition), null, { Mn: 99.7 });
  const sheet = chargeSheet({ composition, mass: 50, resolution: 0.001, ...materials, loss: { Mn: 1.5 } });
  expect(sheet.lines.map(({ material, element, mass }) => [material, element, mass])).toEqual([
    ['Co', 'Co', 10.471],
    ['Cr', 'Cr', 9.238],
    ['Fe', 'Fe', 9.922],
    ['Mn 99.7 %', 'Mn', 9.94],
    ['Ni', 'Ni', 10.428],
  ]);
  const hand = { Co: 10.471, Cr: 9.2385, Fe: 9.9224, 'Mn 99.7 %': 9.9397, Ni: 10.4284 };
  for (const { material, exact } of sheet.lines) {
    expect(Math.abs(exact - hand[material as keyof typeof hand])).toBeLessThanOrEqual(0.0001);
  }
  expect(sheet.total).toBe(49.999);
  expect(sheet.expected.impurities).toBeCloseTo(0.03, 3);
  expect(sheet.expected.lost.Mn).toBeCloseTo(0.149, 3);
  expect(sheet.notes.join(' ')).toMatch(/Purity is wt\.%.*Mn 99\.7 %.*unknown composition/);
  expect(sheet.notes.join(' ')).toMatch(/losses are made up for: of the mass of Mn 1\.5 %/);
});

/*
 * Worked by hand, 100 g of Fe50Nb50 (at.%) from ferroniobium FeNb66 (66 wt.% Nb, 34 wt.% Fe, 98 % pure,
 * 40 a kg), iron (1 a kg) and niobium (90 a kg). Nb 92.906, Fe 55.845 u.
 *
 * 1. Of 148.751 g of alloy 92.906 g are niobium: 62.457 wt.%; 37.543 wt.% are iron.
 * 2. Niobium from FeNb66 at 40/(0.98 · 0.66) = 61.8 a kg of Nb, its iron for nothing: cheaper than 90. So all of it:
 *    62.457 / (0.98 · 0.66) = 96.563 g of FeNb66 for 100 g of metal, which bring 96.563 · 0.98 · 0.34 = 32.175 g of iron.
 * 3. Iron still wanted: 37.543 − 32.175 = 5.368 g. To weigh: 101.931 g for 100 g of metal.
 * 4. For 100 g weighed, divided by 1.01931: FeNb66 94.733 g, Fe 5.267 g.
 */
test('a batch worked by hand: a master alloy takes the place of a dear element', () => {
  const material = (name: string, contains: Record<string, number>, purity: number, price: number) => ({
    ...{ name, contains, purity, price, meltingTemperature: null },
  });
  const sheet = chargeSheet({
    ...{ composition: parseAlloy('FeNb'), mass: 100, resolution: 0.01, currency: 'EUR' },
    materials: [
      material('Nb', { Nb: 100 }, 100, 90),
      material('Fe', { Fe: 100 }, 100, 1),
      material('FeNb66', { Fe: 34, Nb: 66 }, 98, 40),
    ],
  });
  expect(sheet.lines.map(({ material: name, element, mass }) => [name, element, mass])).toEqual([
    ['Fe', 'Fe', 5.27],
    ['FeNb66', null, 94.73],
  ]);
  expect(sheet.cost).toBeCloseTo((5.27 * 1 + 94.73 * 40) / 1000, 12);
  expect(sheet.notes.join(' ')).toContain('mean of its elements');
  // By mass: 0.34 · 1811 + 0.66 · 2750 K. So it is laid on iron.
  const { temperature, estimated } = sheet.lines[1]!.melting;
  expect(temperature).toBeCloseTo(2430.74, 9);
  expect(estimated).toBe(true);
  expect(sheet.order).toEqual(['Fe', 'FeNb66']);
});

describe('what is said beside the masses', () => {
  test('without purity and loss, both are stated as such', () => {
    const { notes } = chargeSheet(plain('CoCrFeNi'));
    expect(notes).toContain('Every material counts as 100 % pure.');
    expect(notes.join(' ')).toContain('No loss in melting is made up for');
  });

  test('order is by melting point; the gap is lowest boiling less highest melting', () => {
    // Mn 1519, Ni 1728, Cr 2180 K; Mn boils at 2334 K: CRC Handbook, the project's own table.
    const { order, window } = chargeSheet(plain('CrMnNi'));
    expect(order).toEqual(['Mn', 'Ni', 'Cr']);
    expect(window).toEqual({
      lowestBoiling: { element: 'Mn', temperature: 2334 },
      highestMelting: { element: 'Cr', temperature: 2180 },
      gap: 154,
    });
  });

  // Carbon sublimes at 4098 K and stands highest by that: but the arc strikes there.
  test('graphite stands last in the order, with the word that it does not belong on top', () => {
    const { order, notes } = chargeSheet(plain('Fe95C5'));
    expect(order).toEqual(['Fe', 'C']);
    expect(notes.join(' ')).toContain('Graphite does not melt but dissolves');
    expect(chargeSheet(plain('FeNi')).notes.join(' ')).not.toContain('Graphite');
  });

  test('the cost is that of the masses weighed, and none where a price is unknown', () => {
    const priced = chargeSheet(plain('FeNi'));
    const { Fe, Ni } = demoPrices.prices;
    const [iron, nickel] = priced.lines;
    const cost = (iron!.mass * Fe!.pricePerKilogram + nickel!.mass * Ni!.pricePerKilogram) / 1000;
    expect(priced.cost).toBeCloseTo(cost, 12);
    const unpriced = chargeSheet(plain('FeNi', pureMaterials(['Fe', 'Ni'], null)));
    expect(unpriced.cost).toBeNull();
    expect(unpriced.notes.join(' ')).toContain('No cost: Fe, Ni have no price');
  });

  test('a rough balance is named', () => {
    expect(chargeSheet(plain('Fe99C1', { resolution: 0.01 })).notes.join(' ')).toMatch(
      /more than 1 % of the mass of C /,
    );
  });
});

describe('what cannot be charged', () => {
  const faultsOf = (request: ChargeRequest) => {
    try {
      chargeSheet(request);
    } catch (error) {
      if (error instanceof ProblemError) return error.faults.map(({ code, pointer }) => `${code} ${pointer}`);
      throw error;
    }
    return [];
  };
  test.each([
    [{ mass: 0 }, 'request/wrong-value /mass'],
    [{ mass: Number.NaN }, 'request/wrong-value /mass'],
    [{ mass: 1e9 }, 'request/wrong-value /mass'],
    [{ resolution: 0 }, 'request/wrong-value /resolution'],
    [{ resolution: 60 }, 'request/wrong-value /resolution'],
    [{ loss: { Fe: 100 } }, 'request/wrong-value /loss/Fe'],
    [{ loss: { Fe: 90.1 } }, 'request/wrong-value /loss/Fe'],
    [{ loss: { Zn: 5 } }, 'charge/not-in-alloy /loss/Zn'],
    // What every object has of its own is no element of the alloy either.
    [{ loss: { toString: 5 } }, 'charge/not-in-alloy /loss/toString'],
    [{ mass: 0.4, resolution: 0.3 }, 'charge/too-light /mass'],
  ])('%j', (more, expected) => {
    expect(faultsOf(plain('Fe80Ni20', more))).toContain(expected);
  });

  test('all that is wrong is told at once', () => {
    expect(faultsOf(plain('FeNi', { mass: -1, loss: { Zn: 5 } }))).toHaveLength(2);
  });

  test('a share that no balance shows is refused as such, whatever the batch', () => {
    expect(faultsOf(plain('Ni99.99999999Co0.00000001'))).toEqual(['charge/cannot-be-met /materials']);
    // A millionth of the mass is too little here, and not too little for a finer balance.
    const few = parseAlloy('Ni99.9999Co0.0001');
    expect(faultsOf({ ...plain('NiCo'), composition: few })).toEqual(['charge/too-light /mass']);
    expect(faultsOf({ ...plain('NiCo'), composition: few, resolution: 1e-6 })).toEqual([]);
  });
});
