import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { criteria, screening } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { trainedCriteria } from '../../src/data/criteria.ts';
import { criterionRecords, measureCriteria } from '../../src/index.ts';
import { facts } from '../fixtures/alloys.ts';

const records = criterionRecords();
const recordOf = (id: string) => records.find((record) => record.id === id)!;

// Computed by others on the same open alloys (310 with a reported phase), three printed digits.
test.each([
  ['highEntropy', 0.402, 310],
  ['zhang2008', 0.47, 310],
  ['guoLiu2011', 0.53, 310],
  ['guo2013', 0.541, 310],
  ['yangZhang2012', 0.513, 294],
  ['singh2014', 0.555, 310],
  ['wang2015', 0.499, 310],
  ['ye2015', 0.571, 294],
])('the balanced accuracy of %s is %d on %d alloys, within 0.002', (id, expected, n) => {
  expect(Math.abs(recordOf(id).balancedAccuracy! - expected)).toBeLessThanOrEqual(0.002);
  expect(recordOf(id).n).toBe(n);
});
// One alloy fewer: an element without Allen's electronegativity.
test('the balanced accuracy of the part of the map of Poletti & Battezzati is 0.562, within 0.002', () => {
  expect(Math.abs(recordOf('polettiBattezzati2014').balancedAccuracy! - 0.562)).toBeLessThanOrEqual(0.002);
});

test('one cut at 7.5 valence electrons is right for 93 % of one-phase alloys', () => {
  const valuesOf = screening(facts, ['valenceElectronConcentration']);
  const single = publishedAlloys().filter(({ singlePhase }) => singlePhase);
  const right = single.filter(
    ({ composition, phaseClass }) =>
      valuesOf(composition).valenceElectronConcentration! >= 7.5 === (phaseClass === 'fcc'),
  );
  expect(single).toHaveLength(116);
  expect(right.length / single.length).toBeCloseTo(0.93, 2);
});

// ΔS ≥ 1.5 R counted here from the shares alone, without the formulas of the project.
test('the counts of the usual definition of high entropy are those of a plain count', () => {
  const counts = { tp: 0, fp: 0, fn: 0, tn: 0 };
  for (const { composition, singlePhase } of publishedAlloys()) {
    if (singlePhase === null) continue;
    const entropy = Object.values(composition).reduce((sum, x) => sum - (x / 100) * Math.log(x / 100), 0);
    counts[entropy >= 1.5 ? (singlePhase ? 'tp' : 'fp') : singlePhase ? 'fn' : 'tn'] += 1;
  }
  expect(recordOf('highEntropy')).toMatchObject(counts);
});

test('every criterion has a record, in order, with what belongs beside it', () => {
  expect(records.map(({ id }) => id)).toEqual(criteria.map(({ id }) => id));
  for (const { claim, formula, positiveClass, source } of records) {
    expect([claim, formula, positiveClass, source.where].every((text) => text.length > 0)).toBe(true);
  }
  expect(recordOf('king2016').formula).toBe('Φ ≥ 1');
});

test('the counts add up, and the interval holds the balanced accuracy', () => {
  for (const { n, tp, fp, fn, tn, balancedAccuracy, interval } of records.filter(
    ({ untested }) => untested === null,
  )) {
    expect(tp! + fp! + fn! + tn!).toBe(n);
    expect(balancedAccuracy).toBeCloseTo((tp! / (tp! + fn!) + tn! / (tn! + fp!)) / 2, 5);
    expect(interval![0]).toBeLessThan(balancedAccuracy!);
    expect(interval![1]).toBeGreaterThan(balancedAccuracy!);
  }
});

test('what the labels cannot show has no record, and the reason', () => {
  const untested = records.filter(({ untested: reason }) => reason !== null);
  expect(untested.map(({ id }) => id)).toEqual(['tsai2013', 'sheikh2016']);
  for (const record of untested) {
    expect(record).toMatchObject({ n: null, tp: null, balancedAccuracy: null, interval: null });
  }
});

test('fcc and bcc rules are judged on alloys of one solution, Yurchenko’s by the Laves phases among the labels', () => {
  for (const id of ['guo2011Fcc', 'guo2011Bcc']) expect(recordOf(id).n).toBe(116);
  const laves = publishedAlloys().filter(({ phases }) => phases?.includes('Laves')).length;
  expect(recordOf('yurchenko2017').tp! + recordOf('yurchenko2017').fn!).toBe(laves);
});

test('the data file is what measuring gives now', () => {
  const now = measureCriteria();
  expect(Object.keys(trainedCriteria)).toEqual(Object.keys(now));
  for (const [id, { balancedAccuracy, interval, ...counts }] of Object.entries(now)) {
    expect(trainedCriteria[id]).toMatchObject(counts);
    const kept = trainedCriteria[id]!;
    const pairs = [
      [kept.balancedAccuracy, balancedAccuracy],
      [kept.interval[0], interval[0]],
      [kept.interval[1], interval[1]],
    ] as const;
    for (const [there, here] of pairs) expect(there).toBeCloseTo(here, 5);
  }
});

test('the rules that predict a second phase say so', () => {
  const expecting = criterionRecords().filter(({ predictsSecondPhase }) => predictsSecondPhase);
  expect(expecting.map(({ id }) => id)).toEqual(['tsai2013', 'yurchenko2017']);
});
