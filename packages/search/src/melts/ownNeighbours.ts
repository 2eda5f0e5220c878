import type { OwnNeighbourAlloy } from '@tiegel/insight';
import type { Imports } from '../imports/imports.ts';
import type { Melts } from './openMelts.ts';

/** All alloys of a laboratory's own that may stand among the neighbours of another: its melts, and what it brought in. */
export function ownNeighbours(
  melts: Pick<Melts, 'list'>,
  imports: Pick<Imports, 'alloys'>,
): OwnNeighbourAlloy[] {
  const melted = melts.list().map(({ id, name, composition, label, methods }) => ({
    ...{ name, composition, phases: label, doi: null, import: null, melt: id, methods },
  }));
  return [...melted, ...imports.alloys()];
}
