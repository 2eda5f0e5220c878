import { spawnSync } from 'node:child_process';
import { closeSync, existsSync, openSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const main = fileURLToPath(new URL('../../src/main.mjs', import.meta.url));

// A device on which every disk is full: Linux has one.
test
  .skipIf(!existsSync('/dev/full'))
  .each([[['screen', 'CoCrFeMnNi']], [['data', 'elements', '--json']], [['--help']]])(
  'a standard output that takes no more ends %j in words, as a fault',
  (words) => {
    const full = openSync('/dev/full', 'w');
    const { status, stderr } = spawnSync(process.execPath, [main, ...words], {
      stdio: ['ignore', full, 'pipe'],
      encoding: 'utf8',
    });
    closeSync(full);
    expect(stderr).toBe(
      'Standard output does not take what is written: the disk is full.\n  Make room where it leads to, or lead it elsewhere. [output/refused]\n',
    );
    expect(status).toBe(2);
  },
);
