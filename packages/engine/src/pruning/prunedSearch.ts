import type { KeptPoints } from '../outcome/keptPoints.ts';
import type { ScoreOptions } from '../scoring.ts';
import type { PointLook } from './cutting/pointLook.ts';
import type { PruningParts } from './pruningParts.ts';

/** What the search of a chunk works with. */
export interface PrunedSearch extends Omit<PruningParts, 'look' | 'numberings'> {
  look: PointLook;
  kept: KeptPoints;
  counting: boolean;
  options: ScoreOptions;
  /** a box of so many points is gone through rather than halved */
  mostToSweep: number;
}
