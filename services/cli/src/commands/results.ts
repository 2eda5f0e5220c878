import { type CandidateQuery, ProblemError } from '@tiegel/contract';
import { symbolFault } from '@tiegel/elements';
import { type Command, InvalidArgumentError } from 'commander';
import { boundsIn, type LimitOptions, limitOptions } from '../input/limitOptions.ts';
import { jsonText } from '../output/jsonText.ts';
import { candidatesText, searchesText, systemsText } from '../output/resultsText.ts';
import { standardOutput } from '../output/standardOutput.ts';
import type { Laboratory } from '../searching/openLaboratory.ts';

interface Options {
  database?: string;
  json?: true;
}

interface Selecting extends Options, LimitOptions {
  with?: string[];
  without?: string[];
  front?: true;
  rows: number;
}

/** `results`: the searches of a database and what they kept: candidates filtered and ordered, systems, the unexplored. */
export function resultsCommand(program: Command): void {
  const parent = program
    .command('results')
    .description('what the searches of a database kept: list, look through, systems');
  const named = (name: string, description: string) =>
    parent
      .command(name)
      .description(description)
      .option('--database <file>', 'the database; else that of the service (DATA_DIR, or the folder data)')
      .option('--json', 'JSON on standard output');
  const selecting = (command: Command) => {
    command.argument('<id>', 'of a finished search');
    limitOptions(command);
    return command
      .option('--with <symbols>', 'elements that must be there, with commas between', symbolsIn)
      .option('--without <symbols>', 'elements that must not', symbolsIn)
      .option('--front', 'only members of the Pareto front that the search asked for')
      .option('--rows <number>', 'at most so many', rowsIn, 20);
  };

  named('list', 'every search, the newest first').action((options: Options) =>
    run(options, ({ results }) => {
      const all = results.list();
      return options.json ? jsonText(all) : searchesText(all);
    }),
  );
  selecting(named('show', 'the kept candidates, filtered and in any order'))
    .option('--order <quantity>', 'rank, or the id of a quantity', 'rank')
    .option('--descending', 'the greatest first')
    .action((id: string, options: Selecting & { order: string; descending?: true }) =>
      run(options, async ({ results }) => {
        const direction = options.descending ? 'desc' : 'asc';
        const query = { ...queryOf(options), order: options.order, direction } as const;
        await results.ready(id, query);
        const page = results.candidates(id, query);
        return options.json ? jsonText(page) : candidatesText(results.view(id), page);
      }),
    );
  selecting(named('systems', 'the best candidate of each set of elements, and what is known of it'))
    .option('--unexplored', 'only those of which nothing is published and nothing was melted here')
    .action((id: string, options: Selecting & { unexplored?: true }) =>
      run(options, async ({ results, melts, imports }) => {
        const { isExplored, systemsExplored } = await import('@tiegel/search');
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
}

function queryOf(options: Selecting): CandidateQuery {
  const { with: has = [], without = [], front, rows } = options;
  const faults = [...has, ...without].map((symbol) => symbolFault(symbol, '')).filter((one) => one !== null);
  if (faults.length > 0) throw new ProblemError(faults);
  return {
    ...{ ranges: boundsIn(options), has, without, order: 'rank', direction: 'asc', limit: rows },
    ...(front ? { front } : {}),
  };
}

function symbolsIn(text: string, before: string[] = []): string[] {
  return [...before, ...text.split(/[\s,]+/).filter((part) => part !== '')];
}

/** As many as a page of the service has. */
const mostRows = 1000;

function rowsIn(text: string): number {
  const rows = Number(text);
  if (Number.isInteger(rows) && rows >= 1 && rows <= mostRows) return rows;
  throw new InvalidArgumentError(`Write a whole number from 1 to ${mostRows}.`);
}

async function run(
  { database }: Options,
  told: (laboratory: Laboratory) => Iterable<string> | Promise<Iterable<string>>,
): Promise<void> {
  const { openLaboratory, openToRead } = await import('../searching/openLaboratory.ts');
  const laboratory = database === undefined ? openLaboratory(undefined) : openToRead(database);
  try {
    await standardOutput(await told(laboratory));
  } finally {
    laboratory.close();
  }
}
