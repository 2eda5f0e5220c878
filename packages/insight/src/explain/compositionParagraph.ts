import { printedUnit } from '@tiegel/contract/terms';
import { formatComposition } from '@tiegel/elements';
import { columnsOf, GAS_CONSTANT_J_PER_MOL_K, type Quantity, quantityById } from '@tiegel/screening';
import { numberInWords } from '../inWords.ts';
import { entropyScale } from '../neighbours/entropyScale.ts';
import type { Paragraph, Told } from './paragraph.ts';
import { quantityInWords } from './quantityInWords.ts';
import { sourceInWords } from './sourceInWords.ts';

const shown = [
  'mixingEnthalpy',
  'sizeMismatch',
  'valenceElectronConcentration',
  'meltingTemperature',
  'density',
];

/** What the alloy is, by its plainest numbers, and where its entropy stands among alloys in daily use. */
export function compositionParagraph({ composition, quantities, pairSources }: Told): Paragraph {
  const entropy = quantities.configurationalEntropy ?? null;
  const numbers = shown.map((id) => quantityInWords(id, quantities[id])).filter((one) => one !== null);
  const missing = shown.filter((id) => (quantities[id] ?? null) === null);
  const sentences = [
    `${formatComposition(composition)} (at.%).`,
    entropy === null ? '' : entropyInWords(entropy, quantities.effectiveElements ?? null, composition),
    `By formula: ${numbers.join(', ')}.`,
    missing.length === 0
      ? ''
      : `Without a value for want of data: ${missing.map((id) => quantityById(id).name.toLowerCase()).join(', ')}.`,
  ];
  return {
    subject: 'composition',
    heading: 'The alloy',
    text: sentences.filter((sentence) => sentence !== '').join(' '),
    trust:
      'Means over the elements as they are: the melting temperature is no liquidus, the density that of unmixed ' +
      'volumes. Pair enthalpies are whole kJ/mol, so half a kJ/mol of mixing enthalpy is noise.',
    sources: shown
      .filter((id) => !missing.includes(id))
      .flatMap((id) => {
        const quantity = quantityById(id);
        const own = readsPairs(quantity) ? pairSources.own : [];
        return [`${quantity.symbol}: ${sourceInWords(quantity.source)}`, ...own];
      }),
  };
}

const readsPairs = (quantity: Quantity): boolean => columnsOf(quantity).pairs.length > 0;

function entropyInWords(entropy: number, elements: number | null, composition: Told['composition']): string {
  const unit = printedUnit(quantityById('configurationalEntropy').unit);
  const inR = numberInWords(entropy / GAS_CONSTANT_J_PER_MOL_K, 2);
  const alike = elements === null ? '' : `, that of ${numberInWords(elements, 1)} elements in equal shares`;
  return `Its configurational entropy is ${numberInWords(entropy, 1)} ${unit}, ${inR} R${alike}${besides(composition)}.`;
}

/** The conventional alloy next below it on the scale. */
function besides(composition: Told['composition']): string {
  const scale = entropyScale(composition);
  const place = scale.findIndex(({ name }) => name === null);
  const below = scale[place - 1];
  return below === undefined ? '' : `; ${below.name} has ${numberInWords(below.entropy, 1)}`;
}
