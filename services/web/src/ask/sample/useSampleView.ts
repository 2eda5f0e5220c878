import type { QuantityView } from '@tiegel/contract';
import { useMemo } from 'react';
import type { Draft } from '../draft/draft.ts';
import type { RequestedSpecification } from '../draft/specificationOf.ts';
import { countPasses } from './countPasses.ts';
import type { SampleView } from './sampleContext.ts';
import { triedLimit } from './triedLimit.ts';
import { useSample } from './useSample.ts';

/** The sample of the space, and what the limits leave of it: counted anew with every change of a limit. */
export function useSampleView(
  draft: Draft,
  specification: RequestedSpecification,
  quantities: readonly QuantityView[],
): SampleView {
  const sampling = useSample(draft, specification, quantities);
  const { sample } = sampling;
  const passes = useMemo(
    () => (sample ? countPasses(sample, draft.limits.map(triedLimit)) : null),
    [sample, draft.limits],
  );
  return { ...sampling, passes };
}
