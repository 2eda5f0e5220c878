import { embeddedInstallation, type Installation, redisInstallation } from './installation.ts';
import type { Fault } from './round.ts';

/** A fault, and the installation that it happens to. */
export interface Kind extends Fault {
  title: string;
  open: () => Promise<Installation>;
}

export const kinds: readonly Kind[] = [
  { title: 'the api, scoring in threads of its own', part: 'api', open: embeddedInstallation },
  { title: 'the api beside Redis and workers', part: 'api', open: redisInstallation },
  { title: 'a worker', part: 'worker', open: redisInstallation },
  { title: 'Redis, which comes back with its data', part: 'redis', open: redisInstallation },
  { title: 'Redis, which comes back empty', part: 'redis', emptied: true, open: redisInstallation },
];
