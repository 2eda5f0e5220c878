import { ownPairSources } from '@tiegel/elements';
import type { AlloyState } from '../state/alloyState.ts';

/** Where pair values of one's own are from that the alloy is worked out with; nothing without one. */
export function OwnPairSources({ alloy: { symbols, ownPairs } }: { alloy: AlloyState }) {
  const told = ownPairSources(symbols, ownPairs);
  if (told.length === 0) return null;
  return (
    <ul className="quiet small own-pairs">
      {told.map((one) => (
        <li key={one}>{one}</li>
      ))}
    </ul>
  );
}
