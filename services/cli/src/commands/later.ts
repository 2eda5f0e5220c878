import { problem } from '@tiegel/contract';
import type { Command } from 'commander';

const laterCommands = ['melt'];

/** Commands of a later release: refused by name, never taken for a slip of the keyboard. */
export function laterCommand(program: Command): void {
  for (const name of laterCommands) {
    program
      .command(name, { hidden: true })
      .argument('[rest...]')
      .allowUnknownOption()
      .helpOption(false)
      .action(() => {
        throw problem('command/not-available-yet', { what: name });
      });
  }
}
