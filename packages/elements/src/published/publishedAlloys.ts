import type { Processing } from '../data/publishedRecords.ts';
import type { Composition } from '../percent.ts';
import { type PhaseReport, phaseReports } from './phaseReports.ts';
import { type PublishedMeasurement, publishedMeasurements } from './publishedMeasurements.ts';

/** One disordered solution, fcc or bcc; both of them; anything else, such as B2 alone or a second phase beside. */
export type PhaseClass = 'fcc' | 'bcc' | 'both' | 'other';

/** One published composition. Where publications disagree, `phases` is what most of them report and `reports` is all. */
export interface PublishedAlloy {
  /** Ratio form, as in the data set. */
  formula: string;
  /** at.% */
  composition: Composition;
  /** Symbols, alphabetical, joined by a hyphen. */
  system: string;
  /** The label that most publications report, as in 'FCC+B2'; null where none was reported. */
  phases: string | null;
  reports: readonly PhaseReport[];
  phaseClass: PhaseClass | null;
  /** Whether the label is one disordered fcc or bcc solution. As-cast bcc often hides B2. */
  singlePhase: boolean | null;
  /** How many publications, of all labels. */
  references: number;
  /** How many of them report phases. The counts of `reports` add up to more where one reports several labels. */
  reporting: number;
  /** Of the records that carry the label `phases`, as is all below. */
  processing: readonly Processing[];
  /** g/cm3, measured, median */
  density: number | null;
  /** GPa, measured, median */
  youngsModulus: number | null;
  /** HV, median */
  hardness: number | null;
  /** MPa, median at 15 to 30 °C, tension and compression together */
  yieldStrength: number | null;
  doi: readonly string[];
}

const roomTemperature = { from: 288.15, to: 303.15 }; // K

let alloys: readonly PublishedAlloy[] | undefined;

/** Every published composition once, by formula; made when it is asked for first. */
export function publishedAlloys(): readonly PublishedAlloy[] {
  alloys ??= [...Map.groupBy(publishedMeasurements(), ({ formula }) => formula).values()].map(alloyOf);
  return alloys;
}

function alloyOf(records: readonly PublishedMeasurement[]): PublishedAlloy {
  const { formula, composition } = records[0]!;
  const reports = phaseReports(records);
  const phases = reports[0]?.phases ?? null;
  const phaseClass = phases === null ? null : phaseClassOf(phases);
  const labelled = records.filter((record) => record.phases === phases);
  return {
    formula,
    composition,
    system: Object.keys(composition).join('-'),
    phases,
    reports,
    phaseClass,
    singlePhase: phaseClass === null ? null : phaseClass === 'fcc' || phaseClass === 'bcc',
    references: new Set(records.map(({ doi }) => doi)).size,
    reporting: new Set(records.flatMap(({ phases: label, doi }) => (label === null ? [] : [doi]))).size,
    processing: [...new Set(labelled.map(({ processing }) => processing))].sort(),
    density: median(labelled.map(({ density }) => density)),
    youngsModulus: median(labelled.map(({ youngsModulus }) => youngsModulus)),
    hardness: median(labelled.map(({ hardness }) => hardness)),
    yieldStrength: median(labelled.filter(atRoomTemperature).map(({ yieldStrength }) => yieldStrength)),
    doi: [...new Set(labelled.map(({ doi }) => doi))],
  };
}

/** The class of a label of phases, as in 'FCC+B2'. */
export function phaseClassOf(phases: string): PhaseClass {
  const classes: Readonly<Record<string, PhaseClass>> = { FCC: 'fcc', BCC: 'bcc', 'FCC+BCC': 'both' };
  return classes[phases] ?? 'other';
}

function atRoomTemperature({ temperature }: PublishedMeasurement): boolean {
  return temperature !== null && temperature >= roomTemperature.from && temperature <= roomTemperature.to;
}

function median(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null).sort((a, b) => a - b);
  if (known.length === 0) return null;
  const middle = known.length / 2;
  return (known[Math.ceil(middle) - 1]! + known[Math.floor(middle)]!) / 2;
}
