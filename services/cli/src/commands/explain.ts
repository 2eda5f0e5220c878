import { factsFor } from '@tiegel/elements';
import type { Command } from 'commander';
import { type ConditionOptions, conditionOptions, conditionsIn } from '../input/conditionOptions.ts';
import { observedIn } from '../input/observedIn.ts';
import { pairsOption, readPairs } from '../input/pairsOption.ts';
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
    .option('--database <file>', 'the phase estimate also recalibrated on the melts of this database')
    .option('--json', 'the same as a JSON object on standard output')
    .action(async (words: string[], options: Options) => {
      const composition = readAlloy(words, options.wt ? 'weight' : 'atoms');
      const { explain } = await import('@tiegel/insight');
      const facts = factsFor(Object.keys(composition), { pairs: readPairs(options.pairs) });
      const recalibration = options.database === undefined ? null : await recalibrationIn(options.database);
      const told = explain(composition, facts, conditionsIn(options), recalibration);
      await standardOutput(options.json ? jsonText(told) : explanationText(told));
    });
  conditionOptions(pairsOption(command));
}

async function recalibrationIn(database: string) {
  const { ownRecalibration } = await import('@tiegel/insight');
  return ownRecalibration((await observedIn(database)).melts);
}
