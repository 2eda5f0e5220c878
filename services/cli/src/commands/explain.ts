import { factsFor } from '@tiegel/elements';
import type { Command } from 'commander';
import { type ConditionOptions, conditionOptions, conditionsIn } from '../input/conditionOptions.ts';
import { readAlloy } from '../input/readAlloy.ts';
import { explanationText } from '../output/explanationText.ts';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';

interface Options extends ConditionOptions {
  wt?: true;
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
      const { explain } = await import('@tiegel/insight');
      const told = explain(composition, factsFor(Object.keys(composition)), conditionsIn(options));
      await standardOutput(options.json ? jsonText(told) : explanationText(told));
    });
  conditionOptions(command);
}
