import { ProblemError } from '@tiegel/contract';
import { factsFor } from '@tiegel/elements';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bind,
  columnsOf,
  formulaValue,
  ownQuantity,
  parseExpression,
  type Quantity,
  quantities,
  quantityById,
  valuesOf,
} from '../../src/index.ts';
import { pricedFacts } from '../fixtures/elements.ts';
import { faultsFrom } from '../fixtures/faultsFrom.ts';

const facts = pricedFacts();
const alloy = { Co: 20, Cr: 20, Fe: 20, Mn: 20, Ni: 20 };
const valueAt = (text: string) => formulaValue(parseExpression(text, quantities).expression, alloy, facts);
const { density, meltingTemperature, omega } = valuesOf(alloy, facts) as Record<string, number>;

const faultsOf = (text: string, known: readonly Quantity[] = quantities) =>
  faultsFrom(() => parseExpression(text, known, '/lets/merit'));

describe('a formula means what mathematics says', () => {
  // By rules of arithmetic, with the values of the quantities in place.
  test.for([
    ['density', density!],
    ['0.4*min(omega,10)/10 - density/8', (0.4 * Math.min(omega!, 10)) / 10 - density! / 8],
    ['1 + 2*omega', 1 + 2 * omega!],
    ['(1 + 2)*omega', 3 * omega!],
    ['10 - omega - 1', 9 - omega!],
    ['omega / 2 / 5', omega! / 10],
    ['-omega^2', -(omega! ** 2)],
    ['(-omega)^2', omega! ** 2],
    ['omega^-1', 1 / omega!],
    ['omega^2^0.5', omega! ** (2 ** 0.5)],
    ['omega^(1/3)', Math.cbrt(omega!)],
    ['2^3 * omega', 8 * omega!],
    ['--omega - +omega', 0],
    [
      'sqrt(omega) + abs(-omega) + exp(-omega) + ln(omega)',
      Math.sqrt(omega!) + omega! + Math.exp(-omega!) + Math.log(omega!),
    ],
    ['max(1, omega, 100)', 100],
    ['.5e1*omega + 1.*0', 5 * omega!],
    ['  omega\t*\n2 ', 2 * omega!],
    ['density/8 + meltingTemperature/2000', density! / 8 + meltingTemperature! / 2000],
  ] as const)('%s', ([text, value]) => {
    expect(valueAt(text)).toBeCloseTo(value, 10);
  });

  test('and any arithmetic on numbers and one name agrees with that of the language', () => {
    const leaf = fc.oneof(
      fc.constant('omega'),
      fc.integer({ min: 1, max: 9 }).map(String),
      fc.constantFrom('0.5', '2.25', '1e1'),
    );
    const { tree } = fc.letrec<{ tree: string }>((tie) => ({
      tree: fc.oneof(
        { depthSize: 'small', withCrossShrink: true },
        leaf,
        fc
          .tuple(tie('tree'), fc.constantFrom('+', '-', '*'), tie('tree'))
          .map(([a, sign, b]) => `${a} ${sign} ${b}`),
        tie('tree').map((inner) => `(${inner})`),
        tie('tree').map((inner) => `-(${inner})`),
      ),
    }));
    fc.assert(
      fc.property(tree, (inner) => {
        const text = `omega + ${inner}`;
        fc.pre(text.length <= 300);
        // The language's own reading of the same text: its operators bind alike.
        const expected = new Function('omega', `return ${text.replaceAll('--', '- -')};`)(omega) as number;
        expect(Math.abs(valueAt(text)! - expected)).toBeLessThanOrEqual(
          1e-9 * Math.max(1, Math.abs(expected)),
        );
      }),
    );
  });
});

describe('units', () => {
  test('of what is added or compared must be the same, and both are named', () => {
    expect(faultsOf('density + meltingTemperature')).toEqual([
      {
        code: 'expression/units',
        pointer: '/lets/merit',
        detail:
          '"density" (g/cm3) and "meltingTemperature" (K), at character 11 of the formula, have different units and cannot be added or compared.',
        remedy: expect.stringContaining('a typed number may carry any unit'),
      },
    ]);
    for (const text of [
      'meltingTemperature - omega',
      'max(omega, 3, meltingTemperature)',
      'sizeMismatch + omega', // per cent is no plain number
      'density*omega + meltingTemperature',
      'shearModulus + yieldStrengthBcc', // GPa and MPa
      'density^2 - density',
    ]) {
      expect(faultsOf(text)[0]!.code, text).toBe('expression/units');
    }
  });
  test('are open beside a typed number, which may carry any', () => {
    for (const text of [
      'density/8 - omega',
      'density - 8',
      '2*density + meltingTemperature',
      'min(meltingTemperature, 2000)',
      'shearModulus/bulkModulus + omega', // GPa/GPa is a plain number
      'ln(density/8)',
      'density^0 + omega',
    ]) {
      expect(parseExpression(text, quantities).names.length, text).toBeGreaterThan(0);
    }
  });
  test('must be none for exp and ln', () => {
    const [fault] = faultsOf('omega + ln(meltingTemperature)');
    expect(fault).toMatchObject({ code: 'expression/not-plain' });
    expect(fault!.detail).toContain('"meltingTemperature", at character 12 of the formula, is in K');
  });
  test.for([
    ['density', 'g/cm3'],
    ['density - 8', 'g/cm3'],
    ['yieldStrengthBcc/density', 'MPa/(g/cm3)'],
    ['density*configurationalEntropy', 'g/cm3 J/(mol K)'],
    ['1/density', ''],
    ['omega*density', 'g/cm3'],
    ['sqrt(shearModulus)', 'GPa^0.5'],
    ['shearModulus/bulkModulus', ''],
    ['density/8', ''],
    ['-cost^2', '(currency/kg)^2'],
    ['omega/density', '1/(g/cm3)'],
  ] as const)('of %s are "%s"', ([text, unit]) => {
    expect(parseExpression(text, quantities).unit).toBe(unit);
  });
  test('that nobody knows are comparable with themselves alone', () => {
    const strange = { ...quantityById('density'), id: 'conductivity', unit: 'W/(m K)' };
    const known = [...quantities, strange];
    expect(parseExpression('conductivity + conductivity', known).unit).toBe('W/(m K)');
    expect(faultsOf('conductivity + density', known)[0]!.code).toBe('expression/units');
  });
});

