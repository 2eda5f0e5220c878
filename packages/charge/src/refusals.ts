import { type Fault, fault, ProblemError, problem } from '@tiegel/contract/terms';
import type { Composition } from '@tiegel/elements';
import { shortages, usable } from './cheapestMaterials.ts';
import type { Material } from './material.ts';
import { decimalsOf } from './onBalance.ts';

/** Less than this part of a batch's mass is nothing that a balance shows, and less than the programme tells from rounding. */
const LEAST_PART = 1e-9;

/**
 * Refuses shares that are too small for any balance.
 * @throws ProblemError charge/cannot-be-met
 */
export function refuseTraces(needed: Readonly<Record<string, number>>, composition: Composition): void {
  const traces = Object.keys(needed).filter((symbol) => needed[symbol]! < LEAST_PART);
  if (traces.length === 0) return;
  throw new ProblemError(
    traces.map((symbol) =>
      unmet(symbol, composition, {
        why: 'so little of it cannot be weighed',
        right: `Leave ${symbol} out, or give it a larger share.`,
      }),
    ),
  );
}

/** Why no set of the materials makes the alloy, with each element that cannot be met. */
export function refuseUnmeetable(
  materials: readonly Material[],
  needed: Readonly<Record<string, number>>,
  composition: Composition,
): ProblemError {
  const missing = Object.keys(shortages(materials, needed));
  // The programme and its explanation differ by rounding at most; then every element is as good as another.
  const named = missing.length > 0 ? missing : Object.keys(needed);
  return new ProblemError(
    named.map((symbol) => unmet(symbol, composition, shortOf(symbol, { materials, needed, missing }))),
  );
}

/** Why an element lacks, and what would be right. */
interface Reason {
  why: string;
  right: string;
}

function unmet(symbol: string, composition: Composition, reason: Reason): Fault {
  const percent = composition[symbol]!;
  const share = `${Number(percent.toFixed(2)) || Number(percent.toPrecision(2))} at.%`;
  return fault('charge/cannot-be-met', { symbol, share, ...reason }, '/materials');
}

interface Shelf {
  materials: readonly Material[];
  /** mass of each element that must be charged */
  needed: Readonly<Record<string, number>>;
  /** elements of which too little can be brought */
  missing: readonly string[];
}

function shortOf(symbol: string, { materials, needed, missing }: Shelf): Reason {
  const others = Object.keys(needed).filter((one) => one !== symbol);
  const asMetal = `Add ${symbol} as a metal`;
  const withOthers =
    others.length === 0 ? '' : `, or a master alloy of ${symbol} with nothing else than ${either(others)}`;
  const holding = materials.filter(({ contains }) => symbol in contains);
  if (holding.length === 0)
    return { why: `no material has ${symbol} in it`, right: `${asMetal}${withOthers}.` };
  const fit = usable(holding, needed);
  if (fit.length === 0) {
    const foreign = otherElements(holding, symbol).filter((one) => !(one in needed));
    return {
      why: `all that has ${symbol} in it (${listed(holding)}) brings ${both(foreign)} too, of which the alloy has none`,
      right: `${asMetal}${withOthers}.`,
    };
  }
  // As much as possible was made: what is not short is full, and stops the materials that bring it.
  const full = otherElements(fit, symbol).filter((one) => !missing.includes(one));
  const much = full.length === 0 ? 'of the other elements' : both(full);
  return {
    why: `all that has ${symbol} in it (${listed(fit)}) brings too much ${much} with it`,
    right: `${asMetal}, or a master alloy with more ${symbol} and less ${full.length === 0 ? 'of them' : both(full)}.`,
  };
}

const listed = (materials: readonly Material[]): string => {
  const names = materials.map(({ name }) => name);
  return names.length <= 3
    ? names.join(', ')
    : `${names.slice(0, 3).join(', ')} and ${names.length - 3} more`;
};

function otherElements(materials: readonly Material[], symbol: string): string[] {
  const all = materials.flatMap(({ contains }) => Object.keys(contains));
  return [...new Set(all)].filter((one) => one !== symbol).sort();
}

const both = (symbols: readonly string[]): string => joined(symbols, 'and');
const either = (symbols: readonly string[]): string => joined([...symbols].sort(), 'or');

function joined(symbols: readonly string[], word: string): string {
  const last = symbols.at(-1) ?? '';
  return symbols.length < 2 ? last : `${symbols.slice(0, -1).join(', ')} ${word} ${last}`;
}

interface Unrounded {
  material: Material;
  exact: number;
}

/** The line of which the batch has least. */
export function lightestLine(lines: readonly Unrounded[]): Unrounded {
  return lines.reduce((least, one) => (one.exact < least.exact ? one : least));
}

/** The balance shows nothing of a material: the batch that would need it once, and twice for safety. */
export function refuseUnweighable(
  { material, exact }: Unrounded,
  mass: number,
  resolution: number,
): ProblemError {
  const decimals = Math.min(100, decimalsOf(resolution) + 2);
  const fixed = exact.toFixed(decimals);
  const shown = Number(fixed) === 0 ? `less than ${(0.1 ** decimals).toFixed(decimals)}` : fixed;
  const least = Number(((mass * resolution) / exact).toPrecision(2));
  return problem(
    'charge/too-light',
    { material: material.name, needed: shown, resolution, least: String(least) },
    '/mass',
  );
}
