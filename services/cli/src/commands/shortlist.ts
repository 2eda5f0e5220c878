import { Readable } from 'node:stream';
import {
  type Shortlist,
  type ShortlistAct,
  type ShortlistFormat,
  type ShortlistStatus,
  shortlistFormats,
  shortlistStatuses,
} from '@tiegel/contract';
import { demoPrices } from '@tiegel/elements';
import { Argument, type Command, Option } from 'commander';
import { userName } from '../input/userName.ts';
import { asFile } from '../output/asFile.ts';
import { jsonText } from '../output/jsonText.ts';
import { shortlistText } from '../output/shortlistText.ts';
import { standardOutput } from '../output/standardOutput.ts';
import { inLaboratory } from '../searching/inLaboratory.ts';

interface Options {
  database?: string;
  by?: string;
  json?: true;
}

interface Exporting extends Options {
  format: ShortlistFormat;
  into: string;
  overwrite?: true;
}

type Act<Given extends unknown[]> = (
  lists: import('@tiegel/search').Shortlists,
  by: string,
  ...given: Given
) => Shortlist | Shortlist[];

/** `shortlist`: lists of alloys that a laboratory agrees on, kept in the database of the service. */
export function shortlistCommand(program: Command): void {
  const parent = program
    .command('shortlist')
    .description('alloys to agree on: begin a list, add, note, judge, pick from a search, export');
  const named = (name: string, description: string) =>
    parent
      .command(name)
      .description(description)
      .option('--database <file>', 'the database; else that of the service (DATA_DIR, or the folder data)')
      .option('--by <name>', 'who does it; else the name of the user')
      .option('--json', 'JSON on standard output');

  named('list', 'every shortlist').action((options: Options) => run(options, (lists) => lists.list()));
  named('show', 'one shortlist')
    .argument('<id>')
    .action((id: string, options: Options) => run(options, (lists) => lists.view(id)));
  named('begin', 'begin a shortlist')
    .argument('<name>')
    .action((name: string, options: Options) => run(options, (lists, by) => lists.create(name, by)));
  named('add', 'add alloys')
    .argument('<id>')
    .argument('<alloys...>')
    .action((id: string, alloys: string[], options: Options) =>
      run(
        options,
        change(
          id,
          alloys.map((entry) => ({ kind: 'add', entry })),
        ),
      ),
    );
  named('remove', 'take an alloy off; it can be brought back')
    .argument('<id>')
    .argument('<alloy>')
    .action((id: string, entry: string, options: Options) =>
      run(options, change(id, [{ kind: 'remove', entry }])),
    );
  named('note', 'write a note on an alloy')
    .argument('<id>')
    .argument('<alloy>')
    .argument('<text>')
    .action((id: string, entry: string, text: string, options: Options) =>
      run(options, change(id, [{ kind: 'note', entry, text }])),
    );
  named('status', 'say how far an alloy is')
    .argument('<id>')
    .argument('<alloy>')
    .addArgument(new Argument('<status>').choices(shortlistStatuses))
    .action((id: string, entry: string, status: ShortlistStatus, options: Options) =>
      run(options, change(id, [{ kind: 'status', entry, status }])),
    );
  named('pick', 'add a spread of the candidates of a search')
    .argument('<id>')
    .requiredOption('--search <id>', 'a finished search of the same database')
    .option('--count <number>', 'how many', Number, 10)
    .option('--one-per-system', 'only the best of each set of elements')
    .action((id: string, options: Options & { search: string; count: number; onePerSystem?: true }) =>
      run(options, (lists, by) => {
        const { search, count, onePerSystem = false } = options;
        return lists.pick(id, { search, count, onePerSystem, by });
      }),
    );
  parent
    .command('export')
    .description('a shortlist as one file: a page that opens without the program, or a table')
    .argument('<id>')
    .addOption(new Option('--format <format>', 'of the file').choices(shortlistFormats).makeOptionMandatory())
    .requiredOption('--into <file>', 'where it goes; - is standard output')
    .option('--overwrite', 'the file may be there already')
    .option('--database <file>', 'the database; else that of the service (DATA_DIR, or the folder data)')
    .option('--json', 'on standard output, what was written')
    .action((id: string, options: Exporting) =>
      inLaboratory(options, ({ shortlists, imports }) =>
        asFile(options, async () => {
          const { shortlistFile } = await import('@tiegel/search/shortlistFile');
          const data = { prices: imports.prices() ?? demoPrices, pairs: imports.pairs() };
          return Readable.from(Buffer.from(shortlistFile(shortlists.view(id), options.format, data)), {
            objectMode: false,
          });
        }),
      ),
    );
}

/** Changes made after reading the list: whoever types a command has seen what stands now. */
function change(id: string, acts: readonly ShortlistAct[]): Act<[]> {
  return (lists, by) => {
    const { sequence } = lists.view(id);
    return lists.change(
      id,
      acts.map((act) => ({ key: crypto.randomUUID(), by, seen: sequence, act })),
    );
  };
}

async function run({ database, by, json }: Options, act: Act<[]>): Promise<void> {
  const { openLaboratory } = await import('../searching/openLaboratory.ts');
  const { shortlists, close } = openLaboratory(database);
  try {
    const found = act(shortlists, by ?? userName());
    await standardOutput(json ? jsonText(found) : shortlistText(found));
  } finally {
    close();
  }
}
