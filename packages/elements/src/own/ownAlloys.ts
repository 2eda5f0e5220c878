import { type Fault, observablePhases, ProblemError } from '@tiegel/contract/terms';
import { formatComposition } from '../formatComposition.ts';
import { parseAlloy } from '../parseAlloy.ts';
import type { Composition } from '../percent.ts';
import { csvText } from './csvText.ts';
import { isShown, type OwnRow, type OwnTable, readOwnTable, repeatedRows, wrongValue } from './ownTable.ts';

/** An alloy that somebody brought in: from a publication, or of their own. */
export interface OwnAlloy {
  /** at.% */
  composition: Composition;
  name: string;
  /** as observed, joined by +, as in 'FCC+B2'; null: not told */
  phases: string | null;
  /** how it was made, in words; null: not told */
  process: string | null;
  /** of the publication; null: there is none */
  doi: string | null;
  note: string;
}

const columns = ['composition', 'name', 'phases', 'process', 'doi', 'note'] as const;
type Column = (typeof columns)[number];
const table: OwnTable<Column> = { columns, needed: ['composition'], numbers: [], mostRows: 5000 };
const longest = { name: 100, process: 100, note: 500 } as const;

/** Phases in the order in which labels name them, that of the published records and what people observe beside. */
const phaseOrder: readonly string[] = [...observablePhases, 'Sec.', 'Other'];

const phasesRight = `Join phases by +, each one of ${observablePhases.join(', ')}, or as the published records have them: Sec., a second phase that nobody identified, and Other.`;

/**
 * Reads alloys: CSV with the header composition, name, phases, process, doi, note in any order, all
 * but the composition may be left out. Compositions are at.% or ratios, as in CoCrFeNi or Al10Co90;
 * phases are joined by +, in any case, as σ or sigma, L1₂ or L12. At most 5000 rows.
 *
 *   composition,name,phases,process,doi,note
 *   Al20Co20Cr20Fe20Ni20,invented trial 2,BCC+B2,cast,,invented for this example
 *
 * @throws ProblemError with every fault, pointed at as /rows/3/phases (rows from 0, header not
 *   counted): import/..., alloy/..., element/..., request/wrong-value
 */
export function readOwnAlloys(text: string): OwnAlloy[] {
  const { rows, faults } = readOwnTable(text, table);
  const alloys = rows.map((row) => alloyOf(row, faults));
  faults.push(
    ...repeatedRows(rows, (_, at) => {
      const alloy = alloys[at];
      return alloy ? { key: ownAlloyKey(alloy), what: 'The same alloy, made alike, of one origin,' } : null;
    }),
  );
  if (faults.length > 0) throw new ProblemError(faults);
  return alloys.filter((alloy) => alloy !== null);
}

/** By what one alloy is told from another: composition, name, how it was made, and where it was published. */
export function ownAlloyKey({ composition, name, process, doi }: OwnAlloy): string {
  return JSON.stringify([formatComposition(composition), name, process, doi]);
}

/** The same as a file that readOwnAlloys reads. */
export function ownAlloysCsv(alloys: readonly OwnAlloy[]): string {
  return csvText(
    columns,
    alloys.map(({ composition, name, phases, process, doi, note }) => [
      formatComposition(composition),
      name,
      phases ?? '',
      process ?? '',
      doi ?? '',
      note,
    ]),
  );
}

function alloyOf(row: OwnRow<Column>, faults: Fault[]): OwnAlloy | null {
  const { of, pointer, line } = row;
  const before = faults.length;
  const composition = compositionOn(of('composition'), `${pointer}/composition`, line, faults);
  const phases = phasesIn(of('phases'));
  if (phases === undefined) {
    faults.push(wrongValue(row, 'phases', phasesRight));
  }
  if (of('doi') !== '' && !/^10\.\d{4,9}\/\S{1,150}$/.test(of('doi'))) {
    faults.push(wrongValue(row, 'doi', 'Write it from 10. on, as in 10.1000/182, or leave it empty.'));
  }
  for (const column of ['name', 'process', 'note'] as const) {
    if (isShown(of(column), longest[column])) continue;
    faults.push(wrongValue(row, column, `Write one line of at most ${longest[column]} characters.`));
  }
  if (faults.length > before || composition === null || phases === undefined) return null;
  return {
    ...{ composition, phases, name: of('name'), note: of('note') },
    process: of('process') || null,
    doi: of('doi').toLowerCase() || null,
  };
}

function compositionOn(text: string, pointer: string, line: number, faults: Fault[]): Composition | null {
  try {
    return parseAlloy(text, { pointer });
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    faults.push(...error.faults.map((one) => ({ ...one, detail: `Line ${line}: ${one.detail}` })));
    return null;
  }
}

/** A label of phases in their one order, each once; null: none, undefined: it cannot be read. */
function phasesIn(text: string): string | null | undefined {
  if (text === '') return null;
  const named = text.split('+').map((phase) => phaseMeant(phase.trim()));
  if (named.includes(undefined)) return undefined;
  return phaseOrder.filter((phase) => named.includes(phase)).join('+');
}

/** As people and the page of a melt write phases: 'fcc', 'σ', 'µ' (the letter or the sign), 'L1₂'. */
function phaseMeant(written: string): string | undefined {
  // A capital parts 'Other' of the published records from what nobody named.
  if (phaseOrder.includes(written)) return written;
  const plain = written
    .toLowerCase()
    .replace('σ', 'sigma')
    .replace(/^[µμ]$/, 'mu')
    .replace('₂', '2');
  return phaseOrder.find((phase) => phase.toLowerCase() === plain);
}
