import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { openStore } from '@tiegel/store';
import { expect, onTestFinished, test } from 'vitest';
import { candidateColumns, openImports } from '../../src/index.ts';

test('a process that is killed while it stores leaves whole files alone', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'killed-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const file = join(folder, 'lab.sqlite');
  const program = fileURLToPath(new URL('storeUntilKilled.ts', import.meta.url));
  const child = spawn(process.execPath, [program, file], { stdio: ['ignore', 'pipe', 'inherit'] });
  let told = 0;
  for await (const line of createInterface({ input: child.stdout })) {
    told = Math.max(told, Number(line));
    // Every file takes some milliseconds to read and store, so the signal comes in the middle of one.
    if (told === 5) child.kill('SIGKILL');
  }
  if (child.signalCode === null) await once(child, 'exit');
  expect(child.signalCode).toBe('SIGKILL');
  const store = openStore({ file, columns: candidateColumns });
  onTestFinished(() => store.close());
  const imports = openImports(store);
  const kept = imports.list();
  // What was said to be stored is there.
  expect(kept.length).toBeGreaterThanOrEqual(told);
  for (const { number, rows } of kept) {
    expect(rows).toBe(1540);
    expect(imports.view(number).csv.trimEnd().split('\n')).toHaveLength(1541);
  }
  expect(imports.pairs()).toHaveLength(1540);
});
