import type { SearchSpecification, Tally } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { scoreBlocks } from '../src/blocks/scoreBlocks.ts';
import { prepare, type Score, scoreChunk, scoreReference } from '../src/index.ts';
import { scoreKernel } from '../src/kernel/scoreKernel.ts';
import { scorePruned } from '../src/pruning/scorePruned.ts';
import { wholeChunk } from './fixtures/chunks.ts';
import { planOf } from './fixtures/plans.ts';
import { specificationWith } from './fixtures/specifications.ts';

const limited: Partial<SearchSpecification> = {
  elements: { pool: ['Al', 'Co', 'Cr', 'Fe', 'Ni', 'Ti'], require: ['Fe'], forbid: [] },
  components: { min: 4, max: 5 },
  fractions: { step: 2, min: 5, max: 35, each: {} },
  limits: [
    { quantity: 'mixingEnthalpy', min: -20, max: 0 },
    { quantity: 'sizeMismatch', max: 6 },
    { quantity: 'density', min: 6.5, max: 7.5 },
  ],
  rank: [{ quantity: 'omega', prefer: 'high' }],
  keep: 50,
  keepPerSystem: 2,
};
/** No kernel is made for that product of desirabilities: one system is gone through line by line. */
const byLines: Partial<SearchSpecification> = {
  elements: { pool: ['V', 'Si', 'Cu', 'Co', 'Mn'], require: [], forbid: [] },
  components: { min: 5, max: 5 },
  fractions: { step: 2, min: 5, max: 35, each: {} },
  limits: [{ quantity: 'meltingTemperature', min: 1676 }],
  lets: { merit: 'max(abs(mismatchEntropy/0.1 - 2.1), exp(-abs(density/6.3)))' },
  rank: [
    { quantity: 'merit', prefer: { target: 0.9 }, within: 0.8, shape: 2 },
    { quantity: 'density', prefer: { target: 5.9 }, within: 1.9 },
    { quantity: 'shearModulus', prefer: 'high', from: 57, to: 70 },
    { quantity: 'yieldStrengthFcc', prefer: 'high', from: 0.1, to: 1.1 },
  ],
  keep: 40,
};
const withFront: Partial<SearchSpecification> = {
  ...limited,
  front: [
    { quantity: 'density', prefer: 'low' },
    { quantity: 'meltingTemperature', prefer: 'high' },
  ],
};
const searches: { name: string; score: Score; tally: Tally; given: Partial<SearchSpecification> }[] = [
  { name: 'blocks', score: scoreBlocks, tally: 'each', given: limited },
  { name: 'the kernel', score: scoreKernel, tally: 'each', given: limited },
  { name: 'the kernel', score: scoreKernel, tally: 'all', given: limited },
  { name: 'a front', score: scoreChunk, tally: 'each', given: withFront },
  { name: 'leaving regions out', score: scorePruned, tally: 'all', given: limited },
  { name: 'leaving regions out', score: scorePruned, tally: 'none', given: limited },
  { name: 'leaving regions out of one system', score: scorePruned, tally: 'all', given: byLines },
  { name: 'leaving regions out of one system', score: scorePruned, tally: 'none', given: byLines },
];
/** Stopped at so many questions at most, at equal distances. */
const mostStops = 60;

test.each(searches)(
  'however far a chunk had come when it was stopped, nothing of it is left: $name, tally $tally',
  ({ score, tally, given }) => {
    const prepared = prepare(planOf(specificationWith({ ...given, tally })));
    const chunk = wholeChunk(prepared);
    const expected = scoreReference(prepared, chunk, { cutOff: null });
    let questions = 0;
    const count = () => {
      questions += 1;
      return false;
    };
    expect(score(prepared, chunk, { cutOff: null, stopped: count })).toEqual(expected);
    expect(questions).toBeGreaterThan(1);
    const distance = Math.ceil(questions / mostStops);
    for (let stop = 0; stop < questions; stop += distance) {
      let left = stop;
      const stopped = () => left-- <= 0;
      expect(score(prepared, chunk, { cutOff: null, stopped })).toBe(null);
      expect(score(prepared, chunk, { cutOff: null })).toEqual(expected);
    }
  },
);
