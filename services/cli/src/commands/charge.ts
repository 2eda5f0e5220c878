import {
  type ChargeRequest,
  type ChargeSheet,
  chargeRequestOf,
  chargeSheet,
  readMaterials,
} from '@tiegel/charge';
import { longestName } from '@tiegel/contract/terms';
import type { Composition, PriceList } from '@tiegel/elements';
import type { Imports } from '@tiegel/search';
import type { SavedChargeSheet } from '@tiegel/search/laboratory';
import { type Command, Option } from 'commander';
import { amountsBySymbol, grams } from '../input/amountsBySymbol.ts';
import { readAlloy } from '../input/readAlloy.ts';
import { readPrices } from '../input/readPrices.ts';
import { readText } from '../input/readText.ts';
import { textUpTo } from '../input/textUpTo.ts';
import { chargeText } from '../output/chargeText.ts';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';
import type { Laboratory } from '../searching/openLaboratory.ts';

interface Options {
  wt?: true;
  mass: number;
  resolution: number;
  purity?: Record<string, number>;
  loss?: Record<string, number>;
  materials?: string;
  inForce?: true;
  prices?: string;
  save?: string | true;
  database?: string;
  json?: true;
}

/** `charge ALLOY --mass 50 --resolution 0.001`: what to weigh for a batch, in which order, with which cautions. */
export function chargeCommand(program: Command): void {
  program
    .command('charge')
    .description('what to weigh for a batch of an alloy')
    .argument('<alloy...>', 'such as AlCoCrFeNi or "Co20 Cr20 Fe20 Mn20 Ni20"')
    .requiredOption('--mass <grams>', 'batch mass: everything that is weighed', grams)
    .requiredOption('--resolution <grams>', 'one step of the balance, such as 0.001', grams)
    .option(
      '--purity <El=wt.%>',
      'of an element as bought, such as Mn=99.7; more with commas',
      amountsBySymbol,
    )
    .option(
      '--loss <El=wt.%>',
      'of its mass that evaporates and is made up for, such as Mn=1.5',
      amountsBySymbol,
    )
    .option(
      '--materials <file>',
      'all there is to charge from (CSV): material,contains,amounts,purity,price,currency,melting',
    )
    .addOption(
      new Option(
        '--in-force',
        'charge from the raw materials in force in the database; --materials goes before',
      ).conflicts('prices'),
    )
    .option('--wt', 'amounts are wt.%, not at.%')
    .option('--prices <file>', 'your own price list of pure elements (CSV) instead of the invented one')
    .option(
      '--save [name]',
      'keep the sheet under a number of its own; the name says what it is for',
      textUpTo(longestName),
    )
    .option(
      '--database <file>',
      'whose prices and pair values hold, and with --in-force its raw materials; where the sheet is kept; else, with --in-force or --save, that of the service (DATA_DIR, or the folder data)',
    )
    .option('--json', 'a JSON object on standard output')
    .action(async (words: string[], options: Options) => {
      const composition = readAlloy(words, options.wt ? 'weight' : 'atoms');
      const { shown, invented } = await charged(composition, options);
      const number = 'number' in shown ? shown.number : null;
      await standardOutput(options.json ? jsonText(shown) : chargeText(shown, { invented, number }));
    });
}

/** The sheet, kept where that was asked for, and the day of the invented prices that it counts with. */
async function charged(
  composition: Composition,
  options: Options,
): Promise<{ shown: ChargeSheet | SavedChargeSheet; invented: string | null }> {
  const { inForce = false, save, database } = options;
  // What is wrong with a file is told before anything is opened.
  const list = readPrices(options.prices);
  const listed = options.materials === undefined ? null : readMaterials(readText(options.materials));
  const laboratory =
    inForce || save !== undefined || database !== undefined
      ? await openAt(database, save === undefined)
      : null;
  try {
    const imports = laboratory?.imports;
    const pairs = imports?.pairs() ?? [];
    const prices = options.prices === undefined ? (imports?.prices() ?? list) : list;
    const given = listed === null && inForce ? imports?.materialsFor(composition) : undefined;
    const request = requestOf(composition, options, { listed, given, prices });
    const sheet = chargeSheet({ ...request, pairs });
    const own = new Set(imports?.materials().flatMap(({ name, import: from }) => (from ? [name] : [])));
    const priced = listed === null && sheet.lines.some(({ material }) => !given || !own.has(material));
    const invented = priced && prices.invented ? prices.date : null;
    if (!laboratory || save === undefined) return { shown: sheet, invented };
    const { mass, resolution, purity, loss } = options;
    const asked = { composition, mass, resolution, purity, loss, ...(given && { materials: 'in force' }) };
    const name = save === true ? '' : save;
    return { shown: laboratory.chargeSheets.save(sheet, { name, request: asked, prices, pairs }), invented };
  } finally {
    laboratory?.close();
  }
}

/** What is charged from: the list of a file, else what is in force where that was asked for, else pure elements. */
function requestOf(
  composition: Composition,
  { mass, resolution, purity = {}, loss = {} }: Options,
  {
    listed,
    given,
    prices,
  }: {
    listed: ReturnType<typeof readMaterials> | null;
    given: ReturnType<Imports['materialsFor']> | undefined;
    prices: PriceList;
  },
): ChargeRequest {
  const asked = { composition, mass, resolution, loss };
  if (listed === null) return chargeRequestOf({ ...asked, purity, ...given }, prices);
  // A purity beside a list is refused there.
  if (Object.keys(purity).length > 0) chargeRequestOf({ ...asked, purity, materials: [] }, prices);
  return { ...asked, ...listed };
}

async function openAt(database: string | undefined, onlyRead: boolean): Promise<Laboratory> {
  const { openLaboratory, openToRead } = await import('../searching/openLaboratory.ts');
  return onlyRead ? openToRead(database) : openLaboratory(database);
}
