import { parseAlloy } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { binaryCompounds, kingPhi } from '../../src/index.ts';
import { facts, withoutPair, withValues } from '../fixtures/alloys.ts';

const of = (alloy: string) => kingPhi(parseAlloy(alloy), facts);

// No published worked example was at hand; these follow the definition by hand.
test('a pair that attracts is measured against its strongest compound', () => {
  const melting = (933.47 + 1728) / 2;
  const freeEnergy = -22 - (melting * 8.314462618 * Math.log(2)) / 1000;
  const strongest = Math.min(...binaryCompounds('Al', 'Ni', facts)!.map(({ enthalpy }) => enthalpy));
  expect(of('AlNi')).toBeCloseTo(freeEnergy / strongest, 10);
  expect(of('AlNi')).toBeLessThan(1);
});

test('a pair that repels is measured against its mixing enthalpy, 13 kJ/mol for CuFe', () => {
  const melting = (1357.77 + 1811) / 2;
  const freeEnergy = 13 - (melting * 8.314462618 * Math.log(2)) / 1000;
  expect(of('CuFe')).toBeCloseTo(-freeEnergy / 13, 10);
});

// King et al. found the well-known one-phase alloys above 1 and AlCoCrFeNi's family below (from memory).
test('alloys known as one solution lie above 1, those with ordered phases below', () => {
  for (const alloy of ['CoCrFeMnNi', 'CoCrFeNi', 'NbMoTaW', 'HfNbTaTiZr'])
    expect(of(alloy), alloy).toBeGreaterThan(1);
  for (const alloy of ['AlNi', 'AlCoCrFeNi']) expect(of(alloy), alloy).toBeLessThan(1);
});

test('without a rival it is held at 1000', () => {
  expect(of('NbTa')).toBe(1000);
});

test('a pure element and an alloy with a gap in its data have none', () => {
  expect(of('Ni')).toBeNull();
  expect(of('CTi')).toBeNull(); // carbon has no melting temperature
  expect(kingPhi(parseAlloy('AlNi'), withoutPair('Al', 'Ni'))).toBeNull();
  expect(kingPhi(parseAlloy('AlNi'), withValues('miedemaVolume', { Al: null }))).toBeNull();
});
