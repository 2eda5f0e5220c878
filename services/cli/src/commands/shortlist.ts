import { Readable } from 'node:stream';
import type { Shortlist, ShortlistAct, ShortlistFormat, ShortlistStatus } from '@tiegel/contract';
import {
  conflictsOf,
  mostPicked,
  settlingAct,
  shortlistFormats,
  shortlistMost,
  shortlistStatuses,
  versionNames,
} from '@tiegel/contract/terms';
import { demoPrices, formatComposition, parseAlloy } from '@tiegel/elements';
import { Argument, type Command, InvalidArgumentError, Option } from 'commander';
import { commandsOf, databaseOption, type LaboratoryOptions } from '../input/laboratoryOptions.ts';
import { textUpTo } from '../input/textUpTo.ts';
import { userName } from '../input/userName.ts';
import { asFile } from '../output/asFile.ts';
import { conflictsText } from '../output/conflictsText.ts';
import { jsonText } from '../output/jsonText.ts';
import { shortlistText } from '../output/shortlistText.ts';
import { changeLaboratory, inLaboratory } from '../searching/inLaboratory.ts';

interface Options extends LaboratoryOptions {
  by?: string;
}

interface Exporting extends Options {
  format: ShortlistFormat;
  into: string;
  overwrite?: true;
}

type Act<Given extends unknown[]> = (
  lists: import('@tiegel/search/laboratory').Shortlists,
  by: string,
  ...given: Given
) => Shortlist | Shortlist[];

/** `shortlist`: lists of alloys that a laboratory agrees on, kept in the database of the service. */
export function shortlistCommand(program: Command): void {
  const parent = program
    .command('shortlist')
    .description(
      'alloys to agree on: list, show, begin, add, remove, note, status, conflicts, settle, pick from a search, export',
    );
  const inDatabase = commandsOf(parent);
  const named = (name: string, description: string) =>
    inDatabase(name, description).option(
      '--by <name>',
      'who does it; else the name of the user',
      textUpTo(shortlistMost.by),
    );

  named('list', 'every shortlist').action((options: Options) => run(options, (lists) => lists.list()));
  named('show', 'one shortlist')
    .argument('<id>')
    .action((id: string, options: Options) => run(options, (lists) => lists.view(id)));
  named('begin', 'begin a shortlist')
    .argument('<name>', 'what it is called', textUpTo(shortlistMost.name))
    .action((name: string, options: Options) =>
      run(options, (lists, by) => lists.create(name, by), changeLaboratory),
    );
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
    .argument('<text>', 'what is to be known of it', textUpTo(shortlistMost.note))
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
  inDatabase('conflicts', 'what people set without knowing of each other, not settled yet')
    .argument('[id]', 'of one shortlist; else of all')
    .action((id: string | undefined, options: LaboratoryOptions) =>
      inLaboratory(options, ({ shortlists }) => {
        const lists = id === undefined ? shortlists.list() : [shortlists.view(id)];
        const told = () =>
          lists.flatMap((list) => conflictsOf(list).map((one) => ({ shortlist: list.id, ...one })));
        return options.json ? jsonText(told()) : conflictsText(lists);
      }),
    );
  named('settle', 'keep one version of what people set without knowing of each other')
    .argument('<id>')
    .argument('<alloy>')
    .addArgument(new Argument('<version>', 'as "shortlist conflicts" names it').choices(versionNames))
    .action((id: string, alloy: string, version: (typeof versionNames)[number], options: Options) =>
      run(options, (lists, by) => {
        const act = settlingAct(lists.view(id), formatComposition(parseAlloy(alloy)), version);
        return change(id, [act])(lists, by);
      }),
    );
  named('pick', 'add a spread of the candidates of a search')
    .argument('<id>')
    .requiredOption('--search <id>', 'a finished search of the same database')
    .option('--count <number>', 'how many', countIn, 10)
    .option('--one-per-system', 'only the best of each set of elements')
    .action((id: string, options: Options & { search: string; count: number; onePerSystem?: true }) =>
      run(options, (lists, by) => {
        const { search, count, onePerSystem = false } = options;
        return lists.pick(id, { search, count, onePerSystem, by });
      }),
    );
  databaseOption(
    parent
      .command('export')
      .description('a shortlist as one file: a page that opens without the program, or a table'),
  )
    .argument('<id>')
    .addOption(new Option('--format <format>', 'of the file').choices(shortlistFormats).makeOptionMandatory())
    .requiredOption('--into <file>', 'where it goes; - is standard output')
    .option('--overwrite', 'the file may be there already')
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

function countIn(text: string): number {
  const count = /^\d+$/.test(text) ? Number(text) : 0;
  if (count >= 1 && count <= mostPicked) return count;
  throw new InvalidArgumentError(`Write a whole number from 1 to ${mostPicked}.`);
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

/** @param open for what is nothing without lists that are there already, a database that is there */
function run(options: Options, act: Act<[]>, open: typeof changeLaboratory = inLaboratory): Promise<void> {
  return open(options, ({ shortlists }) => {
    const found = act(shortlists, options.by ?? userName());
    return options.json ? jsonText(found) : shortlistText(found);
  });
}
