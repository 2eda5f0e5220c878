import { createContext } from 'react';
import type { Passes } from './countPasses.ts';
import type { Sampling } from './useSample.ts';

/** The sample that limits and wishes are shown on, and what the limits leave of it. */
export interface SampleView extends Sampling {
  /** null while there is no sample */
  passes: Passes | null;
}

export const SampleContext = createContext<SampleView>({
  sample: null,
  passes: null,
  stale: false,
  error: null,
  drawMore: () => {},
});
