import type { Command } from 'commander';

/** What every command takes that works in the database of a laboratory. */
export interface LaboratoryOptions {
  database?: string;
  json?: true;
}

export function databaseOption(command: Command): Command {
  return command.option(
    '--database <file>',
    'the database; else that of the service (DATA_DIR, or the folder data)',
  );
}

/** Makes commands below one that work in the database of a laboratory, each by its name and what it does. */
export function commandsOf(parent: Command): (name: string, description: string) => Command {
  return (name, description) =>
    databaseOption(parent.command(name).description(description)).option('--json', 'JSON on standard output');
}
