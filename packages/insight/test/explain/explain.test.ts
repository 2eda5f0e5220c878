import { factsFor, parseAlloy, symbols } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { explain, type Paragraph } from '../../src/index.ts';
import { alloys, facts, withoutPair } from '../fixtures/alloys.ts';

const told = (alloy: string, conditions = {}) => explain(parseAlloy(alloy), facts, conditions);
const paragraph = (alloy: string, subject: Paragraph['subject'], conditions = {}) =>
  told(alloy, conditions).paragraphs.find((one) => one.subject === subject)!;

test('an alloy is told in the order in which a person reads', () => {
  expect(told('AlCoCrFeNi').paragraphs.map(({ subject }) => subject)).toEqual([
    ...['composition', 'published', 'phases', 'disagreement', 'rules', 'ordering', 'demixing'],
    ...['compounds', 'pairs', 'strength', 'limits'],
  ]);
});

test.each(['CoCrFeMnNi', 'AlCoCrFeNi', 'NbMoTaW', 'AlCoCrCuFeNi'])(
  'every report on %s stands in the text with its count',
  (alloy) => {
    const { reports } = publishedAlloys().find(({ composition }) => {
      const asked = parseAlloy(alloy);
      return (
        Object.keys(composition).length === Object.keys(asked).length &&
        Object.keys(asked).every((symbol) => Math.abs((composition[symbol] ?? 0) - asked[symbol]!) < 1e-6)
      );
    })!;
    const { text } = paragraph(alloy, 'published');
    const own = text.slice(0, text.indexOf('.'));
    expect(reports.length).toBeGreaterThan(0);
    for (const { phases, references } of reports.slice(1))
      expect(text).toContain(`${phases} in ${references}`);
    expect(own).toContain(reports[0]!.phases.slice(0, 3));
    if (reports.length > 1) expect(text).toMatch(/ of \d+ publications, /);
  },
);

/*
 * Counted by hand in the records: AlCoCrFeNi has 16 publications with phases, five of which report two labels;
 * Co0.986Cr0.952Fe0.933Mn0.914Ni has a single one, with four labels of four states.
 */
test('publications are counted once, however many labels each reports', () => {
  const published = (alloy: string) => paragraph(alloy, 'published').text;
  expect(published('AlCoCrFeNi')).toContain('BCC in 8 of 16 publications, BCC+B2 in 5, FCC+BCC in 4');
  expect(published('CoCrFeMnNi')).toContain(
    'Co0.986Cr0.952Fe0.933Mn0.914Ni, 2 % of the atoms apart: FCC+BCC+Sec. and FCC+Sec. and BCC and FCC in one publication.',
  );
  for (const { reports, reporting } of publishedAlloys()) {
    const counts = reports.map(({ references }) => references);
    expect(reporting).toBeGreaterThanOrEqual(Math.max(0, ...counts));
    expect(reporting).toBeLessThanOrEqual(counts.reduce((sum, one) => sum + one, 0));
  }
});

// What is published: the open data of Borg et al. 2020; the other side of a half disagrees, and a distance of 0.4.
test('where the estimate disagrees with the publications on an alloy, the text says so openly, and only there', () => {
  const several = publishedAlloys().filter(
    ({ references, reports }) => references >= 4 && reports.length > 0,
  );
  const found = several.map(({ composition, reports }) => {
    const { phase, paragraphs } = explain(composition, facts);
    const count = (some: typeof reports) => some.reduce((sum, { references }) => sum + references, 0);
    const one = reports.filter(({ phases }) => phases === 'FCC' || phases === 'BCC');
    const share = count(one) / count(reports);
    const estimate = phase.singleSolution ?? share;
    const otherSide = share !== 0.5 && estimate >= 0.5 !== share > 0.5;
    const disagrees = otherSide || Math.abs(estimate - share) >= 0.4;
    const { text } = paragraphs.find(({ subject }) => subject === 'disagreement')!;
    expect(text.startsWith('The estimate disagrees: it gives one disordered solution 0.')).toBe(disagrees);
    if (disagrees) expect(text).toContain(`but ${count(one)} of ${count(reports)} reports are of one.`);
    return disagrees;
  });
  expect(new Set(found)).toEqual(new Set([true, false]));
});

