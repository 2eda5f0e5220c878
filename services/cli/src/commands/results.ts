import type { Readable } from 'node:stream';
import {
  type ExportFormat,
  exportFormats,
  problem,
  type SystemsFormat,
  systemsFormats,
} from '@tiegel/contract/terms';
import { type Command, Option } from 'commander';
import { commandsOf, type LaboratoryOptions } from '../input/laboratoryOptions.ts';
import { queryOf, rowsOption, type SelectionOptions, selectionOptions } from '../input/selectionOptions.ts';
import { asFile } from '../output/asFile.ts';
import { jsonText } from '../output/jsonText.ts';
import { candidatesText, searchesText, systemsText } from '../output/resultsText.ts';
import { bySelection } from '../searching/bySelection.ts';
import { inLaboratory } from '../searching/inLaboratory.ts';
import { resultsViews } from './resultsViews.ts';

interface Selecting extends LaboratoryOptions, SelectionOptions {}

/** What is asked for as a file. */
interface AsFile<Format> extends Selecting {
  format?: Format;
  into?: string;
  overwrite?: true;
}

interface Showing extends AsFile<ExportFormat> {
  order: string;
  descending?: true;
}

interface ShowingSystems extends AsFile<SystemsFormat> {
  unexplored?: true;
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
  const show = selecting(named('show', 'the kept candidates, filtered and in any order'))
    .option('--order <quantity>', 'rank, or the id of a quantity', 'rank')
    .option('--descending', 'the greatest first');
  fileOptions(show, exportFormats).action((id: string, options: Showing) =>
    bySelection(options, async ({ results }) => {
      const direction = options.descending ? 'desc' : 'asc';
      const query = { ...queryOf(options), order: options.order, direction } as const;
      if (options.format !== undefined || options.into !== undefined)
        return allAsFile(options, exportFormats, async (format) => {
          const { exportFile } = await import('@tiegel/search/exportFile');
          return (await exportFile(results, { id, query, format })).file;
        });
      await results.ready(id, query);
      const page = results.candidates(id, query);
      return options.json ? jsonText(page) : candidatesText(results.view(id), page);
    }),
  );
  const systems = selecting(
    named('systems', 'the best candidate of each set of elements, and what is known of it'),
  ).option(
    '--unexplored',
    'only those without an alloy in the table of published ones, without an own one and without a melt',
  );
  fileOptions(systems, systemsFormats).action((id: string, options: ShowingSystems) =>
    bySelection(options, async ({ results, melts, imports }) => {
      const explored = options.unexplored ? ('no' as const) : undefined;
      const asked = { id, query: queryOf(options), explored };
      const own = { melts: melts.list(), own: imports.alloys() };
      if (options.format !== undefined || options.into !== undefined)
        return allAsFile(options, systemsFormats, async (format) => {
          const { systemsFile } = await import('@tiegel/search/systemsFile');
          return (await systemsFile(results, { ...asked, format }, own)).file;
        });
      const { systemsAsked, systemView } = await import('@tiegel/search/laboratory');
      const { systems: meant, ...rest } = await systemsAsked(results, asked, own);
      const items = meant.slice(0, options.rows).map((one) => systemView(results, id, one));
      return options.json
        ? jsonText({ items, ...rest })
        : systemsText(results.view(id), items, rest.explored);
    }),
  );
  resultsViews(named);
}

function fileOptions(command: Command, formats: readonly string[]): Command {
  return command
    .addOption(new Option('--format <format>', 'all of them as a file, with --into').choices(formats))
    .option('--into <file>', 'where the file goes, with --format; - is standard output')
    .option('--overwrite', 'the file may be there already');
}

/** What is meant as the file of the route of exports, byte for byte: all of it, however many. */
async function allAsFile<Format extends string>(
  { format, into, rows, overwrite, json }: AsFile<Format>,
  formats: readonly Format[],
  open: (format: Format) => Promise<Readable>,
): Promise<Iterable<string> | AsyncIterable<Uint8Array>> {
  if (format === undefined) throw usage(`--into needs --format, one of ${formats.join(', ')}.`);
  if (into === undefined) throw usage('--format needs --into FILE, or --into - for standard output.');
  if (rows !== undefined) throw usage('a file holds all that is meant: leave --rows out.');
  return asFile({ format, into, overwrite, json }, () => open(format));
}

const usage = (what: string) => problem('command/usage', { what });
