import type { Facts } from '@tiegel/contract';
import type { Composition, QuantityValues } from '@tiegel/screening';
import type { Dossier } from '../dossier/dossierOf.ts';
import type { OwnPhase } from '../records/ownRecalibration.ts';
import type { PairAffinity } from '../regularSolution/pairAffinity.ts';

/** What an explanation is made of: one idea in whole sentences, for a person. */
export interface Paragraph {
  subject:
    | 'composition'
    | 'published'
    | 'broughtIn'
    | 'phases'
    | 'own'
    | 'disagreement'
    | 'rules'
    | 'ordering'
    | 'demixing'
    | 'compounds'
    | 'pairs'
    | 'strength'
    | 'limits';
  heading: string;
  text: string;
  /** How far to trust it; null where the text itself says so. */
  trust: string | null;
  /** Where formulas and numbers come from. */
  sources: readonly string[];
}

/** All that paragraphs are written from. */
export interface Told {
  composition: Composition;
  facts: Facts;
  conditions: Readonly<Record<string, number>>;
  /** every quantity of the registry */
  quantities: QuantityValues;
  dossier: Dossier;
  /** null where nobody asked for one's own melts */
  own: OwnPhase | null;
  affinity: PairAffinity | null;
  /** where the pair enthalpies are from, all of them and those of one's own alone */
  pairSources: Record<'all' | 'own', readonly string[]>;
}
