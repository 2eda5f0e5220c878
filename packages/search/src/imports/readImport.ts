import { type Fault, ProblemError } from '@tiegel/contract/terms';
import { csvLine, separatorOf, tableRows } from '@tiegel/elements';
import type { Entry, ImportKindOf } from './importKind.ts';

/** A row of a file with what it says, or what is wrong with it; one that says nothing without a fault of its own stands in a file that cannot be read. */
interface ReadRow {
  /** from 1 */
  line: number;
  text: string;
  entry: Entry | null;
  faults: Fault[];
}

/** A file of one's own, row by row. `data` only where nothing is wrong; `faults` are those of the file as a whole. */
export interface ReadImport<Data> {
  rows: ReadRow[];
  faults: Fault[];
  /** what it takes the place of, as far as it can be read */
  subject: string;
  data: Data | null;
}

const longestShown = 300;

/**
 * Reads a file so that each row stands for itself: where some are wrong, each of the others is read
 * once more alone, and so says what it says in the whole file.
 */
export function readImport<Data>(kind: ImportKindOf<Data>, text: string): ReadImport<Data> {
  const { data, faults } = attempt(() => kind.read(text));
  if (faults.some(({ code }) => code.endsWith('/too-large')))
    return { rows: [], faults: [...faults], subject: '', data: null };
  const separator = separatorOf(text);
  // No column is told to hold numbers: rows are shown, and read alone, as they were written.
  const [head, ...body] = tableRows(text, []).rows;
  const rows = body.map(
    ({ line, fields }): ReadRow => ({ line, text: cut(csvLine(fields, separator)), entry: null, faults: [] }),
  );
  const ofFile = faults.filter((one) => {
    const row = rows[rowOf(one)];
    row?.faults.push(one);
    return row === undefined;
  });
  let subject = data === null ? '' : kind.subject(data);
  if (data !== null) {
    for (const [at, entry] of kind.entries(data).entries()) rows[at]!.entry = entry;
  } else if (ofFile.length === 0) {
    for (const [at, row] of rows.entries()) if (row.faults.length === 0) readAlone(at);
  }
  return { rows, faults: ofFile, subject, data };

  function readAlone(at: number): void {
    const { fields } = head!;
    const alone = kind.alone(fields, body[at]!.fields, body[0]!.fields);
    // Stated, for a header with another sign in it would not tell.
    const text = `sep=${separator}\n${csvLine(fields, separator)}\n${csvLine(alone, separator)}\n`;
    const one = attempt(() => kind.read(text));
    if (one.data !== null) {
      rows[at]!.entry = kind.entries(one.data)[0]!;
      subject = kind.subject(one.data);
      return;
    }
    // What the first row says for all is wrong: that is why this one cannot be read.
    rows[at]!.faults.push(...rows[0]!.faults);
  }
}

function attempt<Data>(read: () => Data): { data: Data | null; faults: readonly Fault[] } {
  try {
    return { data: read(), faults: [] };
  } catch (error) {
    if (error instanceof ProblemError) return { data: null, faults: error.faults };
    throw error;
  }
}

/** The place of the row that a fault speaks of, -1 for the file as a whole. */
const rowOf = ({ pointer }: Fault): number => Number(/^\/rows\/(\d+)(?:\/|$)/.exec(pointer)?.[1] ?? -1);

const cut = (text: string) => (text.length > longestShown ? `${text.slice(0, longestShown)}…` : text);
