import type { Facts, Limit, RankEntry } from '@tiegel/contract';
import { factsFor } from '@tiegel/elements';
import { evaluator, quantities } from '@tiegel/screening';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pointNumbering } from '../../src/grid/pointNumbering.ts';
import { candidateAt, type Prepared, prepare, scoreReference } from '../../src/index.ts';
import { kernelCode } from '../../src/kernel/code/kernelCode.ts';
import { kernelTask } from '../../src/kernel/kernelTask.ts';
import { scoreKernel } from '../../src/kernel/scoreKernel.ts';
import { wholeChunk } from '../fixtures/chunks.ts';
import { planOf } from '../fixtures/plans.ts';
import { specificationWith } from '../fixtures/specifications.ts';

const pool = ['Al', 'Co', 'Cr', 'Hf', 'Ni', 'Ti', 'W', 'Zr'];
const elements = { pool, require: [], forbid: [] };

/** The project's data, invented prices, and Hf made a twin of Zr in everything. */
function factsWithTwins(): Facts {
  const facts = factsFor(pool);
  const [twin, of] = [facts.symbols.indexOf('Hf'), facts.symbols.indexOf('Zr')];
  const price = facts.symbols.map((_, at) => 1.25 + at);
  const columns = Object.entries({ ...facts.columns, price }).map(([id, values]) => [
    id,
    values.map((value, at) => (at === twin ? values[of]! : value)),
  ]);
  const pairs = Object.entries(facts.pairs).map(([id, matrix]) => [
    id,
    matrix.map((row, i) =>
      row.map((_, j) => {
        const [one, other] = [i === twin ? of : i, j === twin ? of : j];
        return one === other ? 0 : matrix[one]![other]!;
      }),
    ),
  ]);
  return { symbols: facts.symbols, columns: Object.fromEntries(columns), pairs: Object.fromEntries(pairs) };
}

const facts = factsWithTwins();

/** A search over some thousand points of systems of two to four elements. */
function search(limits: Limit[], rank: RankEntry[], more: Parameters<typeof specificationWith>[0] = {}) {
  const components = { min: 2, max: 4 };
  const fractions = { step: 12.5, min: 12.5, max: 87.5, each: { W: { min: 12.5, max: 25 } } };
  return prepare(
    planOf(specificationWith({ elements, components, fractions, limits, rank, keep: 15, ...more }), facts),
  );
}

/** Limits on the very values of points, and off them by the tolerance, where rounding decides. */
function limitsAt(prepared: Prepared, id: string, pick: number): Limit[] {
  const { grid, systems, program } = prepared;
  const number = pick % systems.count;
  const system = systems.systemAt(number);
  const { count } = pointNumbering(grid, system);
  if (count === 0) return [];
  const { parts, total } = candidateAt(grid, number, pick % count);
  const values = new Float64Array(program.outputs.length);
  evaluator(program).evaluate(system, parts, total, values);
  const on = values[0]!;
  if (!Number.isFinite(on)) return [];
  return [0, 1, -1].map((side) => {
    const edge = on + side * 1e-12 * Math.max(1, Math.abs(on));
    return { quantity: id, ...(pick % 2 === 0 ? { min: edge } : { max: edge }) };
  });
}

function expectSame(prepared: Prepared): void {
  const chunk = wholeChunk(prepared);
  const expected = scoreReference(prepared, chunk, { cutOff: null });
  expect(scoreKernel(prepared, chunk, { cutOff: null })).toStrictEqual(expected);
}

/** Throws where no kernel is made, which another scorer would hide. */
function expectKernel(prepared: Prepared): void {
  const task = kernelTask(prepared);
  if (task === null) throw new Error('No kernel is made for this search.');
  for (const lanes of ['systems', 'line'] as const) kernelCode(task, 5, lanes);
}

