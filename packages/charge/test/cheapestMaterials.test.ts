import { ProblemError } from '@tiegel/contract';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { cheapestMaterials, shortages } from '../src/cheapestMaterials.ts';
import { type ChargeRequest, chargeSheet, type Material, materialOf } from '../src/index.ts';
import { type AnotherSolver, anotherSolver } from './fixtures/anotherSolver.ts';
import { requests } from './fixtures/requests.ts';

let solver: AnotherSolver;
beforeAll(async () => {
  solver = await anotherSolver();
});

/** Mass fractions of the composition; how much of what is charged does not matter to the programme. */
function massesOf({ composition }: ChargeRequest): Record<string, number> {
  return Object.fromEntries(Object.entries(composition).map(([symbol, share]) => [symbol, share / 100]));
}

const costOf = (used: ReadonlyMap<Material, number>): number =>
  [...used].reduce((sum, [{ price }, mass]) => sum + price! * mass, 0);

/** The least cost by another solver, null where it finds the programme infeasible. */
function leastCost(materials: readonly Material[], masses: Record<string, number>): number | null {
  const balances = Object.entries(masses).map(([symbol, mass]) => {
    const parts = materials.flatMap(({ contains, purity }, at) =>
      symbol in contains ? [`+ ${(contains[symbol]! / 100) * (purity / 100)} m${at}`] : [],
    );
    return parts.length === 0 ? ` 0 m0 = ${mass}` : ` ${parts.join(' ')} = ${mass}`;
  });
  const text = `Minimize\n ${materials.map(({ price }, at) => `+ ${price} m${at}`).join(' ')}\nSubject To\n${balances.join('\n')}\nEnd`;
  const found = solver.solve(text, {
    primal_feasibility_tolerance: 1e-10,
    dual_feasibility_tolerance: 1e-10,
  });
  return found.Status === 'Optimal' ? found.ObjectiveValue : null;
}

test('another solver finds the same least cost', () => {
  fc.assert(
    fc.property(requests, (request) => {
      const masses = massesOf(request);
      const used = cheapestMaterials(request.materials, masses)!;
      const least = leastCost(request.materials, masses)!;
      expect(Math.abs(costOf(used) - least)).toBeLessThanOrEqual(1e-6 * Math.max(1, least));
    }),
    { numRuns: 200 },
  );
});

test('the two agree on which sets of materials can make the alloy; what cannot is named', () => {
  let impossible = 0;
  fc.assert(
    fc.property(requests, fc.infiniteStream(fc.boolean()), (request, keep) => {
      const materials = request.materials.filter(() => keep.next().value);
      if (materials.length === 0) return;
      const masses = massesOf(request);
      const used = cheapestMaterials(materials, masses);
      const least = leastCost(materials, masses);
      expect(used === null).toBe(least === null);
      const missing = Object.keys(shortages(materials, masses));
      expect(missing.length > 0).toBe(used === null);
      if (used === null) impossible += 1;
      for (const symbol of Object.keys(masses)) {
        if (materials.every(({ contains }) => !(symbol in contains))) expect(missing).toContain(symbol);
      }
    }),
    { numRuns: 300 },
  );
  expect(impossible).toBeGreaterThan(50);
});

const material = (name: string, contains: string, price: number | null): Material =>
  materialOf({ name, contains, amounts: 'wt.%', price }, '', '', [])!;

describe('prices', () => {
  test('a material without one is taken only where nothing else will do', () => {
    const priced = material('Ni shot', 'Ni', 1e6);
    const free = material('Ni scrap', 'Ni', null);
    const iron = material('Fe', 'Fe', null);
    const used = cheapestMaterials([free, priced, iron], { Fe: 0.5, Ni: 0.5 })!;
    expect([...used.keys()]).toEqual([priced, iron]);
  });

  test('none at all still makes a charge', () => {
    const used = cheapestMaterials([material('Ni', 'Ni', null), material('Fe', 'Fe', 0)], {
      Fe: 0.5,
      Ni: 0.5,
    });
    expect(used?.size).toBe(2);
  });
});

describe('why an element cannot be met', () => {
  const detailsOf = (materials: Material[]) => {
    try {
      chargeSheet({
        composition: { Fe: 50, Ni: 50 },
        mass: 50,
        resolution: 0.001,
        materials,
        currency: null,
      });
    } catch (error) {
      if (error instanceof ProblemError)
        return error.faults.map(({ detail, remedy }) => `${detail} ${remedy}`);
      throw error;
    }
    return [];
  };
  const iron = material('Fe', 'Fe', 1);

  test('no material has it', () => {
    expect(detailsOf([iron])).toEqual([
      'The materials cannot give the 50 at.% of Ni: no material has Ni in it. Add Ni as a metal, or a master alloy of Ni with nothing else than Fe.',
    ]);
  });
  test('it comes with an element that is not in the alloy', () => {
    expect(detailsOf([iron, material('NiCu', 'Ni70Cu30', 1)])).toEqual([
      'The materials cannot give the 50 at.% of Ni: all that has Ni in it (NiCu) brings Cu too, of which the alloy has none. Add Ni as a metal, or a master alloy of Ni with nothing else than Fe.',
    ]);
  });
  test('it comes with too much of another', () => {
    expect(detailsOf([material('FeNi20', 'Fe80Ni20', 1), iron])).toEqual([
      'The materials cannot give the 50 at.% of Ni: all that has Ni in it (FeNi20) brings too much Fe with it. Add Ni as a metal, or a master alloy with more Ni and less Fe.',
    ]);
  });
});
