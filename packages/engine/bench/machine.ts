import { availableParallelism, cpus, loadavg } from 'node:os';

/** What a measurement ran on. The load is that of the last minute, for the whole machine. */
export interface Machine {
  processor: string;
  cores: number;
  node: string;
  load: number;
}

export function machine(): Machine {
  return {
    processor: cpus()[0]?.model.trim() ?? 'unknown',
    cores: availableParallelism(),
    node: process.version,
    load: loadavg()[0]!,
  };
}
