import type { Candidate } from '@tiegel/contract';
import type { ExportHead } from '../searches.ts';
import type { Provenance } from './provenance.ts';

/** What every format is written from. `rows` is read once and no further ahead than the reader takes. */
export interface Export {
  head: ExportHead;
  about: Provenance;
  rows: Iterable<Candidate>;
}
