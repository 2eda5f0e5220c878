import { factsFor } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { valuesOf } from '../../src/index.ts';
import { preparedOnce } from '../../src/values/preparedOnce.ts';

test('what is asked again of the same facts is prepared once; other facts, questions or conditions anew', () => {
  let made = 0;
  const prepared = preparedOnce(
    (ids: readonly string[]) => ids.join(),
    () => {
      made += 1;
      return made;
    },
  );
  const facts = factsFor(['Co', 'Ni']);
  expect(prepared(facts, ['density'], {})).toBe(prepared(facts, ['density'], {}));
  expect(made).toBe(1);
  prepared(factsFor(['Co', 'Ni']), ['density'], {});
  prepared(facts, ['cost'], {});
  prepared(facts, ['density'], { serviceTemperature: 900 });
  expect(made).toBe(4);
});

// Own calculation of this project: service over melting temperature, and the melting point of nickel cancels.
test('values follow the conditions, whatever was asked before', () => {
  const facts = factsFor(['Ni']);
  const at = (serviceTemperature: number) =>
    valuesOf({ Ni: 1 }, facts, ['homologousTemperature'], { serviceTemperature }).homologousTemperature!;
  expect(at(800) / at(400)).toBeCloseTo(2, 12);
  expect(at(800)).toBe(at(800));
});

test('facts with another value of an element give another result', () => {
  const facts = factsFor(['Ni']);
  const heavier = { ...facts, columns: { ...facts.columns, density: [2 * facts.columns.density![0]!] } };
  const density = (of: typeof facts) => valuesOf({ Ni: 1 }, of, ['density']).density!;
  expect(density(heavier)).toBeCloseTo(2 * density(facts), 12);
});
