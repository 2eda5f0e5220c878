import { numberInWords } from '../inWords.ts';
import { type CriterionRecord, criterionRecords } from '../records/criterionRecords.ts';
import type { Paragraph, Told } from './paragraph.ts';
import { sourceInWords } from './sourceInWords.ts';

/** Which published rules the alloy meets, each with its record on the published alloys. */
export function ruleParagraph({ dossier: { criteria } }: Told): Paragraph {
  const records = criterionRecords();
  const having = (verdict: boolean | null) => records.filter(({ id }) => criteria[id] === verdict);
  const silent = having(null).map(({ name }) => name);
  const sentences = [
    listed('It meets', having(true)),
    listed('It fails', having(false)),
    silent.length === 0
      ? ''
      : `Silent, for want of a value or because they speak of other alloys: ${silent.join(', ')}.`,
  ];
  return {
    subject: 'rules',
    heading: 'Published rules',
    text: sentences.filter((sentence) => sentence !== '').join(' '),
    trust:
      'In brackets: what the rule predicts, and its balanced accuracy on the published alloys with the interval of ' +
      '95 % from resampling whole systems; a coin has 0.50. Passing every rule proves little: published alloys ' +
      'are those that people thought worth melting, most inside the windows already.',
    sources: records.map(({ name, source }) => `${name}: ${sourceInWords(source)}`),
  };
}

function listed(verb: string, records: readonly CriterionRecord[]): string {
  return records.length === 0 ? '' : `${verb} ${records.map(told).join('; ')}.`;
}

function told({ name, formula, positiveClass, balancedAccuracy, interval }: CriterionRecord): string {
  const record =
    balancedAccuracy === null || interval === null
      ? 'not testable here'
      : `${numberInWords(balancedAccuracy, 2)}, ${interval.map((end) => numberInWords(end, 2)).join(' to ')}`;
  return `${name}, ${formula} (${positiveClass}: ${record})`;
}
