import { availableParallelism } from 'node:os';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { LongFilesFirst } from './longFilesFirst.ts';

const root = dirname(dirname(fileURLToPath(import.meta.url)));

export default defineConfig({
  test: {
    root,
    // Flows, faults and browser tests start real processes; none of them asserts a time.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    // Most files wait for pages and processes: one at a time leaves a core idle.
    maxWorkers: Math.max(2, availableParallelism()),
    sequence: { sequencer: LongFilesFirst },
    projects: [
      {
        extends: true,
        test: {
          name: 'parts',
          include: ['packages/*/test/**/*.test.ts', 'services/*/test/**/*.test.ts'],
          // Loading the same modules anew for each of 330 files takes longer than most of their tests.
          isolate: false,
        },
      },
      { extends: true, test: { name: 'whole', include: ['test/**/*.test.ts'] } },
    ],
  },
});
