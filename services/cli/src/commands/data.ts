import { printedUnit } from '@tiegel/contract/terms';
import {
  columns as columnsOfElements,
  type ElementRecord,
  elementRecords,
  type PriceList,
  pairRecords,
} from '@tiegel/elements';
import { quantitiesTold } from '@tiegel/screening';
import type { Command } from 'commander';
import { readPrices } from '../input/readPrices.ts';
import { wrapped } from '../output/inWords.ts';
import { jsonList } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';
import { type Column, lineWidth, table } from '../output/table.ts';
import { importCommands } from './dataImports.ts';

interface Options {
  json?: true;
  prices?: string;
}

/** `data elements` and `data pairs`: the facts that everything is computed from. */
export function dataCommand(program: Command): void {
  const data = program
    .command('data')
    .description('elements, pair enthalpies and known alloys, and what was brought in of your own');
  data
    .command('elements')
    .description('every element with data: masses, densities, radii, prices, hazards')
    .option('--prices <file>', 'your own price list (CSV) instead of the invented one')
    .option('--json', 'a JSON array on standard output')
    .action(async ({ json, prices }: Options) => {
      const list = readPrices(prices);
      const records = elementRecords(list);
      await standardOutput(json ? lines(jsonList(records)) : elementTable(records, list));
    });
  data
    .command('pairs')
    .description('the mixing enthalpy of every pair')
    .option('--json', 'a JSON array on standard output')
    .action(async ({ json }: Options) => {
      await standardOutput(json ? lines(jsonList(pairRecords())) : pairTable());
    });
  data
    .command('quantities')
    .description('every quantity that can be limited and ranked: unit, formula, meaning, source')
    .option('--json', 'a JSON array on standard output')
    .action(async ({ json }: Options) => {
      await standardOutput(json ? lines(jsonList(quantitiesTold())) : quantityLines());
    });
  importCommands(data);
}

function* lines(pieces: Iterable<string>): Generator<string> {
  yield* pieces;
  yield '\n';
}

/** Each with its id, by which limits and files name it, then what it is. */
function* quantityLines(): Generator<string> {
  for (const { id, name, unit, notation, meaning, source, caution } of quantitiesTold()) {
    yield `${id}${unit === '' ? '' : ` (${printedUnit(unit)})`}\n`;
    const { authors, year, where } = source;
    const from = [authors, year, where].filter((part) => part !== null && part !== '').join(', ');
    const told = [`${name}: ${meaning}`, notation, `Source: ${from}`, ...(caution ? [caution] : [])];
    for (const text of told) yield `  ${wrapped(text, lineWidth - 2).replaceAll('\n', '\n  ')}\n`;
  }
}

const unitIn = (column: keyof ElementRecord): string =>
  printedUnit(columnsOfElements.find(({ id }) => id === column)?.unit ?? '');

/** Which values are shown, under which head and unit, with how many decimals; the rest is in --json. */
const shown: [keyof ElementRecord, Column, number][] = [
  ['atomicMass', { head: 'mass', unit: unitIn('atomicMass') }, 2],
  ['density', { head: 'density', unit: unitIn('density') }, 3],
  ['metallicRadius', { head: 'radius', unit: unitIn('metallicRadius') }, 1],
  ['meltingTemperature', { head: 'melts', unit: unitIn('meltingTemperature') }, 0],
  ['boilingTemperature', { head: 'boils', unit: unitIn('boilingTemperature') }, 0],
  ['paulingElectronegativity', { head: 'χ Paul.' }, 2],
  ['allenElectronegativity', { head: 'χ Allen' }, 2],
  ['valenceElectrons', { head: 'VEC' }, 0],
];

function* elementTable(records: readonly ElementRecord[], prices: PriceList): Generator<string> {
  const columns: Column[] = [
    { head: '', align: 'left' },
    ...shown.map(([, column]) => column),
    { head: 'price', unit: `${prices.currency}/kg` },
    { head: '' },
  ];
  const rows = records.map((record) => [
    record.symbol,
    ...shown.map(([key, , decimals]) => (record[key] as number | null)?.toFixed(decimals) ?? null),
    record.price?.toFixed(2) ?? null,
    record.hazards.length > 0 ? '!' : '',
  ]);
  yield `${table(columns, rows).join('\n')}\n`;
  yield `! has hazards: see --json. Prices of ${prices.date}${prices.invented ? ', invented for demonstration' : ''}.\n`;
}

function* pairTable(): Generator<string> {
  const columns: Column[] = [
    { head: 'a', align: 'left' },
    { head: 'b', align: 'left' },
    { head: 'mixing enthalpy', unit: 'kJ/mol' },
  ];
  const rows = pairRecords().map(({ a, b, mixingEnthalpy }) => [a, b, String(mixingEnthalpy)]);
  yield `${table(columns, rows).join('\n')}\n`;
}
