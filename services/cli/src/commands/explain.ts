import type { Facts } from '@tiegel/contract';
import { type Composition, factsFor } from '@tiegel/elements';
import type { Explanation } from '@tiegel/insight';
import type { Command } from 'commander';
import { type ConditionOptions, conditionOptions, conditionsIn } from '../input/conditionOptions.ts';
import { type DataInForce, dataInForce, inForceOption } from '../input/dataInForce.ts';
import { pairsOption } from '../input/pairsOption.ts';
import { readAlloy } from '../input/readAlloy.ts';
import { explanationText } from '../output/explanationText.ts';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';

interface Options extends ConditionOptions {
  wt?: true;
  database?: string;
  pairs?: string;
  json?: true;
}

/** `explain ALLOY`: what is published of an alloy, what the models say, and how far to trust it, in words. */
export function explainCommand(program: Command): void {
  const command = program
    .command('explain')
    .description('what is published of an alloy and what the models say, in words')
    .argument('<alloy...>', 'such as AlCoCrFeNi or "Co20 Cr20 Fe20 Mn20 Ni20"')
    .option('--wt', 'amounts are wt.%, not at.%')
    .option('--json', 'the same as a JSON object on standard output')
    .action(async (words: string[], options: Options) => {
      const composition = readAlloy(words, options.wt ? 'weight' : 'atoms');
      const data = await dataInForce(options);
      const facts = factsFor(Object.keys(composition), { prices: data.prices, pairs: data.pairs });
      const told = await tell(composition, facts, options, data);
      await standardOutput(options.json ? jsonText(told) : explanationText(told));
    });
  inForceOption(command, 'pair values, prices, melts, alloys and recalibration');
  conditionOptions(pairsOption(command));
}

/** With a database also its alloys, and what its melts make of the estimate. */
async function tell(
  composition: Composition,
  facts: Facts,
  options: Options,
  { melts, alloys, pairs }: DataInForce,
): Promise<Explanation> {
  const { explain, ownRecalibration, withOwnAlloys } = await import('@tiegel/insight');
  const conditions = conditionsIn(options);
  if (options.database === undefined) return explain(composition, facts, conditions, { pairs });
  const recalibration = ownRecalibration(melts);
  return withOwnAlloys(explain(composition, facts, conditions, { recalibration, pairs }), alloys);
}
