import type { CandidateQuery } from '@tiegel/contract';
import { type ExportFormat, exportFormats, problem } from '@tiegel/contract/terms';
import { type Command, Option } from 'commander';
import { commandsOf, type LaboratoryOptions } from '../input/laboratoryOptions.ts';
import { queryOf, rowsOption, type SelectionOptions, selectionOptions } from '../input/selectionOptions.ts';
import { asFile } from '../output/asFile.ts';
import { jsonText } from '../output/jsonText.ts';
import { candidatesText, searchesText, systemsText } from '../output/resultsText.ts';
import { bySelection } from '../searching/bySelection.ts';
import { inLaboratory } from '../searching/inLaboratory.ts';
import type { Laboratory } from '../searching/openLaboratory.ts';
import { resultsViews } from './resultsViews.ts';

interface Selecting extends LaboratoryOptions, SelectionOptions {}

interface Showing extends Selecting {
  order: string;
  descending?: true;
  format?: ExportFormat;
  into?: string;
  overwrite?: true;
}

/** `results`: the searches of a database and what they kept: candidates filtered and ordered, systems, the unexplored. */
export function resultsCommand(program: Command): void {
  const parent = program
    .command('results')
    .description(
      'what the searches of a database kept: list, show, systems, elements, distributions, front, changed',
    );
  const named = commandsOf(parent);
  const selecting = (command: Command) => rowsOption(selectionOptions(command));

  named('list', 'every search, the newest first').action((options: LaboratoryOptions) =>
    inLaboratory(options, ({ results }) => {
      const all = results.list();
      return options.json ? jsonText(all) : searchesText(all);
    }),
  );
  selecting(named('show', 'the kept candidates, filtered and in any order'))
    .option('--order <quantity>', 'rank, or the id of a quantity', 'rank')
    .option('--descending', 'the greatest first')
    .addOption(new Option('--format <format>', 'all of them as a file, with --into').choices(exportFormats))
    .option('--into <file>', 'where the file goes, with --format; - is standard output')
    .option('--overwrite', 'the file may be there already')
    .action((id: string, options: Showing) =>
      bySelection(options, async ({ results }) => {
        const direction = options.descending ? 'desc' : 'asc';
        const query = { ...queryOf(options), order: options.order, direction } as const;
        const { format, into } = options;
        if (format !== undefined || into !== undefined) return candidateFile(results, { id, query, options });
        await results.ready(id, query);
        const page = results.candidates(id, query);
        return options.json ? jsonText(page) : candidatesText(results.view(id), page);
      }),
    );
  selecting(named('systems', 'the best candidate of each set of elements, and what is known of it'))
    .option(
      '--unexplored',
      'only those without an alloy in the table of published ones, without an own one and without a melt',
    )
    .action((id: string, options: Selecting & { unexplored?: true }) =>
      bySelection(options, async ({ results, melts, imports }) => {
        const { isExplored, systemsExplored } = await import('@tiegel/search/laboratory');
        const view = results.view(id);
        const { systems } = await results.keptSystems(id, queryOf(options));
        const own = { melts: melts.list(), own: imports.alloys() };
        const { systems: known, explored } = systemsExplored(view, systems, own);
        const shown = options.unexplored ? known.filter((one) => !isExplored(one)) : known;
        const items = shown
          .slice(0, options.rows)
          .map(({ rank, ...one }) => ({ ...one, best: results.candidateAt(id, rank) }));
        return options.json ? jsonText({ items, explored }) : systemsText(view, items, explored);
      }),
    );
  resultsViews(named);
}

/** The candidates as the file of the route of exports, byte for byte: every one that is meant, however many. */
async function candidateFile(
  results: Laboratory['results'],
  { id, query, options }: { id: string; query: CandidateQuery; options: Showing },
): Promise<Iterable<string> | AsyncIterable<Uint8Array>> {
  const { format, into, rows, overwrite, json } = options;
  if (format === undefined) throw usage(`--into needs --format, one of ${exportFormats.join(', ')}.`);
  if (into === undefined) throw usage('--format needs --into FILE, or --into - for standard output.');
  if (rows !== undefined) throw usage('a file holds all candidates that are meant: leave --rows out.');
  return asFile({ format, into, overwrite, json }, async () => {
    const { exportFile } = await import('@tiegel/search/exportFile');
    return (await exportFile(results, { id, query, format })).file;
  });
}

const usage = (what: string) => problem('command/usage', { what });
