import type { Command } from 'commander';
import { columnOption } from '../input/columnOption.ts';
import { pairsOption } from '../input/pairsOption.ts';
import { readSpecification } from '../input/readSpecification.ts';

/** `count SPEC`: how large a search is, exactly, before it runs. */
export function countCommand(program: Command): void {
  const command = program
    .command('count')
    .description('how many systems and compositions a search has')
    .argument('<specification>', 'a JSON file; - for standard input')
    .option('--prices <file>', 'your own price list (CSV) instead of the invented one')
    .option('--json', 'a JSON object on standard output')
    .action(
      async (file: string, options: { json?: true; prices?: string; pairs?: string; column?: string[] }) => {
        const request = readSpecification(file);
        // Database and queue are loaded only by the commands that need them.
        const { countOnce } = await import('../searching/countOnce.ts');
        await countOnce(request, options);
      },
    );
  pairsOption(columnOption(command));
}
