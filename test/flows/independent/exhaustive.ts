import { enumerate, type PlainGrid, type Point } from './enumerate.ts';
import { type Formula, formulas, type PlainSystem } from './formulas.ts';
import { orderPoints } from './orderPoints.ts';
import type { ReferenceData } from './referenceData.ts';

/** A specification as it is written in a file, with what may be left out. */
export interface WrittenSpecification extends PlainGrid {
  limits?: { quantity: string; min?: number; max?: number }[];
  rank: WrittenRank[];
  keep?: number;
  keepPerSystem?: number;
  conditions?: { annealTemperature?: number; serviceTemperature?: number };
}

interface WrittenRank {
  quantity: string;
  prefer: 'high' | 'low' | { target: number };
  from?: number;
  to?: number;
  within?: number;
  weight?: number;
  shape?: number;
}

/** All that can be counted; a search may count less, and has null in the place of the rest. */
interface Counting {
  systems: number;
  points: number;
  passed: number;
  passedEach: number[];
  outside: Record<string, number>;
}

/** What a search must find. Compositions read 'Al5 Cr20 Fe75', in at.%; a score of null means no value. */
export interface Found {
  counts: {
    systems: number;
    points: number;
    passed: number | null;
    passedEach: number[] | null;
    outside: Record<string, number> | null;
  };
  candidates: [composition: string, score: number | null][];
}

/**
 * The exhaustive search in its plainest form: every composition of every element set, each
 * quantity by its formula in floating point, sorted. It imports nothing of packages/, so that
 * agreement with them means something. Good for some million points.
 */
export function exhaustive(specification: WrittenSpecification, data: ReferenceData): Found {
  const { limits = [], rank, keep = 1000, keepPerSystem = 0 } = specification;
  const counts: Counting = {
    systems: 0,
    points: 0,
    passed: 0,
    passedEach: limits.map(() => 0),
    outside: {},
  };
  const high = rank.length > 1 || rank[0]!.prefer === 'high';
  const score = scoreOf(rank);
  let best: Point[] = [];
  const bestOfSystems: Point[] = [];
  for (const { symbols, points } of enumerate(specification)) {
    if (points.length === 0) continue;
    const system = { ...systemOf(symbols, data), ...specification.conditions };
    counts.systems += 1;
    counts.points += points.length;
    const passing: Point[] = [];
    for (const fractions of points) {
      if (!meets(limits, fractions, system, counts)) continue;
      passing.push({ symbols, fractions, score: score(fractions, system) });
    }
    counts.passed += passing.length;
    bestOfSystems.push(...orderPoints(passing, high, keepPerSystem));
    best = orderPoints([...best, ...orderPoints(passing, high, keep)], high, keep);
  }
  const kept = new Map([...best, ...bestOfSystems].map((point) => [written(point), point]));
  const ordered = orderPoints([...kept.values()], high, kept.size);
  return { counts, candidates: ordered.map((point) => [written(point), point.score]) };
}

function systemOf(symbols: readonly string[], data: ReferenceData): PlainSystem {
  return {
    elements: symbols.map((symbol) => data.elements.get(symbol)!),
    enthalpy: symbols.map((a) => symbols.map((b) => (a === b ? 0 : data.enthalpies.get(`${a}-${b}`)!))),
  };
}

/** Whether a point meets every limit, counting passes of each and points without a value. A limit is inclusive; on it means within 1e-12·max(1, |limit|). */
function meets(
  limits: NonNullable<WrittenSpecification['limits']>,
  fractions: readonly number[],
  system: PlainSystem,
  counts: Counting,
): boolean {
  let all = true;
  limits.forEach(({ quantity, min = -Infinity, max = Infinity }, index) => {
    const value = formulas[quantity]!(fractions, system);
    if (value === null) counts.outside[quantity] = (counts.outside[quantity] ?? 0) + 1;
    const passes = value !== null && value >= min - slack(min) && value <= max + slack(max);
    if (passes) counts.passedEach[index]! += 1;
    else all = false;
  });
  return all;
}

function slack(limit: number): number {
  return Number.isFinite(limit) ? 1e-12 * Math.max(1, Math.abs(limit)) : 0;
}

function scoreOf(rank: readonly WrittenRank[]): Formula {
  if (rank.length === 1) {
    const { quantity, prefer } = rank[0]!;
    const formula = formulas[quantity]!;
    if (typeof prefer === 'string') return formula;
    return (fractions, system) => {
      const value = formula(fractions, system);
      return value === null ? null : Math.abs(value - prefer.target);
    };
  }
  const weights = rank.reduce((sum, { weight = 1 }) => sum + weight, 0);
  return (fractions, system) => {
    let product = 1;
    for (const entry of rank) {
      const value = formulas[entry.quantity]!(fractions, system);
      if (value === null) return null;
      product *= desirability(value, entry) ** ((entry.weight ?? 1) / weights);
    }
    return product;
  };
}

/** Derringer & Suich, J. Qual. Technol. 12 (1980) 214: between the anchors from 0 to 1, held there. */
function desirability(value: number, { prefer, from, to, within, shape = 1 }: WrittenRank): number {
  let d: number;
  if (typeof prefer !== 'string') d = 1 - Math.abs(value - prefer.target) / within!;
  else if (prefer === 'high') d = (value - from!) / (to! - from!);
  else d = (to! - value) / (to! - from!);
  return Math.min(1, Math.max(0, d)) ** shape;
}

function written({ symbols, fractions }: Point): string {
  return symbols.map((symbol, index) => symbol + Number((100 * fractions[index]!).toFixed(9))).join(' ');
}
