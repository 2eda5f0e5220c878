import {
  type Processing,
  publishedRecords,
  publishedReferences,
  type RecordRow,
} from '../data/publishedRecords.ts';
import { parseAlloy } from '../parseAlloy.ts';
import type { Composition } from '../percent.ts';

/** One record of a publication: a sample, how it was made, what was seen and measured. null: not reported. */
export interface PublishedMeasurement {
  /** Ratio form, as in the data set; the same for every record of one alloy. */
  formula: string;
  /** at.% */
  composition: Composition;
  processing: Processing;
  /** Phases joined by +, as in 'FCC+B2+Sec.'; see data/publishedRecords.ts. */
  phases: string | null;
  test: 'tension' | 'compression' | null;
  /** K, of the mechanical test */
  temperature: number | null;
  /** MPa */
  yieldStrength: number | null;
  /** Greatest stress, MPa */
  ultimateStrength: number | null;
  /** % */
  elongation: number | null;
  /** µm */
  grainSize: number | null;
  /** HV */
  hardness: number | null;
  /** g/cm3 */
  density: number | null;
  /** GPa */
  youngsModulus: number | null;
  doi: string;
  year: number;
}

const zeroCelsius = 273.15;

let measurements: readonly PublishedMeasurement[] | undefined;

/** Every record, by formula; made when it is asked for first, since most of what is read with it never asks. */
export function publishedMeasurements(): readonly PublishedMeasurement[] {
  measurements ??= publishedRecords.flatMap(([formula, records]) => {
    const composition = parseAlloy(formula);
    return records.map((record) => measurement(formula, composition, record));
  });
  return measurements;
}

function measurement(
  formula: string,
  composition: Composition,
  [processing, phases, reference, values = {}]: RecordRow,
): PublishedMeasurement {
  const [doi, year] = publishedReferences[reference]!;
  return {
    formula,
    composition,
    processing,
    phases: phases === '' ? null : phases,
    test: values.test ?? null,
    temperature: values.celsius === undefined ? null : values.celsius + zeroCelsius,
    yieldStrength: values.yields ?? null,
    ultimateStrength: values.strength ?? null,
    elongation: values.elongation ?? null,
    grainSize: values.grain ?? null,
    hardness: values.hardness ?? null,
    density: values.density ?? null,
    youngsModulus: values.youngs ?? null,
    doi,
    year,
  };
}
