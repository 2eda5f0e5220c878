import type { Chunk, SearchSpecification } from '@tiegel/contract';
import { demoPrices, factsFor } from '@tiegel/elements';
import { engineVersion, type Prepared, prepare } from '../src/index.ts';
import { pointNumbering } from '../src/pointNumbering.ts';

/** A search to be measured, and what of it. */
export interface Workload {
  name: string;
  specification: SearchSpecification;
  /** The fast side scores every so-many-th system. */
  oneIn: number;
  /** The reference scores one of so many of those systems, and up to so many points from its middle. */
  reference: { oneIn: number; points: number };
}

const pool = [
  'Al',
  'Co',
  'Cr',
  'Cu',
  'Fe',
  'Hf',
  'Mn',
  'Mo',
  'Nb',
  'Ni',
  'Pd',
  'Re',
  'Si',
  'Ta',
  'Ti',
  'V',
  'W',
  'Y',
  'Zn',
  'Zr',
];

/** Six limits, each counted, that about a quarter of the points meets together; the best 1000 by density. */
function specification(name: string, components: number, step: number): SearchSpecification {
  return {
    version: 1,
    name,
    elements: { pool, require: [], forbid: [] },
    components: { min: components, max: components },
    fractions: { step, min: 5, max: 35, each: {} },
    limits: [
      { quantity: 'sizeMismatch', max: 9.5 },
      { quantity: 'omega', min: 0.8 },
      { quantity: 'valenceElectronConcentration', min: 4, max: 8.6 },
      { quantity: 'mixingEnthalpy', min: -30, max: 8 },
      { quantity: 'density', max: 13 },
      { quantity: 'cost', max: 400 },
    ],
    rank: [{ quantity: 'density', prefer: 'low' }],
    keep: 1000,
    keepPerSystem: 0,
  };
}

export const workloads: readonly Workload[] = [
  {
    name: 'five-percent-5',
    specification: specification('five-percent-5', 5, 5),
    oneIn: 1,
    reference: { oneIn: 100, points: 2000 },
  },
  {
    name: 'one-percent-5',
    specification: specification('one-percent-5', 5, 1),
    oneIn: 388,
    reference: { oneIn: 1, points: 5000 },
  },
  {
    name: 'five-percent-6',
    specification: specification('five-percent-6', 6, 5),
    oneIn: 12,
    reference: { oneIn: 100, points: 7000 },
  },
];

/** The plan of a workload, on the project's data with its invented prices, ready for scoring. */
export function preparedFor({ specification: search }: Workload): Prepared {
  return prepare({
    engineVersion,
    dataVersion: 'bench',
    specification: search,
    facts: factsFor(search.elements.pool, { prices: demoPrices }),
    conditions: {},
  });
}

/** Every so-many-th system, whole: one chunk each, or chunks of neighbours where all are taken. */
export function systemsOf({ grid, systems }: Prepared, oneIn: number): Chunk[] {
  const chunks: Chunk[] = [];
  for (let system = 0; system < systems.count; system += oneIn) {
    const points = pointNumbering(grid, systems.systemAt(system)).count;
    const before = chunks.at(-1);
    if (before?.endSystem === system && before.points < 1e6) {
      before.endSystem += 1;
      before.points += points;
    } else {
      chunks.push(chunkOf(chunks.length, system, 0, null, points));
    }
  }
  return chunks;
}

/** Of every so-many-th system some points from the middle. */
export function middlesOf({ grid, systems }: Prepared, oneIn: number, most: number): Chunk[] {
  const chunks: Chunk[] = [];
  for (let system = 0; system < systems.count; system += oneIn) {
    const { count } = pointNumbering(grid, systems.systemAt(system));
    const points = Math.min(count, most);
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
