import { type Hazard, hazards } from './data/hazards.ts';
import { elementNumber } from './elementValue.ts';

/** Elements that boil below this leave the melts of usual alloys (1500 to 2500 K) in quantities that can be weighed. */
const VOLATILE_BELOW_K = 2400;

/**
 * The hazards of an element, with their sources: those on record, and that it is volatile when
 * molten where its boiling temperature says so. Empty where none is on record, which does not mean
 * that there is none: show `generalCaution` beside them.
 * @throws RangeError for a symbol without data
 */
export function hazardsOf(symbol: string): readonly Hazard[] {
  const boiling = elementNumber(symbol, 'boilingTemperature');
  const recorded = hazards[symbol] ?? [];
  return boiling !== null && boiling < VOLATILE_BELOW_K ? [...recorded, volatile(boiling)] : recorded;
}

function volatile(boiling: number): Hazard {
  return {
    kind: 'volatile when molten',
    text: `Boils at ${boiling} K: a hot melt loses it as vapour, which condenses and may burn in air.`,
    source: 'boiling',
  };
}
