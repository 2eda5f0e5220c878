import { factsFor, symbols } from '@tiegel/elements';
import { type Command, InvalidArgumentError } from 'commander';
import { type ConditionOptions, conditionOptions, conditionsIn } from '../input/conditionOptions.ts';
import { dataInForce, inForceOption } from '../input/dataInForce.ts';
import { pairsOption } from '../input/pairsOption.ts';
import { readAlloy } from '../input/readAlloy.ts';
import { readLimits } from '../input/readLimits.ts';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';
import { substituteText } from '../output/substituteText.ts';

interface Options extends ConditionOptions {
  wt?: true;
  replace: string;
  with?: string[];
  limits?: string;
  prices?: string;
  pairs?: string;
  database?: string;
  json?: true;
}

/** `substitute ALLOY --replace Co`: the element replaced by every other, for its whole share and for half of it. */
export function substituteCommand(program: Command): void {
  const command = program
    .command('substitute')
    .description('replaces an element of an alloy by others, the most alike first')
    .argument('<alloy...>', 'such as CoCrFeMnNi')
    .requiredOption('--replace <element>', 'an element of the alloy')
    .option('--with <elements>', 'only by these, each alone and all together, such as Ni,Mn', namesIn)
    .option(
      '--limits <spec>',
      'a search specification (JSON) whose space and limits should hold, at its conditions',
    )
    .option('--wt', 'amounts are wt.%, not at.%')
    .option('--prices <file>', 'your own price list (CSV) instead of the invented one')
    .option('--json', 'a JSON object on standard output')
    .action(async (words: string[], options: Options) => {
      const composition = readAlloy(words, options.wt ? 'weight' : 'atoms');
      const asked = readLimits(options.limits);
      const { prices, pairs } = await dataInForce(options);
      const facts = factsFor(symbols, { prices, pairs });
      const { phaseOf, substitutes } = await import('@tiegel/insight');
      const items = substitutes(composition, {
        replace: options.replace,
        ...(options.with === undefined ? {} : { with: options.with }),
        facts,
        limits: asked.limits,
        ...(asked.space === null ? {} : { space: asked.space }),
        conditions: { ...asked.conditions, ...conditionsIn(options) },
        phase: (one) => phaseOf(one, facts),
      });
      await standardOutput(options.json ? jsonText({ items }) : substituteText(items, asked.limits, prices));
    });
  inForceOption(command, 'pair values and prices');
  conditionOptions(pairsOption(command));
}

function namesIn(list: string): string[] {
  const names = list
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
  if (names.length > 0) return names;
  throw new InvalidArgumentError('Write one element or more, as in Ni,Mn, or leave it out for every other.');
}
