import { useQuery } from '@tanstack/react-query';
import type { Fault, QuantityView, Size } from '@tiegel/contract';
import { useMemo, useRef } from 'react';
import { sizeQuery } from '../../server/queries.ts';
import { ServerProblem } from '../../server/request.ts';
import { type Draft, marked } from '../draft/draft.ts';
import { specificationOf, type Written } from '../draft/specificationOf.ts';
import { type PlacedFaults, placeFaults } from '../faults/placeFaults.ts';
import { useSettled } from '../useSettled.ts';

interface Asked {
  written: Written;
  /** null while it is not known */
  size: Size | null;
  /** the size is that of the question before the last change */
  stale: boolean;
  faults: PlacedFaults;
  /** counting failed for a reason that lies not in the question */
  error: unknown;
}

const noFaults: readonly Fault[] = [];

/** The specification that the draft writes, counted and checked by the server as the draft changes. */
export function useSize(draft: Draft, quantities: readonly QuantityView[]): Asked {
  const written = useMemo(() => specificationOf(draft), [draft]);
  const settled = useSettled(written);
  const begun = marked(draft, 'pool', 'require').length > 0;
  // What can be read is checked also while something else cannot: all faults at once.
  const { data, error, isPlaceholderData, isFetching } = useQuery(
    sizeQuery(settled.specification, settled.specification.elements!.pool.length > 0),
  );
  const readable = Object.keys(written.unclear).length === 0;
  const refusal = error instanceof ServerProblem && error.status < 500 ? error : null;
  // What was wrong stays until the next answer: faults that come and go at every key cannot be read.
  const told = useRef(noFaults);
  if (!isFetching) told.current = refusal?.faults ?? noFaults;
  const known = begun ? told.current : noFaults;
  const faults = useMemo(
    () => placeFaults(draft, written, known, quantities),
    [draft, written, known, quantities],
  );
  return {
    written,
    size: begun && readable && !error ? (data ?? null) : null,
    stale: settled !== written || isPlaceholderData || isFetching,
    faults,
    error: refusal ? null : error,
  };
}
