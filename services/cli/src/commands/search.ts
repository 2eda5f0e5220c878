import type { Command } from 'commander';
import { columnOption } from '../input/columnOption.ts';
import { pairsOption } from '../input/pairsOption.ts';
import { readSpecification } from '../input/readSpecification.ts';
import { workerCount } from '../input/workerCount.ts';

interface Options {
  workers?: number;
  database?: string;
  prices?: string;
  pairs?: string;
  column?: string[];
  again?: string;
  json?: true;
}

/** `search SPEC`, and `search --again FILE`, which runs an export's specification anew and compares. */
export function searchCommand(program: Command): void {
  const search = program
    .command('search')
    .description('search every composition of a grid and rank what meets the limits')
    .argument('[specification]', 'a JSON file; - for standard input')
    .option('--workers <number>', 'scoring threads; as many as the machine has if left out', workerCount)
    .option('--database <file>', 'keep the search in this database; else nothing is kept')
    .option(
      '--prices <file>',
      'your own price list (CSV), put in force in the database; else the invented one',
    )
    .option(
      '--again <file>',
      'run the specification of this export (CSV or NDJSON) anew and compare the rows',
    )
    .option('--json', 'a JSON object on standard output')
    .action(async (file: string | undefined, options: Options, command: Command) => {
      if ((file === undefined) === (options.again === undefined)) {
        command.error('search takes either a specification or --again with an export.');
      }
      // Database and queue are loaded only by the commands that need them.
      if (options.again !== undefined) {
        const { runAgain } = await import('../again/runAgain.ts');
        await runAgain(options.again, options);
      } else {
        const request = readSpecification(file!);
        const { searchOnce } = await import('../searching/searchOnce.ts');
        await searchOnce(request, options);
      }
    });
  pairsOption(columnOption(search));
}
