import { numberInWords } from '../inWords.ts';
import { type CriterionRecord, criterionRecords } from '../records/criterionRecords.ts';
import type { Paragraph, Told } from './paragraph.ts';
import { sourceInWords } from './sourceInWords.ts';

/** Which published rules the alloy meets, each with its record on the published alloys. */
export function ruleParagraph({ dossier: { criteria }, pairSources }: Told): Paragraph {
  const records = criterionRecords();
  const silent = records.filter(({ id }) => criteria[id] === null).map(({ name }) => name);
  const spoken = records.filter(({ id }) => criteria[id] !== null);
  const sentences = [
    onOneSolution(
      spoken.filter(({ predicts }) => predicts === 'one solution'),
      criteria,
    ),
    ...spoken
      .filter(({ predicts }) => predicts !== 'one solution')
      .map((record) => `${verdictOn(record, criteria[record.id] === true)}${recordOf(record)}.`),
    silent.length === 0
      ? ''
      : `Silent, for want of a value or because they speak of other alloys: ${silent.join(', ')}.`,
  ];
  return {
    subject: 'rules',
    heading: 'Published rules',
    text: sentences.filter((sentence) => sentence !== '').join(' '),
    trust:
      'In brackets the balanced accuracy of the rule on the published alloys, with the interval of 95 % from ' +
      'resampling whole systems; a coin has 0.50. Passing every rule proves little: published alloys are those ' +
      'that people thought worth melting, most inside the windows already.',
    sources: [
      ...records.map(({ name, formula, source }) => `${name}: ${formula}; ${sourceInWords(source)}`),
      ...pairSources.own,
    ],
  };
}

/** Most rules claim the same; told together, nobody takes their number for weight. */
function onOneSolution(records: readonly CriterionRecord[], verdicts: Told['dossier']['criteria']): string {
  const [met, failed] = [true, false].map((verdict) => records.filter(({ id }) => verdicts[id] === verdict));
  if (records.length === 0) return '';
  const named = (some: readonly CriterionRecord[]) =>
    some.map((one) => `${one.name}${recordOf(one)}`).join(', ');
  return [
    `Of ${records.length} rules for one disordered fcc or bcc solution it meets ${met!.length}`,
    met!.length > 0 ? `: ${named(met!)}` : '',
    failed!.length > 0 ? `; it fails ${named(failed!)}.` : '.',
  ].join('');
}

/** A rule that predicts a second phase is told by what it expects: to fail it is good news, and reads as bad. */
function verdictOn({ name, positiveClass, predictsSecondPhase }: CriterionRecord, met: boolean): string {
  if (predictsSecondPhase) return `${name} ${met ? 'expects' : 'does not expect'} ${positiveClass}`;
  return `${met ? 'Meets' : 'Fails'} ${name}: ${positiveClass}`;
}

function recordOf({ balancedAccuracy, interval }: CriterionRecord): string {
  if (balancedAccuracy === null || interval === null) return ' (not testable here)';
  return ` (${numberInWords(balancedAccuracy, 2)}; ${interval.map((end) => numberInWords(end, 2)).join('–')})`;
}
