import { factsFor, symbols } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { phaseOf } from '../../src/index.ts';
import {
  neededForLevel,
  neededForSlope,
  type OwnAnswer,
  recalibrated,
  recalibrationOf,
} from '../../src/phase/recalibration.ts';
import { seededRandom } from '../../src/seededRandom.ts';

const logistic = (odds: number) => 1 / (1 + Math.exp(-odds));
const logit = (probability: number) => Math.log(probability / (1 - probability));

/** `count` answers that say `probability`, of which `one` were so, each of a system of its own. */
const alike = (probability: number, count: number, one: number): OwnAnswer[] =>
  Array.from({ length: count }, (_, at) => ({ probability, yes: at < one, system: `S${at}` }));

const answers = (least: number, most = least) =>
  fc
    .array(
      fc.record({
        probability: fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        yes: fc.boolean(),
        system: fc.constantFrom('A', 'B', 'C', 'D', 'E', 'F', 'G'),
      }),
      { minLength: least, maxLength: most },
    )
    .filter((drawn) => recalibrationOf(drawn).fit !== null);

describe('by hand', () => {
  // Of 40 melts for which 50 % was said, 30 were one solution: the odds are 3, ln 3 = 1.0986; the
  // variance of the logarithm of the odds is 1/30 + 1/10 by the textbook, times 40/39 between systems.
  test('where the same was said of all, the recalibrated probability is the share that was so', () => {
    const found = recalibrationOf(alike(0.5, 40, 30));
    expect(found.kind).toBe('level');
    expect(found.fit!.intercept).toBeCloseTo(Math.log(3), 9);
    expect(found.fit!.covariance[0]).toBeCloseTo((40 / 39) * (1 / 30 + 1 / 10), 9);
    const { singleSolution, interval } = recalibrated(0.5, found)!;
    expect(singleSolution).toBeCloseTo(0.75, 9);
    const spread = 1.959964 * Math.sqrt((40 / 39) * (4 / 30));
    expect(interval[0]).toBeCloseTo(logistic(Math.log(3) - spread), 9);
    expect(interval[1]).toBeCloseTo(logistic(Math.log(3) + spread), 9);
  });

  test('another alloy is moved by the same factor of its odds', () => {
    const found = recalibrationOf(alike(0.5, 40, 30));
    // Odds of 1 to 4 become 3 to 4.
    expect(recalibrated(0.2, found)!.singleSolution).toBeCloseTo(3 / 7, 9);
  });
});

