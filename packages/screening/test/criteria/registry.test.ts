import { readdirSync, readFileSync } from 'node:fs';
import { parseAlloy } from '@tiegel/elements';
import { describe, expect, test } from 'vitest';
import {
  type Bounds,
  type Criterion,
  criteria,
  isSpokenOf,
  type Predicate,
  predicateText,
  quantities,
  quantitiesOf,
  silenceInWords,
  verdictOf,
  verdictsOf,
} from '../../src/index.ts';
import { factsWith, without } from '../fixtures/elements.ts';

const facts = factsWith();
const criterion = (id: string): Criterion => criteria.find((one) => one.id === id)!;
const LATE = ['kingPhi', 'kappaMargin'];

// As they are published (from memory); the ids are what programs of others rely on.
test('the criteria are these, with these bounds', () => {
  expect(criteria.map(({ id, predicate }) => [id, predicateText(predicate)])).toEqual([
    ['zhang2008', '−15 ≤ ΔH ≤ 5 kJ/mol, δ ≤ 6.5 %, 12 ≤ ΔS ≤ 17.5 J/(mol K)'],
    ['guoLiu2011', '−22 ≤ ΔH ≤ 7 kJ/mol, δ ≤ 8.5 %, 11 ≤ ΔS ≤ 19.5 J/(mol K)'],
    ['guo2013', '−11.6 < ΔH < 3.2 kJ/mol, δ < 6.6 %'],
    ['yangZhang2012', 'Ω ≥ 1.1, δ ≤ 6.6 %'],
    ['singh2014', 'Λ > 0.96 J/(mol K)'],
    ['wang2015', 'γ < 1.175'],
    ['ye2015', 'φ ≥ 20'],
    ['king2016', 'kingPhi ≥ 1'],
    ['senkovMiracle2016', 'kappaMargin > 0'],
    ['guo2011Fcc', 'VEC ≥ 8'],
    ['guo2011Bcc', 'VEC < 6.87'],
    ['tsai2013', '6.88 ≤ VEC ≤ 7.84'],
    ['yurchenko2017', 'Δχ_A > 7 %, δ > 5 %'],
    ['polettiBattezzati2014', '1 < δ < 6 %, 3 < Δχ_A < 6 %'],
    ['sheikh2016', 'VEC < 4.5'],
    ['highEntropy', 'ΔS ≥ 12.47 J/(mol K)'], // 1.5 R
  ]);
});

test('every file of a criterion is in the registry, and the other way round', () => {
  const files = readdirSync(new URL('../../src/criteria/', import.meta.url))
    .map((name) => name.replace('.ts', ''))
    .filter((name) => name !== 'index');
  expect(files.sort()).toEqual(criteria.map(({ id }) => id).sort());
});

test('the table of the README is the registry', () => {
  const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
  const lines = readme.split('\n').map((line) => line.replaceAll(/ +/g, ' '));
  for (const { id, predicate, scope, positiveClass, source } of criteria) {
    const holds = [predicate, ...(scope ? [scope] : [])].map((one) => predicateText(one)).join('; ');
    const origin = `${source.authors} ${source.year} (${source.checked})`;
    expect(lines).toContain(`| \`${id}\` | ${holds} | ${positiveClass.what} | ${origin} |`);
  }
});

describe.for(criteria.map((one) => [one.id, one] as const))('%s', ([id, one]) => {
  test('lacks neither name, claim, class nor source', () => {
    const { name, claim, positiveClass, source, caution = '.' } = one;
    for (const text of [name, positiveClass.what, source.authors, source.where]) {
      expect(text.trim()).not.toBe('');
    }
    expect(claim).toMatch(/^[A-Z].*\.$/);
    expect(caution).toMatch(/\.$/);
    expect(source.year).toBeGreaterThan(2000);
    if (positiveClass.observed === null) expect(positiveClass.untested).toMatch(/\.$/);
  });

  test('names quantities that exist', () => {
    const known = [...quantities.map((quantity) => quantity.id), ...LATE];
    for (const quantity of quantitiesOf(one.predicate)) expect(known).toContain(quantity);
    expect(quantitiesOf(one.predicate)).not.toEqual([]);
  });

  test('turns at each of its bounds', () => {
    const alloy = { Cr: 50, V: 50 }; // all scopes hold it
    const inside = Object.fromEntries(
      ranges(one.predicate).map(({ quantity, ...bounds }) => [quantity, within(bounds)]),
    );
    expect(verdictOf(one, alloy, inside), id).toBe(true);
    for (const { quantity, ...bounds } of ranges(one.predicate)) {
      for (const [side, bound] of Object.entries(bounds)) {
        const [outward, inclusive] = [side === 'atLeast' || side === 'above' ? -1 : 1, side.startsWith('at')];
        const at = (value: number) => verdictOf(one, alloy, { ...inside, [quantity]: value });
        const nearby = 1e-9 * Math.max(1, Math.abs(bound));
        expect(at(bound)).toBe(inclusive);
        expect(at(bound + outward * nearby)).toBe(false);
        expect(at(bound - outward * nearby)).toBe(true);
        // what rounding leaves beside a bound counts as on it
        expect(at(bound + outward * nearby * 1e-4)).toBe(inclusive);
        expect(at(bound - outward * nearby * 1e-4)).toBe(inclusive);
      }
    }
  });

  test('has no verdict where one of its values is missing', () => {
    const inside = Object.fromEntries(
      ranges(one.predicate).map(({ quantity, ...bounds }) => [quantity, within(bounds)]),
    );
    for (const quantity of quantitiesOf(one.predicate)) {
      const outside = Object.fromEntries(Object.keys(inside).map((other) => [other, 1e9]));
      expect(verdictOf(one, { Cr: 50, V: 50 }, { ...inside, [quantity]: null })).toBeNull();
      expect(verdictOf(one, { Cr: 50, V: 50 }, { ...outside, [quantity]: null })).toBeNull();
    }
  });
});

