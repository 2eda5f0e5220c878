import { decimalsBeside } from '@tiegel/contract/terms';
import type { PhaseClass } from '@tiegel/elements/publishedAlloys';
import { type Compounds, isElement, MODEL_ERROR } from '../compounds/compounds.ts';
import { numberInWords } from '../inWords.ts';
import type { Paragraph, Told } from './paragraph.ts';
import { type ReportedClasses, reportedClasses } from './reportedClasses.ts';

/** An estimate on the other side of a half than the share of publications disagrees with them, and so does one this far from it. */
const FAR = 0.4;

const classes: readonly PhaseClass[] = ['fcc', 'bcc', 'both', 'other'];
const named: Readonly<Record<PhaseClass, string>> = {
  fcc: 'one fcc solution',
  bcc: 'one bcc solution',
  both: 'fcc beside bcc',
  other: 'something else',
};

/** Where the models say otherwise than the publications on this very alloy; null where nobody published it. */
export function disagreementParagraph(told: Told): Paragraph | null {
  const reported = reportedClasses(told.dossier.nearest);
  if (reported === null) return null;
  const found = [
    estimateAgainst(told, reported),
    latticeAgainst(told, reported),
    ...modelsAgainst(told, reported),
  ];
  const said = found.filter((one) => one !== null);
  return {
    subject: 'disagreement',
    heading: 'Models against what is published',
    text:
      said.length === 0
        ? 'Neither the estimate nor the models of order and compounds contradict what is published of this alloy.'
        : said.join(' '),
    trust: null,
    sources: [],
  };
}

function estimateAgainst({ dossier: { phase } }: Told, { reports, oneSolution }: ReportedClasses) {
  if (phase.singleSolution === null) return null;
  const share = oneSolution / reports;
  // Half of the reports are on neither side.
  const otherSide = share !== 0.5 && phase.singleSolution >= 0.5 !== share > 0.5;
  if (!otherSide && Math.abs(phase.singleSolution - share) < FAR) return null;
  return (
    `The estimate disagrees: it gives one disordered solution ${numberInWords(phase.singleSolution, 2)}, but ` +
    `${ofOne(oneSolution, reports)}.`
  );
}

function latticeAgainst({ dossier: { phase } }: Told, reported: ReportedClasses): string | null {
  const [likeliest] = classes.toSorted((a, b) => (phase[b] ?? 0) - (phase[a] ?? 0));
  const [published] = classes.toSorted((a, b) => reported.classes[b] - reported.classes[a]);
  if (phase.singleSolution === null || likeliest === published) return null;
  // Where reports differ so that none has most of them, the estimate contradicts none.
  if (reported.classes[published!] * 2 <= reported.reports) return null;
  return (
    `The likeliest class of the estimate is ${named[likeliest!]} (${numberInWords(phase[likeliest!]!, 2)}), ` +
    `most reports are of ${named[published!]} (${reported.classes[published!]} of ${reported.reports}).`
  );
}

function modelsAgainst({ dossier }: Told, { reports, oneSolution }: ReportedClasses): (string | null)[] {
  const { compounds, ordering, demixing } = dossier;
  // Where both halves are as large, most report neither.
  const [mostlyOne, mostlyNot] = [oneSolution > reports / 2, oneSolution < reports / 2];
  const distance = compounds?.hullDistance ?? 0;
  const size = numberInWords(Math.abs(distance), decimalsBeside(Math.abs(distance), MODEL_ERROR, 0));
  return [
    mostlyOne && distance > MODEL_ERROR
      ? `Miedema’s model expects ${rivalsIn(compounds)} (${size} kJ/mol below the solution) where most report one solution.`
      : null,
    mostlyNot && distance < -MODEL_ERROR
      ? `Miedema’s model lets the solution stay (by ${size} kJ/mol) where most report something else than one disordered solution.`
      : null,
    mostlyOne && (ordering?.ratioToMelting ?? 0) > 1
      ? 'The mean-field model orders it up to its melting, where most report one disordered solution: labels of diffraction seldom tell weak order, and mean fields order too high.'
      : null,
    mostlyOne && (demixing?.ratioToMelting ?? 0) > 1
      ? 'The regular solution demixes up to its melting, where most report one solution: one more case in which demixing predicts nothing.'
      : null,
  ];
}

function rivalsIn(compounds: Compounds | null): string {
  return compounds?.competing.every(({ formula }) => isElement(formula)) ? 'the elements apart' : 'compounds';
}

function ofOne(oneSolution: number, reports: number): string {
  if (reports === 1) return `the one report is of ${oneSolution === 1 ? 'one' : 'something else'}`;
  return `${oneSolution} of ${reports} reports are of one`;
}
