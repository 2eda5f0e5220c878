import { type Fault, fault, ProblemError } from '@tiegel/contract/terms';
import type { Composition, PriceList } from '@tiegel/elements';
import { type ChargeRequest, checkPurity } from './chargeRequest.ts';
import { pureMaterials } from './material.ts';
import { type MaterialEntry, materialOf, repeatedNames } from './materialEntry.ts';

/** A charge as a person asks for it. */
export interface ChargeEntry {
  /** at.% */
  composition: Composition;
  /** g */
  mass: number;
  /** g */
  resolution: number;
  /** wt.% by symbol, of the pure elements that are charged where there are no `materials` */
  purity?: Readonly<Record<string, number>>;
  /** wt.% by symbol */
  loss?: Readonly<Record<string, number>>;
  /** All there is to charge from; left out: every element pure, at the price of the list. */
  materials?: readonly MaterialEntry[];
  /** of the prices of `materials` */
  currency?: string | null;
}

/**
 * What is asked for with every default filled in.
 * @param prices of the pure elements; null: none are known
 * @throws ProblemError with every fault of purities or materials: charge/two-purities,
 *   charge/not-in-alloy, materials/..., alloy/..., element/..., request/wrong-value
 */
export function chargeRequestOf(entry: ChargeEntry, prices: PriceList | null): ChargeRequest {
  const { composition, mass, resolution, purity = {}, loss = {}, materials } = entry;
  const asked = { composition, mass, resolution, loss };
  if (materials === undefined) {
    checkPurity(purity, composition);
    return { ...asked, ...pureMaterials(Object.keys(composition), prices, purity) };
  }
  const faults: Fault[] = Object.keys(purity).length > 0 ? [fault('charge/two-purities', {}, '/purity')] : [];
  const read = materials.map((one, at) => materialOf(one, `/materials/${at}`, '', faults));
  faults.push(...repeatedNames(read, (at) => `/materials/${at}/name`));
  if (faults.length > 0) throw new ProblemError(faults);
  return { ...asked, materials: read.filter((one) => one !== null), currency: entry.currency ?? null };
}
