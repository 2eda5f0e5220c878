import type { Facts } from '@tiegel/contract';
import { conditionValue } from '../formula/conditions.ts';
import { formulaValue } from '../values/formulaValue.ts';
import { missingFor } from '../values/missingFor.ts';
import { missingInWords } from '../values/missingInWords.ts';
import { presentIn } from '../values/presentIn.ts';
import { type Composition, valuesOf } from '../values/valuesOf.ts';
import { misfitInWords, reasons, TOO_HOT, tooAlike } from './reasons.ts';
import { refractoryElements } from './refractoryElements.ts';
import type { Strength } from './strength.ts';
import { errorAt, leastComparedMisfit, strengthErrors } from './strengthErrors.ts';
import { volumeMisfit } from './volumeMisfit.ts';

/** Volume misfits between which edge dislocations decide, as the comparison with published alloys found. */
const testedMisfit = { min: 0.08, max: 0.16 };
/** Above 800 °C barely half of eleven published alloys lie within a factor of 1.5, the worst 3.5 times too high. */
const HOTTEST_TESTED_K = 1073.15;
const CHROMIUM =
  'Of the alloys that the error was measured on one has chromium: it is computed a third too high.';
/** Below it bcc metals may lose their ductility. */
const BRITTLE_BELOW_K = 293;

/** yieldStrengthBcc with its domain (refractory metals, volume misfit from 8 to 16 %) and its error. */
export function bccStrength(
  composition: Composition,
  facts: Facts,
  conditions: Readonly<Record<string, number>>,
): Strength {
  const { yieldStrengthBcc: value = null } = valuesOf(composition, facts, ['yieldStrengthBcc'], conditions);
  const temperature = conditionValue('serviceTemperature', conditions);
  const misfit = formulaValue(volumeMisfit, composition, facts);
  const { domain, why } = domainOf(composition, misfit);
  if (value === null) {
    const missing = missingFor('yieldStrengthBcc', composition, facts);
    const reason = missing.length > 0 ? `Not known: ${missingInWords(missing)}.` : TOO_HOT;
    return { value, domain, error: null, reason };
  }
  const alike = domain === 'outside' && misfit !== null && misfit < leastComparedMisfit.bccOutside;
  const error = alike ? null : expectedError(domain, temperature);
  const unmeasured = alike && tooAlike(misfit, leastComparedMisfit.bccOutside);
  const cautions = temperatureCautions(domain, temperature);
  return { value, domain, error, reason: reasons(why, unmeasured, ...cautions) };
}

interface Domain {
  domain: Strength['domain'];
  why: string | false;
}

function domainOf(composition: Composition, misfit: number | null): Domain {
  const others = presentIn(composition).filter(
    (symbol) => !(refractoryElements as readonly string[]).includes(symbol),
  );
  if (others.length > 0) {
    return {
      domain: 'outside',
      why: `The model was tested on alloys of ${refractoryElements.join(', ')}, without ${others.join(', ')}.`,
    };
  }
  // Without a misfit there is no value, and that has a reason of its own.
  if (misfit === null) return { domain: 'outside', why: false };
  if (misfit > testedMisfit.max) {
    const percent = misfitInWords(misfit, testedMisfit.max);
    return { domain: 'outside', why: `The volume misfit of ${percent} is above the tested 16 %.` };
  }
  return misfit < testedMisfit.min
    ? {
        domain: 'lower bound',
        why: `The volume misfit is ${misfitInWords(misfit, testedMisfit.min)}: below 8 % screw dislocations decide, and the alloy is stronger.`,
      }
    : { domain: 'inside', why: presentIn(composition).includes('Cr') && CHROMIUM };
}

function expectedError(domain: Strength['domain'], temperature: number): number | null {
  if (domain === 'lower bound') return null;
  return errorAt(temperature, domain === 'inside' ? strengthErrors.bccInside : strengthErrors.bccOutside);
}

function temperatureCautions(domain: Strength['domain'], temperature: number): (string | false)[] {
  return [
    temperature > HOTTEST_TESTED_K &&
      'Above 800 °C barely half of the published alloys (11) lie within a factor of 1.5; the worst is computed 3.5 times too high.',
    domain === 'outside' &&
      errorAt(temperature, strengthErrors.bccOutside) === null &&
      'The error was measured near room temperature only.',
    temperature < BRITTLE_BELOW_K &&
      'Below room temperature a bcc alloy may be brittle; where that begins is not computed.',
  ];
}