type Range = Bounds & { quantity: string };

function ranges(predicate: Predicate): Range[] {
  if (predicate.kind === 'every') return predicate.of.flatMap(ranges);
  if (predicate.kind !== 'range') return [];
  const { kind: _, ...range } = predicate;
  return [range];
}

/** A value well inside. */
function within({ atLeast, above, atMost, below }: Bounds): number {
  const [low, high] = [atLeast ?? above, atMost ?? below];
  if (low !== undefined && high !== undefined) return (low + high) / 2;
  return low === undefined ? high! - 1 : low + 1;
}

describe('verdicts', () => {
  const of = (alloy: string, data = facts) => verdictsOf(parseAlloy(alloy), data);

  // By hand from published descriptors (Guo & Liu 2011; Yang & Zhang 2012, from memory): ΔH −4.16 and
  // −12.32 kJ/mol, δ 3.27 and 5.77 %, ΔS 13.38 J/(mol K), VEC 8 and 7.2.
  test('of CoCrFeMnNi and AlCoCrFeNi follow from their published descriptors', () => {
    expect(of('CoCrFeMnNi')).toMatchObject({
      ...{ zhang2008: true, guoLiu2011: true, guo2013: true, yangZhang2012: true, singh2014: true },
      ...{ wang2015: true, ye2015: true, guo2011Fcc: true, guo2011Bcc: false, tsai2013: false },
      ...{ yurchenko2017: false, polettiBattezzati2014: true, sheikh2016: null, highEntropy: true },
    });
    expect(of('AlCoCrFeNi')).toMatchObject({
      ...{ zhang2008: true, guoLiu2011: true, guo2013: false, yangZhang2012: true, singh2014: false },
      ...{ wang2015: true, ye2015: false, guo2011Fcc: false, guo2011Bcc: false, tsai2013: true },
    });
  });

  test('on late quantities want their values', () => {
    expect(of('CoCrFeMnNi')).toMatchObject({ king2016: null, senkovMiracle2016: null });
    const late = { kingPhi: 1.2, kappaMargin: -3 };
    expect(verdictsOf(parseAlloy('CoCrFeMnNi'), facts, {}, late)).toMatchObject({
      king2016: true,
      senkovMiracle2016: false,
    });
  });

  test('without a melting point lack for Yang & Zhang and Ye alone', () => {
    const lacking = of('CoCrFeNi', without('meltingTemperature', 'Cr'));
    const none = Object.keys(lacking).filter((id) => lacking[id] === null);
    expect(none).toEqual(['yangZhang2012', 'ye2015', 'king2016', 'senkovMiracle2016', 'sheikh2016']);
  });

  test('tell an alloy that a rule does not speak of from one whose value lacks', () => {
    const [sigma, refractory] = [criterion('tsai2013'), criterion('sheikh2016')];
    expect(of('CoFeNi').tsai2013).toBeNull();
    expect(isSpokenOf(sigma, parseAlloy('CoFeNi'), {})).toBe(false);
    expect(silenceInWords('tsai2013', parseAlloy('CoFeNi'), {})).toBe('– of other alloys');
    expect(silenceInWords('tsai2013', parseAlloy('CoFeNiV'), {})).toBe('– a value lacks');
    expect(isSpokenOf(sigma, parseAlloy('CoFeNiV'), {})).toBe(true);
    expect(of('HfNbTaTiZr').sheikh2016).toBe(true); // VEC 4.4
    expect(of('NbMoTaW').sheikh2016).toBe(false); // VEC 5.5
    expect(isSpokenOf(refractory, parseAlloy('AlNbTiV'), {})).toBe(false);
    // an element of which there is nothing is not there
    expect(isSpokenOf(refractory, { Nb: 50, Ti: 50, Al: 0 }, {})).toBe(true);
  });

  test('depend on the radius set as their cautions say', () => {
    for (const one of criteria) {
      const radii = ['sizeMismatch', 'lambda', 'gamma', 'excessEntropyRatio'];
      const rests = quantitiesOf(one.predicate).some((quantity) => radii.includes(quantity));
      expect(one.caution?.includes('radius set') ?? false, one.id).toBe(rests);
    }
  });
});
