import type { Chunk } from '@tiegel/contract';
import { pointNumbering } from '../src/grid/pointNumbering.ts';
import type { Prepared } from '../src/index.ts';
import type { Sample } from './workloads.ts';

/** A chunk of whole systems holds up to so many points: about what a worker scores in a second or a few. */
const mostPoints = 3e7;

/** The systems of a sample, whole, neighbours in one chunk. */
export function sampledChunks({ grid, systems }: Prepared, { oneIn, group }: Sample): Chunk[] {
  const chunks: Chunk[] = [];
  for (let system = 0; system < systems.count; system += 1) {
    if (Math.floor(system / group) % oneIn !== 0) continue;
    const points = pointNumbering(grid, systems.systemAt(system)).count;
    const before = chunks.at(-1);
    if (before?.endSystem === system && before.points + points <= mostPoints) {
      before.endSystem += 1;
      before.points += points;
    } else {
      chunks.push(chunkOf(chunks.length, system, 0, null, points));
    }
  }
  return chunks;
}

/** Some points from the middle of one in so many of the sampled systems. */
export function middleChunks(
  { grid, systems }: Prepared,
  sample: Sample,
  { oneIn, points: most }: { oneIn: number; points: number },
): Chunk[] {
  const chunks: Chunk[] = [];
  let sampled = 0;
  for (let system = 0; system < systems.count; system += 1) {
    if (Math.floor(system / sample.group) % sample.oneIn !== 0) continue;
    sampled += 1;
    if ((sampled - 1) % oneIn !== 0) continue;
    const { count } = pointNumbering(grid, systems.systemAt(system));
    const points = Math.min(count, most);
    if (points === 0) continue;
    const first = Math.floor((count - points) / 2);
    chunks.push(chunkOf(chunks.length, system, first, first + points, points));
  }
  return chunks;
}

function chunkOf(
  ordinal: number,
  system: number,
  firstPoint: number,
  endPoint: number | null,
  points: number,
): Chunk {
  return { ordinal, firstSystem: system, endSystem: system + 1, firstPoint, endPoint, points };
}
