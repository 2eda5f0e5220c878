import type { Evidence } from '@tiegel/contract';

type Bin = Evidence['phaseEstimate']['reliability'][number];
type FilledBin = Bin & { said: number; happened: number };

/** The bins that hold alloys: of the others there is nothing to draw, and 0 would be a claim. */
export function filledBins(bins: readonly Bin[]): FilledBin[] {
  return bins.filter((bin): bin is FilledBin => bin.said !== null && bin.happened !== null);
}
