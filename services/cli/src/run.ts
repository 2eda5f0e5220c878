import { problem } from '@tiegel/contract/terms';
import { Command, CommanderError } from 'commander';
import project from '../../../package.json' with { type: 'json' };
import { endWithReader } from './output/standardOutput.ts';
import { tellFaults } from './output/tellFaults.ts';

/** In the order of the help. What is not asked for is not loaded: that would be half of a short command's time. */
const commands: Record<string, () => Promise<(program: Command) => void>> = {
  data: async () => (await import('./commands/data.ts')).dataCommand,
  screen: async () => (await import('./commands/screen.ts')).screenCommand,
  explain: async () => (await import('./commands/explain.ts')).explainCommand,
  compare: async () => (await import('./commands/compare.ts')).compareCommand,
  substitute: async () => (await import('./commands/substitute.ts')).substituteCommand,
  evidence: async () => (await import('./commands/evidence.ts')).evidenceCommand,
  charge: async () => (await import('./commands/charge.ts')).chargeCommand,
  'charge-sheets': async () => (await import('./commands/chargeSheets.ts')).chargeSheetsCommand,
  weighing: async () => (await import('./commands/weighing.ts')).weighingCommand,
  count: async () => (await import('./commands/count.ts')).countCommand,
  search: async () => (await import('./commands/search.ts')).searchCommand,
  searches: async () => (await import('./commands/searches.ts')).searchesCommand,
  results: async () => (await import('./commands/results.ts')).resultsCommand,
  shortlist: async () => (await import('./commands/shortlist.ts')).shortlistCommand,
  melt: async () => (await import('./commands/melt.ts')).meltCommand,
  access: async () => (await import('./commands/access.ts')).accessCommand,
};

/** The terminal's side: exit 0 done, 1 the request was wrong, 2 a fault; a closed pipe is 0. */
export async function run(words: readonly string[]): Promise<0 | 1 | 2> {
  endWithReader();
  endOnSignal();
  const program = new Command('tiegel')
    .description('Searches multi-principal-element alloys: every composition of a grid, ranked.')
    .version(project.version, '--version', 'the version of the program')
    .showSuggestionAfterError()
    // Names of commands and their arguments leave less than commander would break a description into.
    .configureHelp({ minWidthToWrap: 30 })
    .exitOverride()
    .configureOutput({ outputError: () => {} });
  const [name = ''] = words;
  const asked = Object.hasOwn(commands, name) ? [commands[name]!] : Object.values(commands);
  for (const load of asked) (await load())(program);
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
