import type { Facts } from '@tiegel/contract';
import {
  type Composition,
  factsFor,
  type PriceList,
  spacedComposition,
  withOwnColumn,
} from '@tiegel/elements';
import type { Dossier, OwnNeighbourAlloy } from '@tiegel/insight';
import {
  ownQuantities,
  type Quantity,
  type QuantityValues,
  quantities,
  screening,
  strengthOf,
} from '@tiegel/screening';
import type { Command } from 'commander';
import { columnOption } from '../input/columnOption.ts';
import {
  type ConditionOptions,
  type Conditions,
  conditionOptions,
  conditionsIn,
  conditionsInWords,
} from '../input/conditionOptions.ts';
import { dataInForce, inForceOption } from '../input/dataInForce.ts';
import { pairsOption } from '../input/pairsOption.ts';
import { alloyArguments, alloyLines, readAlloys } from '../input/readAlloys.ts';
import { readText } from '../input/readText.ts';
import { wrapped } from '../output/inWords.ts';
import { jsonList } from '../output/jsonText.ts';
import { shownValue, unitOf } from '../output/quantityColumn.ts';
import { standardOutput } from '../output/standardOutput.ts';
import { lineWidth, table } from '../output/table.ts';
import { marked, marksInWords, type Trusted } from '../output/trustMarks.ts';

interface Options extends ConditionOptions {
  wt?: true;
  file?: string;
  prices?: string;
  pairs?: string;
  database?: string;
  column?: string[];
  json?: true;
}

interface Screened {
  composition: Composition;
  quantities: QuantityValues;
}

/** Alloys side by side. */
const mostAbreast = 3;

/**
 * `screen ALLOY...`: every quantity of each alloy, in the order of the arguments; as JSON also its
 * criteria, phases, strength, what competes and what is published nearby.
 */
export function screenCommand(program: Command): void {
  const command = program
    .command('screen')
    .description('every quantity of one alloy or many')
    .argument('[alloys...]', 'such as AlCoCrFeNi, Al7.69Co30.77Fe61.54 or "Co20 Cr20 Fe20 Mn20 Ni20"')
    .option('--wt', 'amounts are wt.%, not at.%')
    .option('--file <file>', 'more alloys, one a line; - for standard input')
    .option('--prices <file>', 'your own price list (CSV) instead of the invented one')
    .option('--json', 'a JSON array on standard output, with criteria, phases and what competes')
    .action(async (alloys: string[], options: Options) => {
      const { wt, file, json, database } = options;
      const written = [
        ...alloyArguments(alloys),
        ...(file === undefined ? [] : alloyLines(readText(file), file)),
      ];
      const set = conditionsIn(options);
      const compositions = readAlloys(written, wt ? 'weight' : 'atoms');
      const symbols = new Set(compositions.flatMap((composition) => Object.keys(composition)));
      const { prices, pairs, columns, alloys: brought } = await dataInForce(options);
      const asked = [...quantities, ...ownQuantities({ columns })];
      const facts = columns.reduce(withOwnColumn, factsFor([...symbols], { prices, pairs }));
      const own = database === undefined ? null : brought;
      const screened = screen(compositions, facts, asked, set);
      await standardOutput(
        json
          ? withEnd(jsonList(await withDossiers(screened, facts, set, own)))
          : tables([...(await withTrust(screened, facts, set))], asked, prices, set),
      );
    });
  inForceOption(command, 'pair values, columns, prices, melts and alloys');
  conditionOptions(pairsOption(columnOption(command)));
}

function* screen(
  compositions: readonly Composition[],
  facts: Facts,
  asked: readonly Quantity[],
  set: Conditions,
): Generator<Screened> {
  const values = screening(facts, asked, set);
  for (const composition of compositions) yield { composition, quantities: values(composition) };
}

/**
 * The models take longer to load than all else: only who reads of them waits for them.
 * @param own alloys of one's own, among the neighbours; null where no database was named
 */
async function withDossiers(
  screened: Iterable<Screened>,
  facts: Facts,
  set: Conditions,
  own: readonly OwnNeighbourAlloy[] | null,
): Promise<Iterable<Screened & Dossier>> {
  const { dossierOf, withOwnNeighbours } = await import('@tiegel/insight');
  return (function* () {
    for (const one of screened) {
      const dossier = dossierOf(one.composition, facts, set);
      const { nearest } = dossier;
      const known = own === null ? nearest : withOwnNeighbours(one.composition, nearest, own);
      yield { ...one, ...dossier, nearest: known };
    }
  })();
}

/** For a table: what tells how far its values can be trusted. */
async function withTrust(
  screened: Iterable<Screened>,
  facts: Facts,
  set: Conditions,
): Promise<Iterable<Screened & Trusted>> {
  const { phaseOf } = await import('@tiegel/insight');
  return (function* () {
    for (const one of screened) {
      const { composition } = one;
      yield { ...one, phase: phaseOf(composition, facts), strength: strengthOf(composition, facts, set) };
    }
  })();
}

function* withEnd(pieces: Iterable<string>): Generator<string> {
  yield* pieces;
  yield '\n';
}

function* tables(
  screened: readonly (Screened & Trusted)[],
  asked: readonly Quantity[],
  prices: PriceList,
  set: Conditions,
): Generator<string> {
  for (let from = 0; from < screened.length; ) {
    const { abreast, lines } = fitting(screened.slice(from, from + mostAbreast), from, asked, prices);
    for (const [place, { composition }] of abreast.entries()) {
      yield `${from + place + 1}: ${spacedComposition(composition)} at.%\n`;
    }
    yield `${lines.join('\n')}\n`;
    yield* marksInWords(lines, abreast, asked, from);
    yield '\n';
    from += abreast.length;
  }
  yield `${wrapped(`At ${conditionsInWords(set)}. Phases, criteria and what competes: explain, or --json.`)}\n`;
  yield `Prices of ${prices.date}${prices.invented ? ', invented for demonstration' : ''}. – where there is no value.\n`;
}

/** As many alloys beside each other as a line holds, at least one. */
function fitting(
  abreast: readonly (Screened & Trusted)[],
  before: number,
  asked: readonly Quantity[],
  prices: PriceList,
): { abreast: readonly (Screened & Trusted)[]; lines: string[] } {
  const lines = valueTable(abreast, before, asked, prices);
  const fits = Math.max(...lines.map((line) => line.length)) <= lineWidth;
  return fits || abreast.length === 1
    ? { abreast, lines }
    : fitting(abreast.slice(0, -1), before, asked, prices);
}

function valueTable(
  abreast: readonly (Screened & Trusted)[],
  before: number,
  asked: readonly Quantity[],
  prices: PriceList,
): string[] {
  const columns = [
    { head: 'quantity', align: 'left' as const },
    { head: 'unit', align: 'left' as const },
    ...abreast.map((_, place) => ({ head: String(before + place + 1) })),
  ];
  const rows = asked.map((quantity) => [
    quantity.name,
    unitOf(quantity, prices),
    ...abreast.map((one) =>
      marked(quantity, shownValue(quantity.id, one.quantities[quantity.id], asked), one),
    ),
  ]);
  return table(columns, rows);
}