describe.each(quantities.map(({ id }) => id))('%s', (id) => {
  test('as a limit on the values of points decides as the reference does', () => {
    const one = search([{ quantity: id, min: 0 }], [{ quantity: 'density', prefer: 'low' }]);
    expectKernel(one);
    for (const pick of [3, 170]) {
      for (const limit of limitsAt(one, id, pick)) {
        expectSame(search([limit], [{ quantity: 'density', prefer: 'low' }]));
      }
    }
  });

  test('as a ranking keeps what the reference keeps', () => {
    const limits = [{ quantity: 'mixingEnthalpy', min: -25, max: 5 }];
    for (const prefer of ['high', 'low', { target: 3 }] as const) {
      const one = search(limits, [{ quantity: id, prefer }]);
      expectKernel(one);
      expectSame(one);
    }
    const desirable: RankEntry[] = [
      { quantity: id, prefer: 'high', from: 0.1, to: 40, weight: 0.3 },
      { quantity: 'omega', prefer: { target: 2 }, within: 3, shape: 0.5 },
      { quantity: 'density', prefer: 'low', from: 3, to: 12, shape: 2 },
    ];
    expectSame(search(limits, desirable, { keepPerSystem: 2 }));
  });
});

/** Own expressions that no rewriting rule fits, that have no value here and there, or that are infinite. */
const expressions = [
  'exp(omega / 7) + ln(omega + 1) * valenceElectronConcentration',
  'sqrt(mixingEnthalpy + 5) * density',
  '1 / mixingEnthalpy + 1 / (mixingEnthalpy - 1)',
  'max(min(mixingEnthalpy, -3), -12) * abs(valenceElectronConcentration - 6)',
  'ln(valenceElectronConcentration - 5.5) / (density - 7)',
  '(omega - 2)^2 + (omega - 2)^3 - abs(pughRatio - 0.5)^0.3',
  'valenceElectronConcentration * omega - (valenceElectronConcentration - 6)^2 / omega',
  'ln(max(1.5, mixingEnthalpy / mixingEnthalpy)) * density',
  'max(1.5, mixingEnthalpy / mixingEnthalpy)^0.3 - 1 / density',
  'max(density, 1 / electronegativitySpread)',
];

test.each(expressions)(
  'the own expression %s has the outcome of the reference as limit and as ranking',
  (text) => {
    const lets = { own: text };
    for (const [limits, prefer] of [
      [[{ quantity: 'own', max: 2 }], 'high'],
      [[{ quantity: 'own', min: -3 }], 'low'],
      [[{ quantity: 'own', min: -1, max: 6 }], { target: 1 }],
    ] as const) {
      expectSame(search([...limits], [{ quantity: 'own', prefer }], { lets }));
    }
  },
);

/** Own expressions that are rewritten: a quotient by a quotient, and quotients of sums of exponentials. */
const rewritten = [
  'youngsModulus / density',
  'valenceElectronConcentration / (omega / (1 + abs(mixingEnthalpy)))',
  '(2 + exp(valenceElectronConcentration - 6)) / (exp(mixingEnthalpy / 5) + exp(density / 3 - 2))',
  '1 / (1 + exp(20 - configurationalEntropy * 1.5) / (exp(mixingEnthalpy / 2) + 3))',
  'exp(mixingEnthalpy * 3) / exp(valenceElectronConcentration * 4 - configurationalEntropy * 2)',
  'exp(700 - density * 150) / (exp(mixingEnthalpy * 40) + exp(0 - 650))',
];

test.each(rewritten)(
  'the own expression %s decides as the reference does, on the values of points',
  (text) => {
    const lets = { own: text };
    const rank: RankEntry[] = [{ quantity: 'own', prefer: 'high' }];
    const prepared = search([{ quantity: 'own', max: 1 }], rank, { lets });
    fc.assert(
      fc.property(fc.nat(), (pick) => {
        const limits = limitsAt(prepared, 'own', pick);
        expectSame(search(limits, rank, { lets }));
      }),
      { numRuns: 12 },
    );
  },
);