describe('laws', () => {
  test('on the melts themselves the mean of what is said is the share that was so', () => {
    fc.assert(
      fc.property(answers(neededForLevel.melts, 160), (drawn) => {
        const found = recalibrationOf(drawn);
        const said = drawn.map(({ probability }) => recalibrated(probability, found)!.singleSolution);
        const mean = said.reduce((a, b) => a + b) / said.length;
        expect(mean).toBeCloseTo(drawn.filter(({ yes }) => yes).length / drawn.length, 7);
      }),
      { numRuns: 60 },
    );
  });

  test('the order of the melts changes nothing, and the interval holds the value within 0 and 1', () => {
    fc.assert(
      fc.property(answers(25, 140), fc.double({ min: 0.01, max: 0.99, noNaN: true }), (drawn, p) => {
        const here = recalibrated(p, recalibrationOf(drawn))!;
        const turned = recalibrated(p, recalibrationOf(drawn.toReversed()))!;
        expect(turned.singleSolution).toBeCloseTo(here.singleSolution, 7);
        expect(here.interval[0]).toBeGreaterThanOrEqual(0);
        expect(here.interval[0]).toBeLessThan(here.singleSolution);
        expect(here.interval[1]).toBeGreaterThan(here.singleSolution);
        expect(here.interval[1]).toBeLessThanOrEqual(1);
      }),
      { numRuns: 40 },
    );
  });

  test('moving the level keeps the order of alloys; twice the melts of each system narrow the interval of independent ones', () => {
    const found = recalibrationOf(alike(0.3, 40, 20));
    const said = [0.05, 0.2, 0.5, 0.8, 0.95].map((p) => recalibrated(p, found)!.singleSolution);
    expect(said).toEqual(said.toSorted((a, b) => a - b));
    const more = recalibrationOf(alike(0.3, 80, 40));
    expect(more.fit!.covariance[0] / found.fit!.covariance[0]).toBeCloseTo(0.5, 1);
  });

  test('melts of one system that all came out alike tell less than independent ones', () => {
    // Ten systems of four: all of a system alike.
    const drawn = Array.from({ length: 40 }, (_, at) => ({
      ...{ probability: 0.5, system: `S${Math.floor(at / 4)}`, yes: Math.floor(at / 4) % 2 === 0 },
    }));
    const { fit } = recalibrationOf(drawn);
    // By hand: variance 1/10 if independent; between systems 10/9 · Σ(4 · ½)² / 10² = 0.444.
    expect(fit!.covariance[0]).toBeCloseTo(4 / 9, 9);
  });

  // Pairs of one system with one of either kind: between systems next to nothing varies, and the likelihood's variance is the greater.
  test('with a slope the interval is the one that the curvature of the likelihood gives, narrowest amid the melts', () => {
    const random = seededRandom(7);
    const drawn: OwnAnswer[] = Array.from({ length: 160 }, (_, at) => at >> 1).flatMap((pair, at) => {
      const probability = logistic(0.4 + 2.4 * ((pair * 0.618) % 1) + 0.2 * random());
      return [{ probability, yes: at % 2 === 0, system: `S${pair}` }];
    });
    const found = recalibrationOf(drawn);
    expect(found.kind).toBe('slope');
    const { intercept, slope } = found.fit!;
    const worth = (a: number, b: number) =>
      drawn.reduce((sum, { probability, yes }) => {
        const said = logistic(a + b * logit(probability));
        return sum + Math.log(yes ? said : 1 - said);
      }, 0) -
      (b - 1) ** 2 / 2;
    const step = 1e-3;
    const second = (da: number, db: number) =>
      (worth(intercept + da, slope + db) - 2 * worth(intercept, slope) + worth(intercept - da, slope - db)) /
      step ** 2;
    const [aa, bb] = [-second(step, 0), -second(0, step)];
    const ab = -(second(step, step) + aa + bb) / 2;
    const spreadAt = (odds: number) =>
      Math.sqrt((bb - 2 * odds * ab + odds * odds * aa) / (aa * bb - ab * ab));
    for (const odds of [-2, 0, 1.6, 4]) {
      const { interval } = recalibrated(logistic(odds), found)!;
      const width = logit(interval[1]) - logit(interval[0]);
      expect(width / (2 * 1.959964 * spreadAt(odds))).toBeCloseTo(1, 3);
    }
    expect(spreadAt(1.6)).toBeLessThan(spreadAt(0));
    expect(spreadAt(1.6)).toBeLessThan(spreadAt(4));
  });

  test('the likelihood has no better line nearby', () => {
    const random = seededRandom(5);
    const drawn: OwnAnswer[] = Array.from({ length: 150 }, (_, at) => {
      const odds = 6 * random() - 3;
      return {
        probability: logistic(odds),
        yes: random() < logistic(0.4 + 0.6 * odds),
        system: `S${at % 9}`,
      };
    });
    const { kind, fit } = recalibrationOf(drawn);
    expect(kind).toBe('slope');
    // Written out anew: the log likelihood with a normal prior of spread 1 about a slope of 1.
    const worth = (intercept: number, slope: number) =>
      drawn.reduce((sum, { probability, yes }) => {
        const said = logistic(intercept + slope * logit(probability));
        return sum + Math.log(yes ? said : 1 - said);
      }, 0) -
      (slope - 1) ** 2 / 2;
    const best = worth(fit!.intercept, fit!.slope);
    for (const [da, db] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
      [1, 1],
      [1, -1],
    ] as const) {
      expect(worth(fit!.intercept + 1e-3 * da, fit!.slope + 1e-3 * db)).toBeLessThan(best);
    }
  });
});

