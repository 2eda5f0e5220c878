import { factsFor, symbols } from '@tiegel/elements';
import { type PublishedMeasurement, publishedMeasurements } from '@tiegel/elements/publishedAlloys';
import { type Strength, strengthOf } from '@tiegel/screening';
import { rankCorrelation } from './rankCorrelation.ts';

/** Computed yield strengths beside published ones of alloys that were reported as one phase. */
export interface StrengthComparison {
  id: string;
  /** Which alloys and measurements, in words. */
  what: string;
  /** K, of the tests, inclusive */
  from: number;
  to: number;
  /** compositions, each once at a temperature (and grain size, where it enters) */
  n: number;
  /** median of |computed/measured − 1| */
  medianError: number;
  /** Spearman's */
  rankCorrelation: number;
  /** share of computed values from two thirds to one and a half times the measured one */
  withinFactor: number;
  /** computed over measured: the middle of them, and the farthest from 1 */
  medianRatio: number;
  farthestRatio: number;
}

interface Group {
  id: string;
  what: string;
  lattice: 'fcc' | 'bcc';
  domains: readonly Strength['domain'][];
  withGrains: boolean;
  from: number;
  to: number;
}

const room = { from: 288.15, to: 303.15 };
const warm = { from: 673.15, to: 1073.15 };
/** above 800 °C, to the hottest test there is */
const hot = { from: 1073.16, to: 2000 };
const bcc = { lattice: 'bcc', withGrains: false } as const;
const inside = {
  ...bcc,
  what: 'bcc of refractory metals, volume misfit 8 to 16 %',
  domains: ['inside'],
} as const;
const fcc = { lattice: 'fcc', domains: ['inside', 'outside'], ...room } as const;

const groups: readonly Group[] = [
  { ...inside, ...room, id: 'bccInside' },
  { ...inside, ...warm, id: 'bccInsideWarm' },
  { ...inside, ...hot, id: 'bccInsideHot' },
  {
    ...bcc,
    ...room,
    id: 'bccOutside',
    domains: ['outside'],
    what: 'bcc with other elements, or of larger misfit',
  },
  {
    ...bcc,
    ...room,
    id: 'bccLowerBound',
    domains: ['lower bound'],
    what: 'bcc of refractory metals, misfit below 8 %',
  },
  { ...fcc, id: 'fccLattice', withGrains: false, what: 'fcc, lattice friction taken for the yield strength' },
  {
    ...{ ...fcc, id: 'fccFamilyLattice', withGrains: false, domains: ['inside'] },
    what: 'fcc of Co, Cr, Fe, Mn, Ni alone, by lattice friction',
  },
  {
    ...{ ...fcc, id: 'fccOthersLattice', withGrains: false, domains: ['outside'] },
    what: 'fcc with other elements, by lattice friction',
  },
  { ...fcc, id: 'fccWithGrains', withGrains: true, what: 'fcc with its grain size' },
  {
    ...{ ...fcc, id: 'fccFamilyWithGrains', withGrains: true, domains: ['inside'] },
    what: 'fcc of Co, Cr, Fe, Mn, Ni alone with its grain size',
  },
];

const facts = factsFor(symbols);

/** Compares the strength formulas with the published measurements. */
export function compareStrengths(): StrengthComparison[] {
  return groups.map((group) => {
    const { id, what, from, to } = group;
    const cases = casesOf(group);
    const ratios = cases.map(({ computed, measured }) => computed / measured);
    return {
      ...{ id, what, from, to, n: cases.length },
      medianError: median(ratios.map((ratio) => Math.abs(ratio - 1))),
      rankCorrelation: rankCorrelation(
        cases.map(({ computed }) => computed),
        cases.map(({ measured }) => measured),
      ),
      withinFactor: ratios.filter((ratio) => ratio > 1 / 1.5 && ratio < 1.5).length / ratios.length,
      medianRatio: median(ratios),
      farthestRatio: ratios.reduce((a, b) => (Math.abs(Math.log(b)) > Math.abs(Math.log(a)) ? b : a)),
    };
  });
}

interface Case {
  computed: number;
  measured: number;
}

/** One case for each composition, temperature and grain size: the median of what was measured of it. */
function casesOf({ lattice, domains, withGrains, from, to }: Group): Case[] {
  const wanted = publishedMeasurements().filter(
    ({ phases, temperature, yieldStrength, grainSize }) =>
      phases === lattice.toUpperCase() &&
      yieldStrength !== null &&
      temperature !== null &&
      temperature >= from &&
      temperature <= to &&
      (grainSize !== null || !withGrains),
  );
  const key = ({ formula, temperature, grainSize }: PublishedMeasurement) =>
    [formula, temperature, withGrains ? grainSize : ''].join(' ');
  return [...Map.groupBy(wanted, key).values()].flatMap((records) => {
    const { composition, temperature, grainSize } = records[0]!;
    const conditions = {
      serviceTemperature: temperature!,
      ...(withGrains ? { grainSize: grainSize! } : {}),
    };
    const { value, domain } = strengthOf(composition, facts, conditions)[lattice];
    if (value === null || !domains.includes(domain)) return [];
    return [{ computed: value, measured: median(records.map(({ yieldStrength }) => yieldStrength!)) }];
  });
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length / 2;
  return (sorted[Math.ceil(middle) - 1]! + sorted[Math.floor(middle)]!) / 2;
}
