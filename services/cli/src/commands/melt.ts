import type { Melts, MeltView } from '@tiegel/search/laboratory';
import type { Command } from 'commander';
import { commandsOf, type LaboratoryOptions } from '../input/laboratoryOptions.ts';
import { readChangedMelt, readMelt } from '../input/readMelt.ts';
import { jsonText } from '../output/jsonText.ts';
import { meltList, meltText } from '../output/meltText.ts';
import { changeLaboratory, inLaboratory } from '../searching/inLaboratory.ts';
import { meltFileCommands } from './meltFiles.ts';

/** `melt`: what was melted and seen, kept in the database of the service. */
export function meltCommand(program: Command): void {
  const parent = program
    .command('melt')
    .description(
      'what was weighed, melted and seen: list, show, record, change, delete, restore; its files: attach, attached, detach, reattach',
    );
  const named = commandsOf(parent);

  named('list', 'every melt that is not deleted').action((options: LaboratoryOptions) =>
    run<MeltView[]>(options, (melts) => melts.list(), meltList),
  );
  named('show', 'one melt, with its history')
    .argument('<id>')
    .action((id: string, options: LaboratoryOptions) =>
      run(options, (melts) => ({ ...melts.view(id), history: melts.history(id) }), meltText),
    );
  named('record', 'record a melt')
    .argument(
      '<file>',
      'a JSON file as POST /melts takes it, such as services/cli/examples/melt.json; - for standard input',
    )
    .action((file: string, options: LaboratoryOptions) =>
      run(options, (melts) => tellDoubts(melts.record(readMelt(file))), meltText, changeLaboratory),
    );
  named(
    'change',
    'change a melt; what stood before is kept. With "version" in the file it is refused where somebody changed the melt since',
  )
    .argument('<id>')
    .argument(
      '<file>',
      'the whole melt as a JSON file, such as "melt show --json" prints; - for standard input',
    )
    .action((id: string, file: string, options: LaboratoryOptions) =>
      run(
        options,
        (melts) => {
          const { entry, version } = readChangedMelt(file, id);
          return tellDoubts(melts.change(id, version ?? melts.view(id).version, entry));
        },
        meltText,
      ),
    );
  named('delete', 'delete a melt; it can be brought back')
    .argument('<id>')
    .action((id: string, options: LaboratoryOptions) => run(options, (melts) => melts.remove(id), meltText));
  named('restore', 'bring back a melt that was deleted')
    .argument('<id>')
    .action((id: string, options: LaboratoryOptions) => run(options, (melts) => melts.restore(id), meltText));
  meltFileCommands(parent);
}

/** It is recorded all the same: what is a slip is changed. */
function tellDoubts(melt: MeltView): MeltView {
  for (const { pointer, text } of melt.doubts) console.error(`Doubtful, ${pointer}: ${text}`);
  return melt;
}

/** @param open for what is nothing without melts that are there already, a database that is there */
function run<Found extends MeltView | MeltView[]>(
  options: LaboratoryOptions,
  act: (melts: Melts) => Found,
  inWords: (found: Found) => Iterable<string>,
  open: typeof changeLaboratory = inLaboratory,
): Promise<void> {
  return open(options, ({ melts }) => {
    const found = act(melts);
    return options.json ? jsonText(found) : inWords(found);
  });
}
