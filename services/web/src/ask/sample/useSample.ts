import { useQuery } from '@tanstack/react-query';
import type { QuantityView } from '@tiegel/contract';
import { useMemo, useRef, useState } from 'react';
import { distributionsQuery } from '../../server/queries.ts';
import type { Draft } from '../draft/draft.ts';
import type { RequestedSpecification } from '../draft/specificationOf.ts';
import { useSettled } from '../useSettled.ts';
import { type Sample, sampleOf } from './sample.ts';

/** Compositions drawn at first, and those that can be asked for where rare ones matter. */
const usual = 4000;
export const largest = 20_000;

export interface Sampling {
  /** null while there is none */
  sample: Sample | null;
  /** the sample is that of the space before the last change */
  stale: boolean;
  /** why there is none, where it lies not in the question; null otherwise */
  error: unknown;
  /** draws as many as can be */
  drawMore: () => void;
}

/**
 * A sample of the space that the draft describes, with the values of every quantity that it limits
 * or ranks by. It does not depend on the limits: they are tried on it here, at once.
 * @param quantities those that can be asked for
 */
export function useSample(
  draft: Draft,
  specification: RequestedSpecification,
  quantities: readonly QuantityView[],
): Sampling {
  const [size, setSize] = useState(usual);
  // An expression that cannot be read would refuse the whole question.
  const lets = Object.fromEntries(
    Object.entries(specification.lets ?? {}).filter(([name]) => quantities.some(({ id }) => id === name)),
  );
  const ids = [...draft.limits, ...draft.rank, ...draft.front].map(({ quantity }) => quantity);
  const known = new Set(quantities.map(({ id }) => id));
  const { elements, components, fractions, conditions } = specification;
  const named = [...new Set(ids)].filter((id) => known.has(id)).sort();
  const question = JSON.stringify({
    specification: { elements, components, fractions, lets, conditions },
    quantities: named,
    sample: size,
  });
  const settled = useSettled(question);
  const { data, error, isFetching, isPlaceholderData } = useQuery(
    distributionsQuery(settled, elements!.pool.length > 0 && named.length > 0),
  );
  const drawn = useMemo(() => (data ? sampleOf(data) : null), [data]);
  // While the space cannot be drawn from, the last sample stays, dimmed: distributions that come and go jump.
  const last = useRef<Sample | null>(null);
  if (drawn) last.current = drawn;
  const empty = elements!.pool.length === 0;
  return {
    sample: empty ? null : (drawn ?? last.current),
    stale: settled !== question || isFetching || isPlaceholderData || error !== null,
    error,
    drawMore: () => setSize(largest),
  };
}
