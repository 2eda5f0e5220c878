import { problem } from '@tiegel/contract';
import { Command, CommanderError } from 'commander';
import { chargeCommand } from './commands/charge.ts';
import { chargeSheetsCommand } from './commands/chargeSheets.ts';
import { countCommand } from './commands/count.ts';
import { dataCommand } from './commands/data.ts';
import { evidenceCommand } from './commands/evidence.ts';
import { explainCommand } from './commands/explain.ts';
import { meltCommand } from './commands/melt.ts';
import { resultsCommand } from './commands/results.ts';
import { screenCommand } from './commands/screen.ts';
import { searchCommand } from './commands/search.ts';
import { searchesCommand } from './commands/searches.ts';
import { shortlistCommand } from './commands/shortlist.ts';
import { substituteCommand } from './commands/substitute.ts';
import { weighingCommand } from './commands/weighing.ts';
import { endWithReader } from './output/standardOutput.ts';
import { tellFaults } from './output/tellFaults.ts';

const commands = [
  dataCommand,
  screenCommand,
  explainCommand,
  substituteCommand,
  evidenceCommand,
  chargeCommand,
  chargeSheetsCommand,
  weighingCommand,
  countCommand,
  searchCommand,
  searchesCommand,
  resultsCommand,
  shortlistCommand,
  meltCommand,
];

/** The terminal's side: exit 0 done, 1 the request was wrong, 2 a fault; a closed pipe is 0. */
export async function run(words: readonly string[]): Promise<0 | 1 | 2> {
  endWithReader();
  endOnSignal();
  const program = new Command('tiegel')
    .description('Searches multi-principal-element alloys: every composition of a grid, ranked.')
    .showSuggestionAfterError()
    .exitOverride()
    .configureOutput({ outputError: () => {} });
  for (const add of commands) add(program);
  try {
    await program.parseAsync(words, { from: 'user' });
    return 0;
  } catch (error) {
    if (!(error instanceof CommanderError)) return tellFaults(error);
    if (error.exitCode === 0) return 0;
    // A command alone is answered by its help, already written.
    return error.code === 'commander.help' ? 1 : tellFaults(usageProblem(error));
  }
}

/** A signal ends the program by its own way out, so that temporary databases go with it. */
function endOnSignal(): void {
  const end = (_signal: string, number: number) => process.exit(128 + number);
  process.once('SIGINT', end).once('SIGTERM', end);
}

function usageProblem({ message }: CommanderError) {
  return problem('command/usage', { what: message.replace(/^error: /, '').replaceAll('\n', ' ') });
}
