import { mostCompared, problem } from '@tiegel/contract/terms';
import { type Composition, formatComposition } from '@tiegel/elements';
import { type Command, InvalidArgumentError } from 'commander';
import { columnOption } from '../input/columnOption.ts';
import { type ConditionOptions, conditionOptions, conditionsIn } from '../input/conditionOptions.ts';
import { dataInForce, dataInForceOf, inForceOption } from '../input/dataInForce.ts';
import { pairsOption } from '../input/pairsOption.ts';
import { alloyArguments, alloyLines, readAlloys, type WrittenAlloy } from '../input/readAlloys.ts';
import { readText } from '../input/readText.ts';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';
import { inLaboratory } from '../searching/inLaboratory.ts';

interface Options extends ConditionOptions {
  wt?: true;
  file?: string;
  differs?: true;
  prices?: string;
  pairs?: string;
  database?: string;
  column?: string[];
  search?: string;
  ranks?: number[];
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
    .option('--search <id>', 'with the limits, expressions and conditions of this search of the database')
    .option('--ranks <numbers>', 'candidates of the search, before the alloys, as in 1,2,17', ranksIn)
    .option('--json', 'a JSON object on standard output: the alloys as screen tells them, and the lines')
    .action(async (alloys: string[], options: Options) => {
      const { wt, file, json, differs = false } = options;
      const { search, ranks = [] } = options;
      const written = [
        ...alloyArguments(alloys),
        ...(file === undefined ? [] : alloyLines(readText(file), file)),
      ];
      refuseOtherNumbers(ranks.length + written.length);
      const named =
        written.length === 0 && ranks.length > 0 ? [] : readAlloys(written, wt ? 'weight' : 'atoms');
      const set = conditionsIn(options);
      const { compared, comparisonJson } = await import('../comparing/compared.ts');
      const { comparisonText } = await import('../comparing/comparisonText.ts');
      const textOf = (found: ReturnType<typeof compared>) =>
        json ? jsonText(comparisonJson(found)) : comparisonText(found);
      if (search === undefined) {
        if (ranks.length > 0) throw problem('command/usage', { what: '--ranks needs --search ID.' });
        refuseRepeated(named, written);
        return standardOutput(textOf(compared(named, await dataInForce(options), set, { differs })));
      }
      const { ranked, searched } = await import('../comparing/searched.ts');
      return inLaboratory(options, async (laboratory) => {
        const { results } = laboratory;
        const compositions = [...ranked(results, search, ranks), ...named];
        refuseRepeated(compositions, [...candidatesWritten(compositions, ranks), ...written]);
        const data = await dataInForceOf(laboratory, options);
        return textOf(
          compared(compositions, data, set, { differs }, searched(results, search, compositions)),
        );
      });
    });
  inForceOption(command, 'pair values, columns, prices, melts and alloys');
  conditionOptions(pairsOption(columnOption(command)));
}

/** Candidates as if somebody had written them. */
function candidatesWritten(compositions: readonly Composition[], ranks: readonly number[]): WrittenAlloy[] {
  return ranks.map((rank, at) => ({ text: formatComposition(compositions[at]!), place: `Rank ${rank}` }));
}

function ranksIn(text: string): number[] {
  const ranks = text.split(',').map((part) => Number(part.trim() || Number.NaN));
  if (ranks.every((rank) => Number.isSafeInteger(rank) && rank >= 1)) return ranks;
  throw new InvalidArgumentError('Write ranks with commas between, as in 1,2,17.');
}

/** None at all is told by who reads alloys. */
function refuseOtherNumbers(length: number): void {
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
