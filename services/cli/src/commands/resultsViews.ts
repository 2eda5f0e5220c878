import { type Command, InvalidArgumentError } from 'commander';
import type { LaboratoryOptions } from '../input/laboratoryOptions.ts';
import { queryOf, type SelectionOptions, selectionOptions } from '../input/selectionOptions.ts';
import { changesText } from '../output/changesText.ts';
import { jsonText } from '../output/jsonText.ts';
import { bySelection } from '../searching/bySelection.ts';
import { inLaboratory } from '../searching/inLaboratory.ts';

interface Selecting extends LaboratoryOptions, SelectionOptions {}

type Wish = [quantity: string, prefer: 'low' | 'high'];

/** Of all kept candidates at once, as the routes of the same tell it: elements, distributions, the front of two quantities; and what two searches have differently. */
export function resultsViews(named: (name: string, description: string) => Command): void {
  selectionOptions(named('elements', 'in how many kept candidates each element is, and in which amounts'))
    .summary('how often each element is there, and how much')
    .action((id: string, options: Selecting) =>
      bySelection(options, async ({ results }) => {
        const use = await results.elementUse(id, queryOf(options));
        if (options.json) return jsonText(use);
        return (await texts()).elementUseText(results.view(id), use);
      }),
    );
  selectionOptions(
    named('distributions', 'how quantities lie over the grid (a sample), over what passes and what was kept'),
  )
    .option('--quantities <ids>', 'with commas between; else what the search ranks and limits', idsIn)
    .action((id: string, options: Selecting & { quantities?: string[] }) =>
      bySelection(options, async ({ results }) => {
        const { quantitiesToShow } = await import('@tiegel/search');
        const view = results.view(id);
        const asked = options.quantities ?? quantitiesToShow(view);
        const found = await results.searchDistributions(id, queryOf(options), asked);
        if (options.json) return jsonText(found);
        return (await texts()).distributionsText(view, found);
      }),
    );
  selectionOptions(named('front', 'the best compromises of two quantities among the kept candidates'))
    .requiredOption('--between <quantity=wish>', 'two of them, as in density=low,omega=high', wishesIn)
    .action((id: string, options: Selecting & { between: [Wish, Wish] }) =>
      bySelection(options, async ({ results }) => {
        const [[first, preferFirst], [second, preferSecond]] = options.between;
        const prefer = [preferFirst, preferSecond] as const;
        const found = await results.tradeOff(id, queryOf(options), [first, second], prefer);
        if (options.json) return jsonText(found);
        return (await texts()).frontText(results.view(id), found, (rank) => results.candidateAt(id, rank));
      }),
    );
  named(
    'changed',
    'what a search asks, or was computed from, otherwise than another: specification, data, prices',
  )
    .summary('what two searches ask or were computed from differently')
    .argument('<id>', 'of a search, finished or not')
    .argument('<other>', 'of the one that it is compared with')
    .action((id: string, other: string, options: LaboratoryOptions) =>
      inLaboratory(options, async ({ results }) => {
        const { changesSince } = await import('@tiegel/search');
        const found = changesSince(results.view(other), results.view(id));
        return options.json ? jsonText(found) : changesText(found);
      }),
    );
}

/** Loaded by who shows them: they need packages/search. */
const texts = () => import('../output/candidateViewsText.ts');

function idsIn(text: string): string[] {
  return [...new Set(text.split(/[\s,]+/).filter((part) => part !== ''))];
}

function wishesIn(text: string): [Wish, Wish] {
  const wishes = text.split(',').map((part): Wish => {
    const [, quantity, prefer] = /^\s*(\w+)\s*=\s*(low|high)\s*$/.exec(part) ?? [];
    if (quantity === undefined)
      throw new InvalidArgumentError(`Write a quantity and low or high, as in density=low, not "${part}".`);
    return [quantity, prefer as Wish[1]];
  });
  const [first, second, ...more] = wishes;
  if (first === undefined || second === undefined || more.length > 0 || first[0] === second[0])
    throw new InvalidArgumentError('Write two different quantities, as in density=low,omega=high.');
  return [first, second];
}
