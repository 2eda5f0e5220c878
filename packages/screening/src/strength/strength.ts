/** A yield strength with how far to trust it; they belong together wherever one is shown. */
export interface Strength {
  /** MPa; null: no value, and `reason` says why */
  value: number | null;
  /** Whether the alloy is of the kind that the model was tested on; a lower bound where other dislocations decide. */
  domain: 'inside' | 'outside' | 'lower bound';
  /** Median relative error to expect, 0.09 for 9 %; null where nobody measured it */
  error: number | null;
  /** Why there is no value, or what limits it; whole sentences. null: nothing to say */
  reason: string | null;
}
