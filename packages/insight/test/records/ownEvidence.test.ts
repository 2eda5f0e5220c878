import { parseAlloy } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { describe, expect, test } from 'vitest';
import { criterionRecords, measureCriteria, type ObservedAlloy, ownEvidence } from '../../src/index.ts';

const melt = (alloy: string, phases: string | null): ObservedAlloy => {
  const composition = parseAlloy(alloy);
  const phaseClass = phases === null ? null : phases === 'FCC' ? 'fcc' : phases === 'BCC' ? 'bcc' : 'other';
  return {
    ...{ composition, phases, phaseClass },
    system: Object.keys(composition).join('-'),
    singlePhase: phaseClass === null ? null : phaseClass !== 'other',
  };
};

test('the published alloys, taken for melts, have the record that training measured', () => {
  const [zhang] = criterionRecords();
  const own = ownEvidence(publishedAlloys()).criteria.find(({ id }) => id === zhang!.id)!;
  const { n, tp, fp, fn, tn } = zhang!;
  expect(own).toMatchObject({ n, tp, fp, fn, tn });
  expect(own.balancedAccuracy).toBeCloseTo(zhang!.balancedAccuracy!, 5);
  expect(own.interval![0]).toBeCloseTo(zhang!.interval![0], 5);
});

// VEC by hand: CoCrFeNi (9 + 6 + 8 + 10)/4 = 8.25 is at least 8; NbMoTaW (5 + 6 + 5 + 6)/4 = 5.5 is not.
test('counts are those of the melts, and those without observed phases do not count', () => {
  const melts = [melt('CoCrFeNi', 'FCC'), melt('MoNbTaW', 'BCC'), melt('AlCoCrFeNi', null)];
  const { criteria, melts: n, systems, trust } = ownEvidence(melts);
  expect({ n, systems }).toEqual({ n: 2, systems: 2 });
  const fcc = criteria.find(({ id }) => id === 'guo2011Fcc')!;
  expect(fcc).toMatchObject({ n: 2, tp: 1, fp: 0, fn: 0, tn: 1, balancedAccuracy: 1, interval: null });
  expect(trust).toMatch(/2 melts of 2 systems.*nothing can be concluded/);
});

describe('too few melts', () => {
  test('of one class only have counts, but no balanced accuracy and no AUC', () => {
    const { criteria, phaseEstimate } = ownEvidence([melt('CoCrFeNi', 'FCC')]);
    for (const { balancedAccuracy, interval } of criteria) {
      expect({ balancedAccuracy, interval }).toEqual({ balancedAccuracy: null, interval: null });
    }
    expect(phaseEstimate).toMatchObject({ n: 1, baseRate: 1, auc: null, interval: null });
    expect(phaseEstimate.logLoss).toBeGreaterThan(0);
  });

  test('none at all has nothing', () => {
    expect(ownEvidence([]).phaseEstimate).toEqual({
      ...{ n: 0, withoutBasis: 0, baseRate: null, auc: null, interval: null },
      ...{ brier: null, logLoss: null, fourClassAccuracy: null },
    });
  });
});

// A lattice rule speaks of the melts of one solution alone.
test('a rule that speaks of two of many melts has no interval, however many there are', () => {
  const others = publishedAlloys().filter(({ phaseClass }) => phaseClass === 'other');
  const { criteria, trust } = ownEvidence([melt('CoCrFeNi', 'FCC'), melt('MoNbTaW', 'BCC'), ...others]);
  expect(trust).not.toContain('nothing can be concluded');
  const of = (id: string) => criteria.find((one) => one.id === id)!;
  expect(of('guo2011Fcc')).toMatchObject({ n: 2, balancedAccuracy: 1, interval: null });
  expect(of('zhang2008').n).toBeGreaterThan(100);
  expect(of('zhang2008').interval).toHaveLength(2);
});

test('an estimate that has a number for two of many melts has no interval', () => {
  const far = ['Ag', 'Au', 'Ca', 'Sn', 'Zn'].flatMap((last) =>
    Array.from({ length: 6 }, (_, at) => melt(`Li${50 + at}Mg${last}`, 'other')),
  );
  const { phaseEstimate } = ownEvidence([melt('CoCrFeNi', 'FCC'), melt('Al2CoCrFeNi', 'B2'), ...far]);
  expect(phaseEstimate).toMatchObject({ n: 2, auc: 1, interval: null });
});

test('a melt far from every published alloy is counted as without a basis', () => {
  expect(ownEvidence([melt('LiMgAg', 'other')]).phaseEstimate).toMatchObject({ n: 0, withoutBasis: 1 });
});

test('measureCriteria of nothing is nothing but counts of zero', () => {
  for (const { n } of Object.values(measureCriteria([]))) expect(n).toBe(0);
});

test('alloys that were brought in are counted alike, and not called melts', () => {
  const few = publishedAlloys().slice(0, 30);
  const { trust, ...counted } = ownEvidence(few, 'alloys');
  const { trust: ofMelts, ...melted } = ownEvidence(few);
  expect(counted).toEqual(melted);
  expect(trust).toContain('brought in');
  expect(trust).not.toContain('melt');
  expect(ofMelts).not.toContain('brought in');
});