describe('too few melts', () => {
  test.each([
    [[] as OwnAnswer[], { melts: 20, systems: 5, one: 5, more: 5 }],
    [alike(0.5, 8, 1), { melts: 12, systems: 0, one: 4, more: 0 }],
    [alike(0.5, 30, 30), { melts: 0, systems: 0, one: 0, more: 5 }],
    [
      alike(0.5, 30, 10).map((one) => ({ ...one, system: 'Co-Cr' })),
      { melts: 0, systems: 4, one: 0, more: 0 },
    ],
  ])('are counted, and what is missing is said (%#)', (drawn, missing) => {
    const found = recalibrationOf(drawn);
    expect(found).toMatchObject({ kind: 'none', missing, fit: null });
    expect(recalibrated(0.4, found)).toBeNull();
  });

  test('separated kinds still have a finite fit', () => {
    const drawn = [...alike(0.9, 60, 60), ...alike(0.1, 60, 0)];
    const { kind, fit } = recalibrationOf(drawn);
    expect(kind).toBe('slope');
    expect(fit!.slope).toBeGreaterThan(1);
    expect(Number.isFinite(fit!.slope + fit!.covariance[2])).toBe(true);
  });
});

/** What the estimate says of the published alloys: the alloys that laboratories melt. */
function published(): number[] {
  const facts = factsFor(symbols);
  return publishedAlloys().flatMap(({ composition, phaseClass }) => {
    const said = phaseClass === null ? null : phaseOf(composition, facts).singleSolution;
    return said === null ? [] : [said];
  });
}

/**
 * What recalibration gains, in nat an alloy, for a laboratory whose odds are off: the mean over 300
 * laboratories that melt alloys drawn from the published ones, each of a system of its own. Negative: a loss.
 */
function gain(said: readonly number[], melts: number, off: { intercept: number; slope: number }): number {
  const random = seededRandom(melts);
  const truth = (probability: number) => logistic(off.intercept + off.slope * logit(probability));
  const loss = (of: (probability: number) => number) =>
    said.reduce((sum, p) => sum - truth(p) * Math.log(of(p)) - (1 - truth(p)) * Math.log(1 - of(p)), 0) /
    said.length;
  const gains = Array.from({ length: 300 }, () => {
    const drawn = Array.from({ length: melts }, (_, at): OwnAnswer => {
      const probability = said[Math.floor(random() * said.length)]!;
      return { probability, yes: random() < truth(probability), system: `S${at}` };
    });
    const found = recalibrationOf(drawn);
    return found.fit === null ? 0 : loss((p) => p) - loss((p) => recalibrated(p, found)!.singleSolution);
  });
  return gains.reduce((a, b) => a + b) / gains.length;
}

describe('how many melts are enough, by simulation', () => {
  const said = published();

  test('at the least number, odds off by a factor of 1.6 are where it begins to gain, and by 2.7 it gains much', () => {
    const { melts } = neededForLevel;
    expect(gain(said, melts, { intercept: 0.5, slope: 1 })).toBeGreaterThan(-0.005);
    expect(gain(said, 2 * melts, { intercept: 0.5, slope: 1 })).toBeGreaterThan(0.005);
    expect(gain(said, melts, { intercept: 1, slope: 1 })).toBeGreaterThan(0.05);
    // Where nothing is off it costs a little: by theory 1/(2n) nat.
    expect(gain(said, melts, { intercept: 0, slope: 1 })).toBeGreaterThan(-0.03);
  });

  test('at the number for the slope, a slope of 0.6 is worth fitting and costs little where there is none', () => {
    const { melts } = neededForSlope;
    expect(gain(said, melts, { intercept: 0, slope: 0.6 })).toBeGreaterThan(0);
    expect(gain(said, melts, { intercept: 0, slope: 1 })).toBeGreaterThan(-0.015);
  });

  test('the interval of the level holds the truth for some 95 of 100 laboratories', () => {
    const random = seededRandom(11);
    const laboratories = 400;
    let held = 0;
    for (let laboratory = 0; laboratory < laboratories; laboratory++) {
      const drawn = Array.from({ length: 40 }, (_, at): OwnAnswer => {
        const probability = said[Math.floor(random() * said.length)]!;
        return { probability, yes: random() < logistic(0.7 + logit(probability)), system: `S${at}` };
      });
      const [low, high] = recalibrated(0.5, recalibrationOf(drawn))!.interval;
      if (low <= logistic(0.7) && logistic(0.7) <= high) held += 1;
    }
    // Three standard errors of a share of 0.95 of 400 are 0.033.
    expect(held / laboratories).toBeGreaterThan(0.917);
    expect(held / laboratories).toBeLessThan(0.995);
  });
});
