import { type Fault, fault, ProblemError, problem } from '@tiegel/contract';
import type { Composition } from '@tiegel/elements';
import { shortages, usable } from './cheapestMaterials.ts';
import type { Material } from './material.ts';
import { decimalsOf } from './onBalance.ts';

/** Why no set of the materials makes the alloy, with each element that cannot be met. */
export function refuseUnmeetable(
  materials: readonly Material[],
  needed: Readonly<Record<string, number>>,
  composition: Composition,
): ProblemError {
  const missing = Object.keys(shortages(materials, needed));
  // The programme and its explanation differ by rounding at most; then every element is as good as another.
  const named = missing.length > 0 ? missing : Object.keys(needed);
  return new ProblemError(named.map((symbol) => unmet(symbol, materials, needed, composition)));
}

function unmet(
  symbol: string,
  materials: readonly Material[],
  needed: Readonly<Record<string, number>>,
  composition: Composition,
): Fault {
  const holding = materials.filter(({ contains }) => symbol in contains);
  const fit = usable(holding, needed);
  const share = `${Number(composition[symbol]!.toFixed(2))} at.%`;
  const why =
    holding.length === 0
      ? `no material has ${symbol} in it`
      : fit.length === 0
        ? `what has ${symbol} in it (${listed(holding)}) brings ${foreignTo(holding, needed)} too, which the alloy has not`
        : `what has ${symbol} in it (${listed(fit)}) brings too much of another element first`;
  return fault('charge/cannot-be-met', { symbol, share, why }, '/materials');
}

const listed = (materials: readonly Material[]): string => {
  const names = materials.map(({ name }) => name);
  return names.length <= 3
    ? names.join(', ')
    : `${names.slice(0, 3).join(', ')} and ${names.length - 3} more`;
};

function foreignTo(materials: readonly Material[], needed: Readonly<Record<string, number>>): string {
  const foreign = materials.flatMap(({ contains }) =>
    Object.keys(contains).filter((one) => !(one in needed)),
  );
  return [...new Set(foreign)].sort().join(', ');
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
  const shown = exact.toFixed(Math.min(100, decimalsOf(resolution) + 2));
  const least = Number(((mass * resolution) / exact).toPrecision(2));
  return problem(
    'charge/too-light',
    { material: material.name, needed: shown, resolution, least: String(least) },
    '/mass',
  );
}
