import { conditionValue } from '@tiegel/screening';
import { elementsInWords, kelvinInWords, setKelvinInWords } from '../inWords.ts';
import type { Paragraph, Told } from './paragraph.ts';

/** Metals whose oxides melt low or evaporate. */
const volatileOxides = ['Mo', 'W', 'Re', 'V', 'Os', 'Ru'];
/** Below it a bcc alloy may be brittle, K. */
const BRITTLE_BELOW_K = 293;

/** What nothing here knows, and what of it matters for this alloy. */
export function limitParagraph({
  composition,
  conditions,
  quantities,
  dossier: { strength, phase },
}: Told): Paragraph {
  const oxides = volatileOxides.filter((symbol) => (composition[symbol] ?? 0) > 0);
  const sentences = [
    'Not computed: solidus and liquidus, stacking-fault energy, the ductile–brittle transition, creep, corrosion, ' +
      'magnetism, interstitials, and oxidation beyond the share of oxide formers.',
    oxides.length === 0 ? '' : `Oxides of ${elementsInWords(oxides)} melt low or evaporate in hot air.`,
    strength.temperature < BRITTLE_BELOW_K && (phase.bcc ?? 1) > (phase.fcc ?? 0)
      ? 'A bcc alloy may be brittle at so low a service temperature.'
      : '',
    moltenAtAnneal(conditionValue('annealTemperature', conditions), quantities.meltingTemperature ?? null),
    'Thresholds on size mismatch and electronegativity hold for the data set that they were found with.',
  ];
  return {
    subject: 'limits',
    heading: 'What is weak',
    text: sentences.filter((sentence) => sentence !== '').join(' '),
    trust: null,
    sources: [],
  };
}

/** The default anneal melts light alloys; what is told at it is then of no solid. */
function moltenAtAnneal(anneal: number, melting: number | null): string {
  if (melting === null || anneal < melting) return '';
  return (
    `At the anneal temperature of ${setKelvinInWords(anneal)} it would be molten (mean melting temperature ` +
    `${kelvinInWords(melting, anneal)}): what is told at it, of compounds and neighbours, is of no solid.`
  );
}
