import type { Command } from 'commander';
import { usualAddress } from '../server/serverAddress.ts';

/** What every command takes that speaks to a running service. */
export interface ServerOptions {
  server?: string;
  json?: true;
}

/** Makes commands below one that speak to a running service, each by its name and what it does. */
export function serverCommandsOf(parent: Command): (name: string, description: string) => Command {
  return (name, description) =>
    parent
      .command(name)
      .description(description)
      .option('--server <address>', `of the service; else TIEGEL_SERVER, else ${usualAddress}`)
      .option('--json', 'JSON on standard output');
}
