import { parseAlloy } from '@tiegel/elements';
import { criteria } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { dossierOf } from '../../src/index.ts';
import { facts, turned, withoutPair } from '../fixtures/alloys.ts';

// VEC of equimolar CoCrFeMnNi by hand: (9 + 6 + 8 + 7 + 10)/5 = 8, on the limit of Guo 2011.
test('every criterion has a verdict, those on late quantities among them', () => {
  const { criteria: verdicts } = dossierOf(parseAlloy('CoCrFeMnNi'), facts);
  expect(Object.keys(verdicts)).toEqual(criteria.map(({ id }) => id));
  expect(verdicts.guo2011Fcc).toBe(true);
  expect(verdicts.king2016).toBeTypeOf('boolean');
  expect(verdicts.senkovMiracle2016).toBeTypeOf('boolean');
  // It speaks of refractory metals alone.
  expect(verdicts.sheikh2016).toBeNull();
});

// Own calculation of this project by an independent script: worked values of demixing and strength.
test('demixing and strength are those worked out by hand', () => {
  const cantor = dossierOf(parseAlloy('CoCrFeMnNi'), facts);
  expect(cantor.demixing!.temperature).toBeCloseTo(239.98, 2);
  expect(cantor.strength.fcc.value).toBeCloseTo(92.16, 1);
  expect(dossierOf(parseAlloy('NbMoTaW'), facts).strength.bcc.value).toBeCloseTo(930.6, 0);
});

test('conditions decide strength, compounds and the verdict that hangs on them', () => {
  const alloy = parseAlloy('NbMoTaW');
  const cold = dossierOf(alloy, facts);
  const hot = dossierOf(alloy, facts, { serviceTemperature: 1273, annealTemperature: 600 });
  expect(hot.strength).toMatchObject({ temperature: 1273 });
  expect(hot.strength.bcc.value).toBeCloseTo(357.3, 0);
  expect(hot.compounds!.temperature).toBe(600);
  expect(hot.compounds!.hullDistance).toBeGreaterThan(cold.compounds!.hullDistance);
});

test('order and total of the amounts change nothing', () => {
  const alloy = { Al: 10, Co: 20, Cr: 30, Fe: 15, Ni: 25 };
  expect(dossierOf(turned(alloy), facts).criteria).toEqual(dossierOf(alloy, facts).criteria);
  expect(dossierOf(turned(alloy), facts).nearest).toEqual(dossierOf(alloy, facts).nearest);
});

test('what lacks a value is null, the rest is said', () => {
  const {
    demixing,
    ordering,
    compounds,
    strength,
    criteria: verdicts,
  } = dossierOf(parseAlloy('CoCrFeNi'), withoutPair('Co', 'Cr'));
  expect({ demixing, ordering, compounds }).toEqual({ demixing: null, ordering: null, compounds: null });
  expect(verdicts.zhang2008).toBeNull();
  expect(verdicts.guo2011Fcc).toBe(true);
  expect(strength.fcc.value).toBeGreaterThan(0);
});

test('a pure element competes with nothing', () => {
  const nickel = dossierOf({ Ni: 100 }, facts);
  expect(nickel.demixing!.temperature).toBeNull();
  expect(nickel.compounds).toMatchObject({ hullDistance: 0, competing: [{ formula: 'Ni', fraction: 1 }] });
});
