import { Readable } from 'node:stream';
import type { SearchView, SystemView } from '@tiegel/contract';
import type { SystemsFormat } from '@tiegel/contract/terms';
import { formatComposition } from '@tiegel/elements';
import { stringify } from 'csv-stringify/sync';
import { type SystemsQuery, systemsAsked, systemView } from '../candidates/systemsAsked.ts';
import type { Alloys, SystemKnown } from '../candidates/systemsExplored.ts';
import type { ExportHead, Searches } from '../searches.ts';
import { headOf, quantityColumns } from './exportColumns.ts';
import { inBatches } from './inBatches.ts';
import { inTurns } from './inTurns.ts';
import { type Provenance, provenance, provenanceTexts } from './provenance.ts';

const rowsAtOnce = 100;

/**
 * The systems of the kept candidates as a file, each with its best and what is known of it, in the order of the best;
 * the file says all that its rows depend on, and `selection` whether only the explored or the others are here.
 * @throws ProblemError those of systemsAsked
 */
export async function systemsFile(
  searches: Pick<Searches, 'view' | 'keptSystems' | 'candidateAt' | 'export'>,
  { format, ...asked }: SystemsQuery & { format: SystemsFormat },
  laboratory: { melts: Alloys; own: Alloys },
): Promise<{ search: SearchView; file: Readable }> {
  const { id, query, explored } = asked;
  const { systems } = await systemsAsked(searches, asked, laboratory);
  // Its rows are those of candidates, and not read.
  const { head } = searches.export(id, query);
  const of = provenance(head, query);
  const selection = { ...of.selection, ...(explored === undefined ? {} : { explored }) };
  const about = { rows: 'systems', ...of, selection };
  const text = writers[format](head, about, told(searches, id, systems));
  return { search: head.search, file: Readable.from(inTurns(text), { objectMode: false }) };
}

/** Each when its row is written: a hundred thousand of them are not held. */
function* told(
  searches: Pick<Searches, 'candidateAt'>,
  id: string,
  systems: readonly SystemKnown[],
): Generator<SystemView> {
  for (const one of systems) yield systemView(searches, id, one);
}

type Writer = (head: ExportHead, about: Provenance, rows: Iterable<SystemView>) => Generator<string>;

const writers: Record<SystemsFormat, Writer> = { csv: systemsCsv, ndjson: systemsNdjson };

/** As CSV (RFC 4180): numbers in full double precision with a decimal point, an empty field where there is no value. */
function* systemsCsv(head: ExportHead, about: Provenance, rows: Iterable<SystemView>): Generator<string> {
  yield provenanceTexts(about)
    .map(([key, text]) => `# ${key}: ${text}\n`)
    .join('');
  const quantities = quantityColumns(head);
  yield stringify([
    [
      ...['place', 'system', 'kept', 'best rank', 'best composition (at.%)'],
      ...quantities.map(headOf),
      ...['published alloys', 'published phases', 'melts recorded here', 'own alloys'],
    ],
  ]);
  let place = 0;
  for (const batch of inBatches(rows, rowsAtOnce)) {
    yield stringify(
      batch.map(({ system, kept, best, published, melts, own }) => [
        ...[++place, system, kept, best.rank, formatComposition(best.composition)],
        ...quantities.map(({ value }) => value(best)),
        published?.alloys ?? 0,
        (published?.phases ?? [])
          .map(({ phases, alloys }) => `${phases ?? 'not reported'} ${alloys}`)
          .join('; '),
        ...[melts, own],
      ]),
    );
  }
}

/** As lines of JSON: first { export: provenance }, then a system a line, as the pages of systems have it. */
function* systemsNdjson(_: ExportHead, about: Provenance, rows: Iterable<SystemView>): Generator<string> {
  yield `${JSON.stringify({ export: about })}\n`;
  for (const batch of inBatches(rows, rowsAtOnce))
    yield batch.map((one) => `${JSON.stringify(one)}\n`).join('');
}
