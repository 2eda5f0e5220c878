import { ProblemError } from '@tiegel/contract/terms';
import { factsFor } from '@tiegel/elements';
import type { Command } from 'commander';
import { gramsAboveZero } from '../input/amountsBySymbol.ts';
import { type ConditionOptions, conditionOptions, conditionsIn } from '../input/conditionOptions.ts';
import { dataInForce, inForceOption } from '../input/dataInForce.ts';
import { type LimitOptions, limitOptions, limitsIn } from '../input/limitOptions.ts';
import { pairsOption } from '../input/pairsOption.ts';
import { readAlloy } from '../input/readAlloy.ts';
import { readLimits } from '../input/readLimits.ts';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';
import { weighingText } from '../output/weighingText.ts';

interface Options extends ConditionOptions, LimitOptions {
  wt?: true;
  mass: number;
  resolution: number;
  limits?: string;
  prices?: string;
  pairs?: string;
  database?: string;
  json?: true;
}

/** `weighing ALLOY --mass 50 --resolution 0.001`: what the step of a balance leaves certain of an alloy. */
export function weighingCommand(program: Command): void {
  const command = program
    .command('weighing')
    .description('what the step of a balance does to an alloy, its limits and its rules')
    .argument('<alloy...>', 'such as AlCoCrFeNi or "Co20 Cr20 Fe20 Mn20 Ni20"')
    .requiredOption('--mass <grams>', 'of the batch', gramsAboveZero)
    .requiredOption('--resolution <grams>', 'one step of the balance, such as 0.001', gramsAboveZero)
    .option('--limits <spec>', 'a search specification (JSON) whose limits are asked, at its conditions')
    .option('--wt', 'amounts are wt.%, not at.%')
    .option('--prices <file>', 'your own price list (CSV) instead of the invented one')
    .option('--json', 'a JSON object on standard output')
    .action(async (words: string[], options: Options) => {
      const { mass, resolution } = options;
      const composition = readAlloy(words, options.wt ? 'weight' : 'atoms');
      const asked = readLimits(options.limits);
      const conditions = { ...asked.conditions, ...conditionsIn(options) };
      const limits = [...asked.limits, ...limitsIn(options)];
      const { criterionVerdicts, weighingError, weighingFaults } = await import('@tiegel/insight');
      const faults = weighingFaults(composition, mass, resolution);
      if (faults.length > 0) throw new ProblemError(faults);
      const { prices, pairs } = await dataInForce(options);
      const facts = factsFor(Object.keys(composition), { prices, pairs });
      const { verdicts: criteria, ...rest } = weighingError(composition, {
        ...{ mass, resolution, facts, conditions, limits },
        verdicts: criterionVerdicts(facts, conditions),
      });
      await standardOutput(
        options.json
          ? jsonText({ ...rest, criteria })
          : weighingText({ ...rest, criteria }, { composition, mass, resolution, prices }),
      );
    });
  limitOptions(command);
  inForceOption(command, 'pair values and prices');
  conditionOptions(pairsOption(command));
}
