import { conditionInWords } from '@tiegel/contract/terms';
import { conditions, type Strength } from '@tiegel/screening';
import { percentInWords } from '../inWords.ts';
import type { Paragraph, Told } from './paragraph.ts';

/** The yield strength as one fcc and as one bcc solution: value, domain and error together. */
export function strengthParagraph({ dossier: { strength }, conditions: set }: Told): Paragraph {
  const at = (['serviceTemperature', 'strainRate', 'grainSize'] as const).map((name) => {
    const { label, unit, default: value } = conditions[name];
    return conditionInWords({ label, unit, value: set[name] ?? value });
  });
  return {
    subject: 'strength',
    heading: 'Yield strength, were it one solution',
    text: `At ${at.join(', ')}. ${lattice('fcc', strength.fcc)} ${lattice('bcc', strength.bcc)}`,
    trust:
      'Solute strengthening without a fitted constant; the fall of the moduli with temperature is left out. Errors ' +
      'are medians on published alloys of one phase. Whether the alloy is one solution strength does not tell.',
    sources: [
      'fcc: Varvenne, Luque & Curtin, Acta Mater. 118, 164 (2016), from memory',
      'bcc: Maresca & Curtin, Acta Mater. 182, 235 (2020), from memory',
    ],
  };
}

function lattice(name: string, { value, domain, error, reason }: Strength): string {
  const why = reason === null ? '' : ` ${reason}`;
  if (value === null) return `If ${name}: no value.${why}`;
  const shown = megapascal(value);
  const known = error === null ? 'error not measured' : `error ${percentInWords(error)}`;
  return domain === 'lower bound'
    ? `If ${name}: at least ${shown}, a lower bound.${why}`
    : `If ${name}: ${shown}, ${domain} the domain of the model, ${known}.${why}`;
}

/** Two digits, and no more of what is less than one: '1.3e-10 MPa' would be no strength of a metal. */
function megapascal(value: number): string {
  return `${value < 1 ? value.toFixed(0) : Number(value.toPrecision(2))} MPa`;
}
