import { mostCompared, problem } from '@tiegel/contract/terms';
import { type Composition, formatComposition } from '@tiegel/elements';
import type { Command } from 'commander';
import { columnOption } from '../input/columnOption.ts';
import { type ConditionOptions, conditionOptions, conditionsIn } from '../input/conditionOptions.ts';
import { dataInForce, inForceOption } from '../input/dataInForce.ts';
import { pairsOption } from '../input/pairsOption.ts';
import { alloyArguments, alloyLines, readAlloys, type WrittenAlloy } from '../input/readAlloys.ts';
import { readText } from '../input/readText.ts';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';

interface Options extends ConditionOptions {
  wt?: true;
  file?: string;
  differs?: true;
  prices?: string;
  pairs?: string;
  database?: string;
  column?: string[];
  json?: true;
}

/** `compare ALLOY ALLOY...`: two to six alloys side by side, line by line, with how much they differ in each. */
export function compareCommand(program: Command): void {
  const command = program
    .command('compare')
    .description('two to six alloys side by side, and in what they differ')
    .argument('[alloys...]', 'such as AlCoCrFeNi, Al7.69Co30.77Fe61.54 or "Co20 Cr20 Fe20 Mn20 Ni20"')
    .option('--differs', 'only what differs, and not by little')
    .option('--wt', 'amounts are wt.%, not at.%')
    .option('--file <file>', 'more alloys, one a line; - for standard input')
    .option('--prices <file>', 'your own price list (CSV) instead of the invented one')
    .option('--json', 'a JSON object on standard output: the alloys as screen tells them, and the lines')
    .action(async (alloys: string[], options: Options) => {
      const { wt, file, json, differs = false } = options;
      const written = [
        ...alloyArguments(alloys),
        ...(file === undefined ? [] : alloyLines(readText(file), file)),
      ];
      refuseOtherNumbers(written);
      const compositions = readAlloys(written, wt ? 'weight' : 'atoms');
      refuseRepeated(compositions, written);
      const set = conditionsIn(options);
      const data = await dataInForce(options);
      const { compared, comparisonJson } = await import('../comparing/compared.ts');
      const found = compared(compositions, data, set, { differs });
      if (json) return standardOutput(jsonText(comparisonJson(found)));
      const { comparisonText } = await import('../comparing/comparisonText.ts');
      return standardOutput(comparisonText(found));
    });
  inForceOption(command, 'pair values, columns, prices, melts and alloys');
  conditionOptions(pairsOption(columnOption(command)));
}

/** None at all is told by who reads alloys. */
function refuseOtherNumbers({ length }: readonly WrittenAlloy[]): void {
  if (length === 0 || (length > 1 && length <= mostCompared)) return;
  throw problem('command/usage', {
    what: `compare takes 2 to ${mostCompared} alloys, not ${length}. An alloy that is written with spaces stands in quotes.`,
  });
}

function refuseRepeated(compositions: readonly Composition[], written: readonly WrittenAlloy[]): void {
  const texts = compositions.map(formatComposition);
  for (const [at, text] of texts.entries()) {
    const first = texts.indexOf(text);
    if (first === at) continue;
    const [one, other] = [written[first]!, written[at]!];
    throw problem('command/usage', {
      what: `${one.place}, "${one.text}", and ${other.place}, "${other.text}", are the same alloy.`,
    });
  }
}
