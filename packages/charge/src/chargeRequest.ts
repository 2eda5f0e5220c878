import { type Fault, fault, limited, ProblemError } from '@tiegel/contract/terms';
import type { Composition, OwnPair } from '@tiegel/elements';
import type { Material } from './material.ts';

/** What to charge, from what, on which balance. */
export interface ChargeRequest {
  /** at.%, the target, after the losses */
  composition: Composition;
  /** g, of everything that is weighed */
  mass: number;
  /** g, one step of the balance */
  resolution: number;
  materials: readonly Material[];
  /** the one currency of the prices; null where there is none */
  currency: string | null;
  /** wt.% of an element's mass that evaporates in melting and is made up for, by symbol */
  loss?: Readonly<Record<string, number>>;
  /** mixing enthalpies of one's own, which cautions take before those of the project */
  pairs?: readonly OwnPair[];
}

/** g. Ten tonnes are no batch of a laboratory any more; beyond, sums lose the last steps of a fine balance. */
const heaviestBatch = 1e7;
/** g, what the finest balance shows at all */
export const finestResolution = 1e-7;
/** wt.%. More than this cannot be made up for by charging more. */
const greatestLoss = 90;
/** wt.% */
const leastPurity = 1;

/** @throws ProblemError request/wrong-value and charge/not-in-alloy, all of them */
export function checkRequest({ composition, mass, resolution, loss = {} }: ChargeRequest): void {
  const faults: Fault[] = [];
  if (!(mass > 0 && mass <= heaviestBatch)) {
    faults.push(
      wrong('The batch mass', `${mass} g`, 'Give grams above 0 and at most 10 million (10 t).', '/mass'),
    );
  }
  // Where the batch mass is not possible, it says nothing of the balance.
  const below = mass > 0 ? mass : Number.POSITIVE_INFINITY;
  if (!(resolution >= finestResolution && resolution < below)) {
    const right = 'Give one step of the balance in grams, at least 0.0000001 and less than the batch mass.';
    faults.push(wrong('The balance’s resolution', `${resolution} g`, right, '/resolution'));
  }
  for (const [symbol, percent] of Object.entries(loss)) {
    faults.push(...lossFaults(symbol, percent, composition));
  }
  if (faults.length > 0) throw new ProblemError(limited(faults));
}

function lossFaults(symbol: string, percent: number, composition: Composition): Fault[] {
  const pointer = `/loss/${symbol.replaceAll('~', '~0').replaceAll('/', '~1')}`;
  if (!Object.hasOwn(composition, symbol)) {
    return [fault('charge/not-in-alloy', { what: 'loss', symbol: symbol.slice(0, 20) }, pointer)];
  }
  if (percent >= 0 && percent <= greatestLoss) return [];
  const right = `Give the part of its mass that evaporates in wt.%, from 0 to ${greatestLoss}.`;
  return [wrong(`The loss of ${symbol}`, `${percent} %`, right, pointer)];
}

/** @throws ProblemError charge/not-in-alloy and request/wrong-value: all purities that are not possible */
export function checkPurity(purity: Readonly<Record<string, number>>, composition: Composition): void {
  const faults = Object.entries(purity).flatMap(([symbol, percent]) => {
    const pointer = `/purity/${symbol.replaceAll('~', '~0').replaceAll('/', '~1')}`;
    if (!Object.hasOwn(composition, symbol)) {
      return [fault('charge/not-in-alloy', { what: 'purity', symbol: symbol.slice(0, 20) }, pointer)];
    }
    return purityFault(`The purity of ${symbol}`, percent, pointer) ?? [];
  });
  if (faults.length > 0) throw new ProblemError(limited(faults));
}

/** null where the purity (wt.%) is possible */
export function purityFault(place: string, percent: number, pointer: string): Fault | null {
  if (percent >= leastPurity && percent <= 100) return null;
  return wrong(place, `${percent} %`, `Give wt.% from ${leastPurity} to 100.`, pointer);
}

export function wrong(place: string, found: string, right: string, pointer: string): Fault {
  return fault('request/wrong-value', { place, found, right }, pointer);
}
