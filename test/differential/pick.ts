import { randomFrom } from '../fixtures/randomFrom.ts';

/** Choices at random, the same for the same seed. */
export interface Pick {
  /** A whole number between two, both included. */
  whole(least: number, most: number): number;
  /** A number between two. */
  between(least: number, most: number): number;
  chance(share: number): boolean;
  one<Value>(of: readonly Value[]): Value;
  /** So many different ones, in any order; all of them where there are no more. */
  some<Value>(of: readonly Value[], count: number): Value[];
}

export function pickFrom(seed: number): Pick {
  const random = randomFrom(seed);
  const whole = (least: number, most: number) => least + Math.floor(random() * (most - least + 1));
  return {
    whole,
    between: (least, most) => least + random() * (most - least),
    chance: (share) => random() < share,
    one: (of) => of[whole(0, of.length - 1)]!,
    some(of, count) {
      const left = [...of];
      return Array.from({ length: Math.min(count, left.length) }, () =>
        left.splice(whole(0, left.length - 1), 1),
      ).flat();
    },
  };
}
