import { type Fault, type ImportKind, importKinds, ProblemError } from '@tiegel/contract';
import { longestName } from '@tiegel/contract/terms';
import { symbolFault } from '@tiegel/elements';
import type { Imports } from '@tiegel/search';
import { type Command, InvalidArgumentError } from 'commander';
import { commandsOf, type LaboratoryOptions } from '../input/laboratoryOptions.ts';
import { readText } from '../input/readText.ts';
import { textUpTo } from '../input/textUpTo.ts';
import { alloyLines, previewLines, versionLines, versionsLines } from '../output/importText.ts';
import { jsonText } from '../output/jsonText.ts';
import { changeLaboratory, inLaboratory } from '../searching/inLaboratory.ts';

interface AlloyOptions extends LaboratoryOptions {
  text?: string;
  has: string[];
  without: string[];
  phase?: string;
  own?: true;
  published?: true;
}

/** `data import`, `imports`, `withdraw`, `restore`, `versions` and `alloys`: data of one's own, kept in the database of the service. */
export function importCommands(data: Command): void {
  const named = commandsOf(data);

  named('import', 'store a file (CSV) of your own under a number, whole or not at all')
    .argument('<kind>', importKinds.join(', '), kindOf)
    .argument('<file>', 'a CSV file; - for standard input')
    .option('--preview', 'only tell what would become of each row')
    .option('--name <name>', 'what it is', textUpTo(longestName))
    .action(
      (kind: ImportKind, file: string, options: LaboratoryOptions & { preview?: true; name?: string }) => {
        const text = readText(file);
        return options.preview
          ? run(options, (imports) => imports.preview(kind, text), previewLines, changeLaboratory)
          : run(
              options,
              (imports) => imports.enter(kind, text, { name: options.name ?? '' }),
              (one) => versionLines([one]),
              changeLaboratory,
            );
      },
    );
  named('imports', 'every import, the newest first').action((options: LaboratoryOptions) =>
    run(options, (imports) => imports.list(), versionLines),
  );
  named('withdraw', 'take an import out of force; it can be brought back')
    .argument('<number>', 'number of the import', importNumber)
    .action((number: number, options: LaboratoryOptions) =>
      run(
        options,
        (imports) => imports.withdraw(number),
        (one) => versionLines([one]),
      ),
    );
  named('restore', 'bring back an import that was taken out of force')
    .argument('<number>', 'number of the import', importNumber)
    .action((number: number, options: LaboratoryOptions) =>
      run(
        options,
        (imports) => imports.restore(number),
        (one) => versionLines([one]),
      ),
    );
  named('versions', 'which searches used which data').action((options: LaboratoryOptions) =>
    run(options, (imports) => imports.dataVersions(), versionsLines),
  );
  named('alloys', 'published alloys and those that were brought in')
    .option('--text <text>', 'what stands in name, process, note, doi or composition')
    .option('--has <symbols>', 'elements that must be there, with commas between', symbolsIn, [])
    .option('--without <symbols>', 'elements that must not', symbolsIn, [])
    .option('--phase <phase>', 'a phase that was observed, such as B2')
    .option('--own', 'only those that were brought in')
    .option('--published', 'only the others')
    .action(async (options: AlloyOptions) => {
      const { knownAlloys } = await import('@tiegel/search');
      const { text, has, without, phase, own, published } = options;
      refuseUnknown([...has.map(asOption('has')), ...without.map(asOption('without'))]);
      const filter = { text, has, without, phase, own: own ?? (published ? false : undefined) };
      await run(options, (imports) => knownAlloys(imports.alloys(), filter), alloyLines);
    });
}

const kindOf = (text: string): ImportKind => {
  const kind = importKinds.find((one) => one === text);
  if (kind === undefined) throw new InvalidArgumentError(`Write one of ${importKinds.join(', ')}.`);
  return kind;
};

const importNumber = (text: string): number => {
  const number = Number(text);
  if (/^\d+$/.test(text) && Number.isSafeInteger(number) && number >= 1) return number;
  throw new InvalidArgumentError('Write the number of an import, as "data imports" lists them.');
};

const symbolsIn = (text: string): string[] =>
  text
    .split(',')
    .map((symbol) => symbol.trim())
    .filter((symbol) => symbol !== '');

const asOption = (option: string) => (symbol: string) => symbolFault(symbol, `/${option}`);

function refuseUnknown(found: readonly (Fault | null)[]): void {
  const faults = found.filter((one) => one !== null);
  if (faults.length > 0) throw new ProblemError(faults);
}

/** @param open for what is nothing without imports that are there already, a database that is there */
function run<Found>(
  options: LaboratoryOptions,
  ask: (imports: Imports) => Found,
  told: (found: Found) => Iterable<string>,
  open: typeof changeLaboratory = inLaboratory,
): Promise<void> {
  return open(options, ({ imports }) => {
    const found = ask(imports);
    return options.json ? jsonText(found) : told(found);
  });
}
