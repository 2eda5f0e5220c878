import { formatComposition } from '@tiegel/elements';
import { quantities } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { csvText } from '../../src/exports/csvText.ts';
import { provenance } from '../../src/exports/provenance.ts';
import { candidateNumber, candidates, exportOf, query } from '../fixtures/exportOf.ts';

const count = 450;
const text = [...csvText(exportOf(candidates(count)))].join('');
const lines = text.split('\n');
const comments = lines.filter((line) => line.startsWith('#'));
const [head = '', ...rows] = lines.filter((line) => !line.startsWith('#') && line !== '');

test('the file begins with all that its rows depend on, a line each', () => {
  const keys = comments.map((line) => /^# (\w+): /.exec(line)?.[1]);
  expect(keys).toEqual([
    'search',
    'name',
    'question',
    'specification',
    'conditions',
    'dataVersion',
    'engineVersion',
    'prices',
    'counts',
    'kept',
    'selection',
  ]);
  expect(lines.slice(0, comments.length)).toEqual(comments);
});

test('each condition that a column computes with is told, set or default', () => {
  // Anneal temperature for the free energy, the others for the strengths; nobody set any.
  const told = comments.find((line) => line.startsWith('# conditions: '))!;
  expect(JSON.parse(told.slice('# conditions: '.length))).toEqual({
    annealTemperature: { value: 1273.15, unit: 'K' },
    serviceTemperature: { value: 293.15, unit: 'K' },
    strainRate: { value: 0.001, unit: '1/s' },
    grainSize: { value: null, unit: 'µm' },
  });
  const { head } = exportOf([]);
  const set = { ...head.search.specification, conditions: { serviceTemperature: 873.15 } };
  const hot = {
    search: { ...head.search, specification: set },
    columns: ['density', 'homologousTemperature'],
  };
  expect(provenance(hot, query).conditions).toEqual({ serviceTemperature: { value: 873.15, unit: 'K' } });
});

test('what somebody typed as a name begins no line of its own', () => {
  expect(comments[1]).toBe('# name: A name # counts: {} of "two" lines, with commas');
  const counts = comments.find((line) => line.startsWith('# counts: '))!;
  expect(JSON.parse(counts.slice('# counts: '.length))).toEqual(exportOf([]).about.counts);
});

test('the head names every column with its unit, the price list currency included', () => {
  const named = quantities.map(({ id, unit }) =>
    unit === '' ? id : `${id} (${unit.replace('currency', 'EUR')})`,
  );
  const amounts = ['Al', 'Co', 'Cr', 'Fe', 'Ni'].map((symbol) => `${symbol} (at.%)`);
  expect(head.split(',')).toEqual(['rank', 'composition (at.%)', ...amounts, ...named, 'score']);
  expect(named).toEqual(
    expect.arrayContaining([
      'mixingEnthalpy (kJ/mol)',
      'density (g/cm3)',
      'omega',
      'cost (EUR/kg)',
      'costPerLitre (EUR/L)',
    ]),
  );
});

test('read back, every row has the same numbers to the last bit, and nothing where there is no value', () => {
  const columns = head.split(',').map((column) => column.replace(/ \(.*$/, ''));
  expect(rows).toHaveLength(count);
  rows.forEach((row, index) => {
    const read = Object.fromEntries(row.split(',').map((field, column) => [columns[column]!, field]));
    const { composition, quantities, rank, score } = candidateNumber(index + 1);
    const number = (field: string | undefined) => (field === '' ? null : Number(field));
    expect(read.composition).toBe(formatComposition(composition));
    expect(number(read.rank)).toBe(rank);
    expect(number(read.score)).toBe(score);
    for (const symbol of ['Al', 'Co', 'Cr', 'Fe', 'Ni'])
      expect(number(read[symbol])).toBe(composition[symbol] ?? 0);
    for (const [id, value] of Object.entries(quantities)) expect(number(read[id])).toBe(value);
  });
});

test('an export of nothing is a head without rows', () => {
  const empty = [...csvText(exportOf([]))].join('').split('\n');
  expect(empty.filter((line) => line !== '' && !line.startsWith('#'))).toEqual([head]);
});

test('a reader that stops early closes the source of rows', () => {
  let closed = false;
  const rows = (function* () {
    try {
      yield* candidates(1000);
    } finally {
      closed = true;
    }
  })();
  const reading = csvText(exportOf(rows));
  for (let part = 0; part < 3; part++) reading.next();
  reading.return(undefined);
  expect(closed).toBe(true);
});
