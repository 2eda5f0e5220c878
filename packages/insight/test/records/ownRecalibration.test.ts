import { factsFor, parseAlloy, symbols } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { expect, test } from 'vitest';
import { explain, type ObservedAlloy, ownPhaseOf, ownRecalibration, phaseOf } from '../../src/index.ts';

const facts = factsFor(symbols);

/** Published alloys, each an atomic percent off in its first two elements: near enough for an estimate, and not what it learnt from. */
function melts(count: number, yes: (at: number) => boolean): ObservedAlloy[] {
  return publishedAlloys()
    .filter(
      ({ phaseClass, composition }) =>
        phaseClass !== null && Object.values(composition).every((amount) => amount > 2),
    )
    .map(({ composition, system }) => {
      const [[a, of] = ['', 0], [b, and] = ['', 0], ...rest] = Object.entries(composition);
      return { system, composition: Object.fromEntries([[a, of + 1], [b, and - 1], ...rest]) };
    })
    .filter(({ composition }) => {
      const { singleSolution, nearestDistance } = phaseOf(composition, facts);
      return singleSolution !== null && nearestDistance > 0.005;
    })
    .slice(0, count)
    .map(({ system, composition }, at) => ({
      ...{ system, composition, singlePhase: yes(at) },
      ...{ phases: yes(at) ? 'FCC' : 'FCC+B2', phaseClass: yes(at) ? 'fcc' : 'other' },
    }));
}

test('melts that were one solution more often than was said raise the estimate, beside the published one', () => {
  const recalibration = ownRecalibration(melts(30, (at) => at % 5 !== 0));
  expect(recalibration).toMatchObject({ kind: 'level', counted: { melts: 30, one: 24, more: 6 } });
  const phase = phaseOf(parseAlloy('AlCoCrFeNi'), facts);
  const own = ownPhaseOf(phase, recalibration);
  expect(own.singleSolution).toBeGreaterThan(phase.singleSolution!);
  expect(own.interval![0]).toBeLessThan(own.singleSolution!);
  expect(own.words).toMatch(
    /Recalibrated on your own melts.*where the published estimate says \d+ %.*30 melts of/,
  );
  const told = explain(parseAlloy('AlCoCrFeNi'), facts, {}, { recalibration });
  expect(told.own).toEqual(own);
  expect(told.phase).toEqual(phase);
  expect(told.paragraphs.find(({ subject }) => subject === 'own')!.text).toBe(own.words);
});

test('too few melts: the estimate stands alone, and what is missing is said', () => {
  const own = ownPhaseOf(
    phaseOf(parseAlloy('AlCoCrFeNi'), facts),
    ownRecalibration(melts(7, (at) => at > 1)),
  );
  expect(own).toMatchObject({ singleSolution: null, interval: null });
  expect(own.words).toMatch(/still missing 13 melts.*3 of anything else/);
});

test('a melt of an alloy that the estimate learnt from, one without observed phases and one without a basis do not count', () => {
  const seen = publishedAlloys().find(({ phaseClass }) => phaseClass === 'fcc')!;
  const weighed = { ...parseAlloy('Co20.02Cr19.99Fe20Mn19.98Ni20.01') };
  const unlike = parseAlloy('LiMgAg');
  const base = { phases: 'FCC', phaseClass: 'fcc', singlePhase: true } as const;
  const found = ownRecalibration([
    { ...base, composition: seen.composition, system: seen.system },
    { ...base, composition: weighed, system: 'Co-Cr-Fe-Mn-Ni' },
    { ...base, composition: unlike, system: 'Ag-Li-Mg' },
    {
      composition: parseAlloy('AlCoCrFeNi2.5'),
      system: 'Al-Co-Cr-Fe-Ni',
      phases: null,
      phaseClass: null,
      singlePhase: null,
    },
  ]);
  expect(found.counted.melts).toBe(0);
});

test('without a recalibration asked for, nothing is said of own melts', () => {
  const told = explain(parseAlloy('AlCoCrFeNi'), facts);
  expect(told.own).toBeNull();
  expect(told.paragraphs.some(({ subject }) => subject === 'own')).toBe(false);
});
