import type { Composition } from '@tiegel/elements';
import type { Caution } from './caution.ts';
import type { MeltingWindow } from './meltingWindow.ts';
import type { RoundingBounds } from './roundingBounds.ts';

/** One thing to weigh. */
export interface ChargeLine {
  material: string;
  /** Its only element; null for a master alloy. */
  element: string | null;
  /** g, a multiple of the balance's resolution */
  mass: number;
  /** g, before rounding */
  exact: number;
  /** wt.% of its metal by symbol */
  contains: Readonly<Record<string, number>>;
  /** wt.% */
  purity: number;
  /** per kg; null: unknown */
  price: number | null;
  /** of this mass; null: the price is unknown */
  cost: number | null;
  /** K, by which it is put in order; estimated where it is the mean of a master alloy's elements */
  melting: { temperature: number; estimated: boolean };
}

/** What to weigh for a batch of an alloy, and what comes of it. */
export interface ChargeSheet {
  /** at.%, the target: the alloy after the expected losses */
  composition: Composition;
  /** g, of the batch as asked for */
  mass: number;
  /** g, one step of the balance */
  resolution: number;
  /** Symbols of the materials alphabetical. */
  lines: ChargeLine[];
  /** g, of all lines */
  total: number;
  /** at.%, of the rounded masses after the expected losses */
  resulting: Composition;
  /** at.%: farther than this from the target rounding cannot bring a share */
  rounding: RoundingBounds;
  /** of the batch; null where a material that is used has no price */
  cost: number | null;
  currency: string | null;
  /** Names of the materials, the lowest-melting first. */
  order: string[];
  window: MeltingWindow;
  /** wt.% of an element's mass that is expected to evaporate, and is made up for, by symbol */
  loss: Record<string, number>;
  /** g: what evaporates of each element, what is impurity, and what the ingot should weigh */
  expected: { lost: Record<string, number>; impurities: number; ingot: number };
  /** What the numbers mean, in whole sentences. */
  notes: string[];
  cautions: Caution[];
}
