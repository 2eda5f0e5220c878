import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Prepared } from '../src/index.ts';
import { type Digest, digestOf } from './digest.ts';
import { plainInput } from './plainInput.ts';
import type { Sample } from './workloads.ts';

const source = join(import.meta.dirname, 'plain.c');
const flags = ['-O3', '-march=native'];

/** The plain loop, compiled for one search. */
export interface PlainLoop {
  /** One run of its own process: what it found, and the seconds of processor time that it took. */
  run(): { seconds: number; digest: Digest };
  remove(): void;
}

/** The C compiler of this machine, and what it says of itself; null where there is none. */
export function compiler(): { name: string; version: string } | null {
  for (const name of ['cc', 'gcc', 'clang']) {
    const { status, stdout } = spawnSync(name, ['--version'], { encoding: 'utf8' });
    if (status === 0) return { name, version: `${stdout.split('\n')[0]!.trim()}, ${flags.join(' ')}` };
  }
  return null;
}

/** Compiles plain.c for a search and writes what it reads. Throws what the compiler complains of. */
export function plainLoop(compile: string, prepared: Prepared, sample: Sample): PlainLoop {
  const folder = mkdtempSync(join(tmpdir(), 'tiegel-bench-'));
  const [program, input] = [join(folder, 'plain'), join(folder, 'input.txt')];
  const { components, limits } = prepared.plan.specification;
  const given = [`-DCOMPONENTS=${components.max}`, `-DLIMITS=${limits.length}`];
  const compiled = spawnSync(compile, [...flags, ...given, source, '-o', program, '-lm'], {
    encoding: 'utf8',
  });
  if (compiled.status !== 0) throw new Error(`${compile} does not compile plain.c:\n${compiled.stderr}`);
  writeFileSync(input, plainInput(prepared, sample));
  return {
    run() {
      const { status, stdout, stderr } = spawnSync(program, [input], {
        encoding: 'utf8',
        maxBuffer: 2 ** 28,
      });
      if (status !== 0) throw new Error(`The plain loop ended with ${status}:\n${stderr}`);
      const [first, ...ids] = stdout.trimEnd().split('\n');
      const [seconds, points, passed, ...passedEach] = first!.split(' ').map(Number);
      return { seconds: seconds!, digest: digestOf({ points: points!, passed: passed!, passedEach }, ids) };
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
