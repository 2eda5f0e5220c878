import { performance } from 'node:perf_hooks';
import { planChunks, scoreReference } from '@tiegel/engine';
import { embeddedQueue, type Report, type ScoringAnswer, type ScoringRequest } from '@tiegel/queue';
import { expect, test } from 'vitest';
import { checkSearch } from '../../src/asking/check.ts';
import scoringThread from '../../src/working/scoringThread.ts';

const request = (step: number) => ({
  elements: { pool: ['Al', 'Co', 'Cr', 'Fe', 'Ni', 'Ti'] },
  components: 4,
  fractions: { step, min: 5, max: 50 },
  limits: [{ quantity: 'mixingEnthalpy', min: -20, max: 5 }],
  rank: [{ quantity: 'density', prefer: 'low' }],
  keep: 40,
  keepPerSystem: 2,
});
const checked = checkSearch(request(5), { prices: null }, 1e13);
const chunks = planChunks(checked.grid, { pointsPerChunk: 2000, workers: 1 });
const reference = (ordinal: number) => scoreReference(checked.prepared, chunks[ordinal]!, { cutOff: null });

const outcomeOf = (answer: ScoringAnswer | Report) => (answer.kind === 'done' ? answer.outcome : answer);

function requestOf(searchId: string, plan: unknown, ordinal = 0): ScoringRequest {
  const json = Buffer.from(JSON.stringify(plan));
  const shared = new Uint8Array(new SharedArrayBuffer(json.length));
  shared.set(json);
  const stop = new Int32Array(new SharedArrayBuffer(4));
  return { searchId, plan: shared, chunk: chunks[ordinal]!, cutOff: null, stop };
}

test('every chunk has the outcome of the reference, whichever searches take turns on the thread', () => {
  expect(chunks.length).toBeGreaterThan(3);
  for (const chunk of chunks) {
    for (let search = 0; search < 12; search += 1) {
      const answer = scoringThread(requestOf(`search${search}`, checked.plan, chunk.ordinal));
      expect(outcomeOf(answer)).toEqual(reference(chunk.ordinal));
    }
  }
});

test('the time in the thread is told in seconds', () => {
  const start = performance.now();
  const answer = scoringThread(requestOf('timed', checked.plan));
  const most = (performance.now() - start) / 1000;
  expect(answer).toMatchObject({ kind: 'done', scoringSeconds: expect.any(Number) });
  expect((answer as { scoringSeconds: number }).scoringSeconds).toBeGreaterThan(0);
  expect((answer as { scoringSeconds: number }).scoringSeconds).toBeLessThanOrEqual(most);
});

test('a chunk whose search is stopped is left', () => {
  const stopped = requestOf('stopped', checked.plan);
  stopped.stop[0] = 1;
  expect(scoringThread(stopped)).toEqual({ kind: 'stopped' });
});

test('the plan of another engine version is refused', () => {
  const foreign = requestOf('foreign', { ...checked.plan, engineVersion: '0' });
  expect(() => scoringThread(foreign)).toThrow(/engine/);
});

test('in threads of the embedded queue it scores every chunk of a search', async () => {
  const queue = embeddedQueue({
    threadFile: new URL('../../src/working/scoringThread.ts', import.meta.url),
    threads: 2,
  });
  const reports: Report[] = [];
  const { promise: all, resolve } = Promise.withResolvers<void>();
  queue.onReport((report) => {
    reports.push(report);
    if (reports.length === chunks.length) resolve();
  });
  await queue.announce('search', checked.plan);
  for (const chunk of chunks) await queue.send({ searchId: 'search', chunk, attempt: 1, cutOff: null });
  await all;
  await queue.close();
  for (const report of reports) {
    expect(outcomeOf(report)).toEqual(reference(report.ordinal));
  }
});
