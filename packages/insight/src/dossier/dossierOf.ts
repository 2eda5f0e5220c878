import type { Facts } from '@tiegel/contract';
import {
  type Composition,
  type StrengthRecord,
  strengthOf,
  type Verdicts,
  verdictsOf,
} from '@tiegel/screening';
import { type Compounds, compounds } from '../compounds/compounds.ts';
import { type Neighbour, nearestPublished } from '../neighbours/nearestPublished.ts';
import { type Phase, phaseOf } from '../phase/phaseOf.ts';
import { type Demixing, demixing } from '../regularSolution/demixing.ts';
import { type Ordering, ordering } from '../regularSolution/ordering.ts';
import { criterionValues } from './criterionValues.ts';

/** What is said of one alloy beyond its quantities. Every answer carries how far to trust it. */
export interface Dossier {
  /** By the id of the criterion; null where a value lacks or the rule does not speak of the alloy. */
  criteria: Verdicts;
  phase: Phase;
  /** null where the enthalpy of a pair lacks, as for `ordering` */
  demixing: Demixing | null;
  ordering: Ordering | null;
  /** null where an enthalpy or a parameter of Miedema's model lacks */
  compounds: Compounds | null;
  /** at the service temperature, MPa */
  strength: StrengthRecord;
  /** The nearest published alloys, nearest first. */
  nearest: Neighbour[];
}

/**
 * Everything that this package says of an alloy as it stands. Some 3 ms for five elements; facts
 * are kept and handed in again, for what depends on them alone is worked out once.
 *
 * @param composition amounts of any total
 * @param conditions by name, in the units of the conditions of packages/screening
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 */
export function dossierOf(
  composition: Composition,
  facts: Facts,
  conditions: Readonly<Record<string, number>> = {},
): Dossier {
  return {
    criteria: verdictsOf(composition, facts, conditions, criterionValues(composition, facts, conditions)),
    phase: phaseOf(composition, facts),
    demixing: demixing(composition, facts),
    ordering: ordering(composition, facts),
    compounds: compounds(composition, facts, conditions),
    strength: strengthOf(composition, facts, conditions),
    nearest: nearestPublished(composition),
  };
}
