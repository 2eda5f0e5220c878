import type { Facts } from '@tiegel/contract';
import { conditionValue } from '../formula/conditions.ts';
import { formulaValue } from '../values/formulaValue.ts';
import { missingFor } from '../values/missingFor.ts';
import { missingInWords } from '../values/missingInWords.ts';
import { presentIn } from '../values/presentIn.ts';
import { type Composition, valuesOf } from '../values/valuesOf.ts';
import { HIGHEST_HOMOLOGOUS_TEMPERATURE } from './coldEnough.ts';
import { aluminium, cantorElements, excludedFromFcc, MOST_ALUMINIUM } from './fccDomain.ts';
import { hallPetchTemperatures } from './grainBoundaries.ts';
import { reasons, TOO_HOT, tooAlike } from './reasons.ts';
import type { Strength } from './strength.ts';
import { errorAt, leastComparedMisfit, strengthErrors } from './strengthErrors.ts';
import { volumeMisfit } from './volumeMisfit.ts';

/** yieldStrengthFcc with its domain, the CoCrFeMnNi family, and its error. */
export function fccStrength(
  composition: Composition,
  facts: Facts,
  conditions: Readonly<Record<string, number>>,
): Strength {
  const { yieldStrengthFcc: value = null } = valuesOf(composition, facts, ['yieldStrengthFcc'], conditions);
  const family = presentIn(composition).every((symbol) => isAmong(symbol, cantorElements));
  const domain = family ? 'inside' : 'outside';
  if (value === null) {
    return { value, domain, error: null, reason: whyNone(composition, facts, conditions) };
  }
  const temperature = conditionValue('serviceTemperature', conditions);
  const misfit = formulaValue(volumeMisfit, composition, facts)!;
  if (misfit < leastComparedMisfit.fcc) {
    const why = tooAlike(misfit, leastComparedMisfit.fcc);
    const added = hasGrains(conditions) ? !family && GUESS : LATTICE_ALONE;
    return { value, domain, error: null, reason: reasons(added, why) };
  }
  if (!hasGrains(conditions)) {
    const { fccLatticeInside, fccLatticeOutside } = strengthErrors;
    const error = errorAt(temperature, family ? fccLatticeInside : fccLatticeOutside);
    const low = family && MOSTLY_GRAINS;
    return { value, domain, error, reason: reasons(LATTICE_ALONE, low, error === null && ROOM_ONLY) };
  }
  const error = family ? errorAt(temperature, strengthErrors.fccWithGrains) : null;
  return { value, domain, error, reason: reasons(!family && GUESS, family && error === null && ROOM_ONLY) };
}

const LATTICE_ALONE =
  'Friction of the lattice alone: no grain size is given, so what grain boundaries add is not in it.';
const MOSTLY_GRAINS =
  'Of Co, Cr, Fe, Mn and Ni alone six published alloys are stronger by factors of 2.6 to 13.';
const GUESS =
  'What grain boundaries add is known for CoCrFeMnNi; for other elements it is a guess, and the value with it.';
const ROOM_ONLY = 'The error was measured near room temperature only.';

/** The first thing that stands in the way of a value. */
function whyNone(
  composition: Composition,
  facts: Facts,
  conditions: Readonly<Record<string, number>>,
): string {
  const missing = missingFor('yieldStrengthFcc', composition, facts);
  if (missing.length > 0) return `Not known: ${missingInWords(missing)}.`;
  const excluded = presentIn(composition).filter((symbol) => isAmong(symbol, excludedFromFcc));
  if (excluded.length > 0) return `No value for alloys with ${excluded.join(' or ')}.`;
  if (formulaValue(aluminium, composition, facts)! > MOST_ALUMINIUM)
    return 'No value with more than 5 at.% aluminium.';
  const { homologousTemperature } = valuesOf(composition, facts, ['homologousTemperature'], conditions);
  if (homologousTemperature! > HIGHEST_HOMOLOGOUS_TEMPERATURE) return TOO_HOT;
  return grainsUnknown(conditionValue('serviceTemperature', conditions));
}

function grainsUnknown(temperature: number): string {
  const { min, max } = hallPetchTemperatures;
  const why =
    temperature > max
      ? `Grain boundaries no longer strengthen above ${max} K`
      : `What grain boundaries add is not known below ${min} K`;
  return `${why}: without a grain size there is the friction of the lattice alone.`;
}

const isAmong = (symbol: string, symbols: readonly string[]) => symbols.includes(symbol);
const hasGrains = (conditions: Readonly<Record<string, number>>) =>
  Number.isFinite(conditionValue('grainSize', conditions));