test('what most publications report is told of those alone of which most report one class', () => {
  for (const { composition } of publishedAlloys()) {
    const { text } = explain(composition, facts).paragraphs.find(
      ({ subject }) => subject === 'disagreement',
    ) ?? {
      text: '',
    };
    const [, some, all] = /most reports are of .* \((\d+) of (\d+)\)/.exec(text) ?? [];
    if (some !== undefined) expect(Number(some) / Number(all), text).toBeGreaterThan(0.5);
  }
});

// In the records: one report of FCC and one of FCC+Sec.; the estimate is 0.4, and Miedema's model lets the solution stay.
test('where half of the reports are of one solution, nothing is said of most of them, and a side is not taken', () => {
  const { text } = paragraph('CoCrFeMnNiV0.25', 'disagreement');
  expect(text).toBe(
    'Neither the estimate nor the models of order and compounds contradict what is published of this alloy.',
  );
});

// Invented enthalpies: Nb, Ta and Ti, one bcc solution in the records, would have no compound and repel each other.
test('a model that would have the elements apart is not said to expect compounds', () => {
  const pair = (a: string, b: string) => ({
    ...{ a, b, mixingEnthalpy: 40, source: 'invented' },
    ...{ import: null, importName: '', importedAt: null },
  });
  const repelling = factsFor(symbols, { pairs: [pair('Nb', 'Ta'), pair('Nb', 'Ti'), pair('Ta', 'Ti')] });
  const { paragraphs } = explain(parseAlloy('NbTaTi'), repelling);
  const { text } = paragraphs.find(({ subject }) => subject === 'disagreement')!;
  expect(text).toMatch(/Miedema’s model expects the elements apart \(\d+ kJ\/mol below the solution\)/);
});

test('of an alloy that is not in the table there is nothing to disagree with, and what is near is named', () => {
  const { paragraphs } = told('Al3Co17Cr20Fe31Ni29');
  expect(paragraphs.some(({ subject }) => subject === 'disagreement')).toBe(false);
  expect(paragraphs.find(({ subject }) => subject === 'published')!.text).toMatch(
    /^Not in the table of published alloys here \(377 alloys, a part of what is published\)\. \S+, \d+ % of the atoms apart/,
  );
});

test('demixing is told as an explanation and never as a predictor', () => {
  const { heading, text, trust } = paragraph('AlCoCrCuFeNi', 'demixing');
  expect(heading).toContain('explanation');
  expect(text).toContain('copper would leave');
  expect(trust).toMatch(/^An explanation, not a prediction of phases/);
});

test('each rule is told with its record, and that passing all proves little', () => {
  const { text, trust, sources } = paragraph('CoCrFeMnNi', 'rules');
  // Zhang et al. 2008 on the open published alloys: 0.470 ± 0.002 (own calculation by an independent script).
  expect(text).toContain('Zhang et al. 2008 (0.47;');
  expect(text).toContain('Sheikh et al. 2016');
  expect(trust).toContain('Passing every rule proves little');
  expect(sources.find((one) => one.startsWith('Ye et al. 2015'))).toContain('φ ≥ 20');
});

test('a rule that predicts a second phase is told by what it expects, not as met or failed', () => {
  const text = (alloy: string) => paragraph(alloy, 'rules').text;
  // Valence electrons 7.80, within 6.88 and 7.84 of Tsai et al. 2013; 8.25 for CoCrFeNi.
  expect(text('Cr35Cu5Fe30Ni25V5')).toContain(
    'Tsai et al. 2013 expects a σ phase after annealing (not testable here).',
  );
  expect(text('CoCrFeNi')).toContain('Tsai et al. 2013 does not expect a σ phase after annealing (not');
  expect(text('CoCrFeNi')).toContain('Yurchenko et al. 2017 does not expect a Laves phase (0.69;');
  expect(text('CoCrFeNi')).not.toMatch(/(Meets|Fails) (Tsai|Yurchenko)/);
});

test('strength is told with its temperature, its domain and its error', () => {
  const { text } = paragraph('NbMoTaW', 'strength', { serviceTemperature: 1073.15, grainSize: 50 });
  expect(text).toContain('service temperature 1073.15 K');
  expect(text).toContain('grain size 50 µm');
  expect(text).toMatch(/If bcc: .*(domain|lower bound)/);
});

