import type { Chunk } from '@tiegel/contract';
import type { Prepared } from '../prepared/prepare.ts';
import { scoreChunk } from '../scoreChunk.ts';
import { calibrationSample } from './calibrationSample.ts';

const nothing: Chunk = {
  ...{ ordinal: 0, firstSystem: 0, endSystem: 0 },
  ...{ firstPoint: 0, endPoint: null, points: 0 },
};
/** Enough for some hundred thousand points by a kernel: what it calls is compiled well by then. */
const pointsAtPlace = 5000;

/**
 * Makes what scoring makes once for a search, and scores some of it for so many milliseconds, the outcome
 * forgotten: what is scored from then on runs as the compiler leaves it, not as it begins.
 */
export function warmUp(prepared: Prepared, milliseconds: number): void {
  if (prepared.systems.count === 0) return;
  scoreChunk(prepared, nothing, { cutOff: null });
  const end = performance.now() + milliseconds;
  const stopped = () => performance.now() > end;
  for (const chunk of calibrationSample(prepared, pointsAtPlace).chunks) {
    if (scoreChunk(prepared, chunk, { cutOff: null, stopped }) === null) return;
  }
}