describe('is refused with its place in the text', () => {
  test('every unknown name and function at once, with the nearest known one', () => {
    const faults = faultsOf('densty + omgea*2 - squrt(density)');
    expect(faults.map(({ code }) => code)).toEqual([
      'expression/unknown-name',
      'expression/unknown-name',
      'expression/unknown-function',
    ]);
    expect(faults.map(({ detail }) => detail)).toEqual([
      '"densty", at character 1 of the formula, is not a quantity: did you mean "density"?',
      '"omgea", at character 10 of the formula, is not a quantity: did you mean "omega"?',
      '"squrt", at character 20 of the formula, is not a function: did you mean "sqrt"?',
    ]);
  });
  test('names that objects have of themselves are no quantities and no functions', () => {
    for (const name of ['constructor', 'toString', 'hasOwnProperty', 'valueOf']) {
      expect(faultsOf(name)[0]!.code).toBe('expression/unknown-name');
      expect(faultsOf(`${name}(omega)`)[0]!.code).toBe('expression/unknown-function');
    }
  });
  test.for([
    ['', 'expression/syntax', 'at character 1, where it ends'],
    ['2 omega', 'expression/syntax', 'at character 3, where "o" stands'],
    ['0,5*omega', 'expression/syntax', 'at character 2, where "," stands'],
    ['(density', 'expression/syntax', 'at character 9, where it ends'],
    ['density)', 'expression/syntax', 'at character 8, where ")" stands'],
    ['density − 1', 'expression/syntax', 'where "−" stands'],
    ['omega = 3', 'expression/syntax', 'at character 7, where "=" stands'],
    ['omega; omega', 'expression/syntax', 'at character 6'],
    ['density["x"]', 'expression/syntax', 'at character 8'],
    ['0x10*omega', 'expression/syntax', 'at character 2'],
    ['min(omega)', 'expression/values', 'min, at character 1 of the formula, is given one value.'],
    ['sqrt(omega, 2)', 'expression/values', 'is given 2 values.'],
    ['2^omega', 'expression/exponent', '"omega", at character 3'],
    ['1e400*omega', 'expression/number', '1e400, at character 1'],
    ['omega/1e-400', 'expression/number', '1e-400, at character 7'],
    ['omega + (0.02e-500)', 'expression/number', '(0.02e-500), at character 9'],
    ['omega + 1/(3 - 3)', 'expression/no-value', '"1/(3 - 3)", at character 9'],
    ['ln(-1)*omega', 'expression/no-value', '"ln(-1)", at character 1'],
    ['3 + 4', 'expression/no-quantity', 'names no quantity'],
    [`${'1 + '.repeat(250)}omega`, 'expression/length', '1005 characters'],
    [`${'1+'.repeat(101)}omega`, 'expression/too-complex', '203 parts'],
    [`${'-'.repeat(40)}omega`, 'expression/too-complex', '41 levels'],
  ] as const)('%s: %s', ([text, code, detail]) => {
    const [fault] = faultsOf(text);
    expect(fault).toMatchObject({ code, pointer: '/lets/merit' });
    expect(fault!.detail).toContain(detail);
  });
  test('0 is a number however it is written', () => {
    for (const zero of ['0', '0.00', '.0e-9', '(0e400)', '0E5']) {
      expect(parseExpression(`omega + ${zero}`, quantities).names, zero).toEqual(['omega']);
    }
  });
  test('what may stand there instead is said', () => {
    expect(faultsOf('omega omega')[0]!.remedy).toContain('"*", "+", "-", "/", "^" or the end');
    expect(faultsOf('omega +')[0]!.remedy).toContain('a name or a number');
  });
});

test('whatever is typed is read or refused, never worse', () => {
  const alphabet = [...'omega density()+-*/^.,0123456789e min'];
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom(...alphabet), { maxLength: 60, size: 'max' }),
      fc.string(),
      (characters, other) => {
        for (const text of [characters.join(''), other]) {
          try {
            parseExpression(text, quantities);
          } catch (error) {
            expect(error).toBeInstanceOf(ProblemError);
          }
        }
      },
    ),
    { numRuns: 500 },
  );
});

test('formulas of formulas of formulas share their parts and take no time', () => {
  let known: readonly Quantity[] = quantities;
  for (let level = 0; level < 40; level++) {
    const last = known.at(-1)!.id;
    known = [...known, ownQuantity(`level${level}`, Array(8).fill(last).join('+'), known)];
  }
  const { steps } = bind([known.at(-1)!.formula], factsFor(['Co', 'Cr', 'Fe', 'Ni']));
  expect(steps.length).toBeLessThan(2000);
  expect(columnsOf(known.at(-1)!).elements.length).toBeGreaterThan(0);
});
