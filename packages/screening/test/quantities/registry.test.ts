import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { quantities, screening } from '../../src/index.ts';
import { pricedFacts } from '../fixtures/elements.ts';
import { random } from '../fixtures/random.ts';

// The ids, units and order are what specifications, exports and programs of others rely on.
test('the quantities are these, with these units', () => {
  expect(quantities.map(({ id, unit }) => [id, unit])).toEqual([
    ['configurationalEntropy', 'J/(mol K)'],
    ['mixingEnthalpy', 'kJ/mol'],
    ['sizeMismatch', '%'],
    ['meltingTemperature', 'K'],
    ['omega', ''],
    ['valenceElectronConcentration', ''],
    ['electronegativitySpread', ''],
    ['allenElectronegativitySpread', '%'],
    ['lambda', 'J/(mol K)'],
    ['density', 'g/cm3'],
    ['cost', 'currency/kg'],
    ['costPerLitre', 'currency/L'],
    ['meanAtomicMass', 'u'],
    ['effectiveElements', ''],
    ['mixingFreeEnergy', 'kJ/mol'],
    ['lowestPairEnthalpy', 'kJ/mol'],
    ['highestPairEnthalpy', 'kJ/mol'],
    ['pairEnthalpyScatter', 'kJ/mol'],
    ['gamma', ''],
    ['mismatchEntropy', ''],
    ['excessEntropyRatio', ''],
    ['atomicVolume', 'cm3/mol'],
    ['shearModulus', 'GPa'],
    ['youngsModulus', 'GPa'],
    ['bulkModulus', 'GPa'],
    ['modulusMismatch', '%'],
    ['pughRatio', ''],
    ['oxideFormers', 'at.%'],
    ['lowestElementMelting', 'K'],
    ['vapourMargin', 'K'],
    ['homologousTemperature', ''],
    ['yieldStrengthFcc', 'MPa'],
    ['yieldStrengthBcc', 'MPa'],
    ['singlePhaseEstimate', ''],
  ]);
});

test('every file of a quantity is in the registry, has a test, and the other way round', () => {
  const ids = quantities.map(({ id }) => id).sort();
  const files = (folder: URL, end: string) =>
    readdirSync(folder)
      .filter((name) => name.endsWith(end))
      .map((name) => name.slice(0, -end.length))
      .filter((name) => name !== 'index' && name !== 'registry')
      .sort();
  expect(files(new URL('../../src/quantities/', import.meta.url), '.ts')).toEqual(ids);
  expect(files(new URL('./', import.meta.url), '.test.ts')).toEqual(ids);
});

test('the table of the README is the registry', () => {
  const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
  const lines = readme.split('\n').map((line) => line.replaceAll(/ +/g, ' '));
  const table = lines.slice(lines.indexOf('| id | symbol | unit | formula | source |') + 2);
  const rows = table.slice(0, table.indexOf(''));
  const expected = quantities.map(({ id, symbol, unit, notation, source }) => {
    const origin = `${source.authors}${source.year === null ? '' : ` ${source.year}`} (${source.checked})`;
    return `| \`${id}\` | ${symbol} | ${unit || '–'} | ${notation.replaceAll('|', '\\|')} | ${origin} |`;
  });
  expect(rows).toEqual(expected);
});

describe.for(quantities.map((quantity) => [quantity.id, quantity] as const))('%s', ([, quantity]) => {
  test('lacks neither name, symbol, notation, meaning nor source', () => {
    const { name, symbol, notation, meaning, source } = quantity;
    for (const text of [name, symbol, notation, meaning, source.authors, source.where, source.checked]) {
      expect(text.trim()).not.toBe('');
    }
    expect(notation.startsWith(`${symbol} = `)).toBe(true);
    expect(meaning).toMatch(/\.$/);
    expect(quantity.caution ?? '.').toMatch(/\.$/);
    expect(Number.isInteger(quantity.decimals) && quantity.decimals >= 0).toBe(true);
    if (source.checked === 'from memory') expect(source.year).not.toBeNull();
  });

  test('keeps to its range', () => {
    const facts = pricedFacts();
    const value = screening(facts, [quantity.id]);
    const source = random(20_240_601);
    let valued = 0;
    const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = quantity.range;
    for (let trial = 0; trial < 300; trial++) {
      const members = source.some(facts.symbols, source.whole(1, 6));
      const found = value(Object.fromEntries(members.map((symbol) => [symbol, source.whole(1, 9)])))[
        quantity.id
      ];
      if (found === null || found === undefined) continue;
      valued += 1;
      expect(found).toBeGreaterThanOrEqual(min);
      expect(found).toBeLessThanOrEqual(max);
    }
    // Without a value it keeps to anything.
    expect(valued).toBeGreaterThan(30);
  });
});