test.each([
  ['omega', 2, undefined],
  ['omega', 1e9, undefined],
  ['half', 2, 'min(1000, 0.5 * (meltingTemperature * configurationalEntropy / abs(mixingEnthalpy)))'],
])(
  'where no pair mixes with heat and Ω is infinite everywhere, %s up to %d is desirable',
  (quantity, to, own) => {
    const { symbols, columns, pairs } = factsWithTwins();
    const without = Object.keys(pairs).map((id) => [id, symbols.map(() => symbols.map(() => 0))]);
    // Low melting points make the sum above the quotient small, and what it is compared with large.
    const meltingTemperature = symbols.map(() => 1);
    const ideal = {
      symbols,
      columns: { ...columns, meltingTemperature },
      pairs: Object.fromEntries(without),
    };
    const rank: RankEntry[] = [
      { quantity: 'configurationalEntropy', prefer: { target: 0 }, within: 8 },
      { quantity, prefer: 'high', from: 0, to, weight: 2 },
    ];
    const fractions = { step: 5, min: 5, max: 100, each: {} };
    const lets = own === undefined ? {} : { half: own };
    const { plan } = search([], rank, { components: { min: 1, max: 2 }, fractions, lets });
    const prepared = prepare({ ...plan, facts: ideal });
    const chunk = wholeChunk(prepared);
    const expected = scoreReference(prepared, chunk, { cutOff: null })!;
    const cutOff = expected.best.at(-3)!;
    expect(cutOff).toBeGreaterThan(0);
    expect(scoreKernel(prepared, chunk, { cutOff })).toStrictEqual(expected);
  },
);

test('many limits on the values of points at once have the outcome of the reference', () => {
  const ids = quantities.map(({ id }) => id);
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.constantFrom(...ids), { minLength: 2, maxLength: 9 }),
      fc.array(fc.nat({ max: 5000 }), { minLength: 9, maxLength: 9 }),
      fc.constantFrom('high' as const, 'low' as const),
      fc.constantFrom(0, 7, 5000),
      (some, picks, prefer, keep) => {
        const limits = some.flatMap((id, at) => {
          const one = search([{ quantity: id, min: 0 }], [{ quantity: 'cost', prefer }]);
          return limitsAt(one, id, picks[at]!).slice(picks[at]! % 3, (picks[at]! % 3) + 1);
        });
        expectSame(search(limits, [{ quantity: some[0]!, prefer }], { keep }));
      },
    ),
    { numRuns: 25 },
  );
});

describe('counts, which a kernel holds in 16 bits for a while', () => {
  /** All points meet the first limit, none the second: no evaluator is needed to know the counts. */
  const limits: Limit[] = [
    { quantity: 'density', min: 0.1 },
    { quantity: 'density', min: 1000 },
    { quantity: 'omega', min: 0 },
  ];
  const rank: RankEntry[] = [{ quantity: 'density', prefer: 'low' }];

  test.each([
    ['many points of few systems', 1, 3],
    ['few points of many systems', 4, 0],
    ['one system, two points at a time', 1, 4],
  ])('are whole: %s', (_, step, required) => {
    const prepared = search(limits, rank, {
      elements: { pool, require: pool.slice(0, required), forbid: [] },
      components: { min: 4, max: 4 },
      fractions: { step, min: step, max: 100, each: {} },
    });
    expectKernel(prepared);
    const chunk = wholeChunk(prepared);
    const { points, passed, passedEach } = scoreKernel(prepared, chunk, { cutOff: -1e9 })!;
    // C(99, 3) points of a system at 1 %, C(24, 3) at 4 %.
    expect(points).toBe(prepared.systems.count * (step === 1 ? 156_849 : 2024));
    expect({ passed, passedEach }).toStrictEqual({ passed: 0, passedEach: [points, 0, points] });
  });
});
