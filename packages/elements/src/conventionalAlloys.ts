import { nominalAlloys, nominalSource } from './data/conventionalAlloys.ts';
import type { SourceCode } from './data/sources.ts';
import { type Composition, weightToAtomicPercent } from './percent.ts';

/** An alloy in daily use, to compare with; designation and nominal composition from memory. */
export interface ConventionalAlloy {
  name: string;
  /** Unified numbering system, and the European number where one is known. */
  designation: string;
  /** wt.%, the balance included */
  weightPercent: Readonly<Record<string, number>>;
  /** at.% */
  composition: Composition;
  source: SourceCode;
}

/** Steels, light alloys, brass, superalloys ...; see data/conventionalAlloys.ts for how a nominal composition was formed. */
export const conventionalAlloys: readonly ConventionalAlloy[] = nominalAlloys.map(
  ({ name, designation, base, weightPercent }) => {
    const named = Object.values(weightPercent).reduce((sum, percent) => sum + percent, 0);
    const whole = { ...weightPercent, [base]: 100 - named };
    return {
      name,
      designation,
      weightPercent: whole,
      composition: weightToAtomicPercent(whole),
      source: nominalSource,
    };
  },
);