test('a strength of next to nothing is told as none, with an error that nobody measured', () => {
  const { text } = paragraph('Cu50Fe50', 'strength');
  expect(text).toContain('If fcc: 0 MPa, outside the domain of the model, error not measured.');
  expect(text).not.toMatch(/\de-/);
});

test('conditions of an explanation are those that hold, each with its value', () => {
  expect(told('CoNi', { annealTemperature: 900 }).conditions).toEqual({
    annealTemperature: 900,
    serviceTemperature: 293.15,
    strainRate: 1e-3,
    grainSize: null,
  });
});

test('oxides that evaporate are named where their metals are present', () => {
  expect(paragraph('NbMoTaW', 'limits').text).toContain('molybdenum and tungsten');
  expect(paragraph('CoCrFeNi', 'limits').text).not.toContain('evaporate');
});

// Mg 923, Al 933.47 K: molten at the default anneal of 1273 K, solid at 700; CoCrFeNi melts near 1870 K.
test('an anneal that melts the alloy is told, since what is told at it is of no solid', () => {
  const molten = /At the anneal temperature of 1273 K it would be molten \(mean melting temperature 928 K\)/;
  expect(paragraph('AlMg', 'limits').text).toMatch(molten);
  expect(paragraph('AlMg', 'limits', { annealTemperature: 700 }).text).not.toContain('molten');
  expect(paragraph('CoCrFeNi', 'limits').text).not.toContain('molten');
});

test('what cannot be computed is said to be so', () => {
  const { paragraphs } = explain(parseAlloy('CoCrFeNi'), withoutPair('Co', 'Cr'));
  const text = (subject: string) => paragraphs.find((one) => one.subject === subject)!.text;
  for (const subject of ['ordering', 'demixing', 'compounds', 'pairs']) {
    expect(text(subject)).toMatch(/^Not computed, for want of data/);
  }
  expect(text('composition')).toContain('Without a value for want of data: mixing enthalpy');
});

test('whatever the alloy, paragraphs are whole sentences without a hole in them', () => {
  fc.assert(
    fc.property(alloys(facts.symbols, { least: 1, most: 8 }), (alloy) => {
      for (const { text, heading, sources } of explain(alloy, facts).paragraphs) {
        expect(text).toMatch(/^[\p{L}\d].*\.$/u);
        expect(`${heading} ${text} ${sources.join(' ')}`).not.toMatch(/null|NaN|undefined|Infinity/);
      }
    }),
    { numRuns: 40 },
  );
});

// Invented; Takeuchi & Inoue 2005 have −22 kJ/mol for Al–Ni.
test('where a pair value of one’s own holds, every paragraph that it enters names it beside the published source', () => {
  const own = {
    ...{ a: 'Al', b: 'Ni', mixingEnthalpy: -30, source: 'invented' },
    ...{ import: 3, importName: 'trials', importedAt: '2026-11-29T08:15:00.000Z' },
  };
  const line = 'Al–Ni −30 kJ/mol: own value of 2026-11-29, import 3 (trials): invented; published: −22';
  const sourcesOf = (alloy: string, pairs: (typeof own)[]) => {
    const { paragraphs } = explain(
      parseAlloy(alloy),
      factsFor(Object.keys(parseAlloy(alloy)), { pairs }),
      {},
      { pairs },
    );
    return Object.fromEntries(paragraphs.map(({ subject, sources }) => [subject, sources]));
  };
  const named = (all: Record<string, readonly string[]>) =>
    Object.keys(all).filter((subject) => all[subject]!.includes(line));
  const found = sourcesOf('AlCoCrFeNi', [own]);
  expect(named(found).sort()).toEqual(
    ['composition', 'phases', 'rules', 'ordering', 'demixing', 'compounds', 'pairs'].sort(),
  );
  for (const subject of ['ordering', 'demixing', 'compounds', 'pairs'])
    expect(found[subject]!.join()).toContain('Takeuchi & Inoue');
  // Without it, or for an alloy that the pair is not in, nothing is said.
  expect(named(sourcesOf('AlCoCrFeNi', []))).toEqual([]);
  expect(named(sourcesOf('CoCrFeNi', [own]))).toEqual([]);
});
