import { type ChargeSheet, chargeRequestOf, chargeSheet, readMaterials } from '@tiegel/charge';
import type { PriceList } from '@tiegel/elements';
import type { Command } from 'commander';
import { amountsBySymbol, grams } from '../input/amountsBySymbol.ts';
import { readAlloy } from '../input/readAlloy.ts';
import { readPrices } from '../input/readPrices.ts';
import { readText } from '../input/readText.ts';
import { chargeText } from '../output/chargeText.ts';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';

interface Options {
  wt?: true;
  mass: number;
  resolution: number;
  purity?: Record<string, number>;
  loss?: Record<string, number>;
  materials?: string;
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
    .option('--wt', 'amounts are wt.%, not at.%')
    .option('--prices <file>', 'your own price list of pure elements (CSV) instead of the invented one')
    .option('--save [name]', 'keep the sheet under a number of its own; the name says what it is for')
    .option(
      '--database <file>',
      'where it is kept; else the database of the service (DATA_DIR, or the folder data)',
    )
    .option('--json', 'a JSON object on standard output')
    .action(async (words: string[], options: Options) => {
      const composition = readAlloy(words, options.wt ? 'weight' : 'atoms');
      const prices = readPrices(options.prices);
      const { mass, resolution, purity = {}, loss = {} } = options;
      const asked = { composition, mass, resolution, loss };
      const sheet = chargeSheet(
        options.materials === undefined || Object.keys(purity).length > 0
          ? chargeRequestOf(
              { ...asked, purity, ...(options.materials === undefined ? {} : { materials: [] }) },
              prices,
            )
          : { ...asked, ...readMaterials(readText(options.materials)) },
      );
      const saved = options.save === undefined ? null : await keep(sheet, options, prices);
      const invented = options.materials === undefined && prices.invented ? prices.date : null;
      await standardOutput(
        options.json
          ? jsonText(saved ?? sheet)
          : chargeText(sheet, { invented, number: saved?.number ?? null }),
      );
    });
}

/** Keeps a sheet where the service keeps its own. */
async function keep(sheet: ChargeSheet, { save, database, ...asked }: Options, prices: PriceList) {
  const { openLaboratory } = await import('../searching/openLaboratory.ts');
  const { chargeSheets, close } = openLaboratory(database);
  try {
    const { mass, resolution, purity, loss } = asked;
    const request = { composition: sheet.composition, mass, resolution, purity, loss };
    return chargeSheets.save(sheet, { name: save === true ? '' : (save ?? ''), request, prices });
  } finally {
    close();
  }
}
