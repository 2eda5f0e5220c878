import { ProblemError } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { ownAlloysCsv, parseAlloy, readOwnAlloys } from '../../src/index.ts';

const codesOf = (text: string) => {
  try {
    readOwnAlloys(text);
  } catch (error) {
    if (error instanceof ProblemError) return error.faults.map(({ code, pointer }) => [code, pointer]);
    throw error;
  }
  return [];
};

// Invented alloys.
const text = `composition,name,phases,process,doi,note
CoCrFeNi,invented trial 1,FCC,cast,,
Al20Co20Cr20Fe20Ni20,,B2 + BCC,"cast, then annealed",10.1000/ABC-1,"says ""ordered"""
CoNi,,,,,
`;

test('compositions, phases in their one order, and what is not told is null', () => {
  const alloys = readOwnAlloys(text);
  expect(alloys.map(({ phases, process, doi }) => [phases, process, doi])).toEqual([
    ['FCC', 'cast', null],
    ['BCC+B2', 'cast, then annealed', '10.1000/abc-1'],
    [null, null, null],
  ]);
  expect(alloys[0]!.composition).toEqual(parseAlloy('CoCrFeNi'));
  expect(alloys[1]!.note).toBe('says "ordered"');
  expect(readOwnAlloys(ownAlloysCsv(alloys))).toEqual(alloys);
});

test('phases are read as people and the page of a melt write them', () => {
  const phasesOf = (written: string) => readOwnAlloys(`composition,phases\nCoNi,${written}\n`)[0]!.phases;
  expect(phasesOf('fcc + sigma')).toBe('FCC+sigma');
  expect(phasesOf('FCC+σ')).toBe('FCC+sigma');
  expect(phasesOf('L1₂+\u00B5+Fcc')).toBe('FCC+L12+mu');
  expect(phasesOf('\u03BC+laves+b2+SEC.')).toBe('B2+Laves+mu+Sec.');
  // One is what nobody named, the other a label of the published records.
  expect([phasesOf('other'), phasesOf('Other')]).toEqual(['other', 'Other']);
});

test('phases that are none are answered with what can be written, and what it means', () => {
  try {
    readOwnAlloys('composition,phases\nCoNi,gamma\n');
    expect.unreachable();
  } catch (error) {
    const { detail, remedy } = (error as ProblemError).faults[0]!;
    expect(detail).toBe('The field "phases" on line 2 is "gamma", which is not possible here.');
    expect(remedy).toContain('Sec., a second phase that nobody identified, and Other');
  }
});

test('all faults come at once, each with its place', () => {
  const wrong = `composition,name,phases,process,doi,note
CoCrFeNi,,FCC,,,
CrCoFeNi,,BCC,,,
CoXx,,FCC+gamma,,https://doi.org/10.1000/1,
CoNi,${'n'.repeat(101)},,,,
`;
  expect(codesOf(wrong)).toEqual([
    ['element/unknown', '/rows/2/composition'],
    ['request/wrong-value', '/rows/2/phases'],
    ['request/wrong-value', '/rows/2/doi'],
    ['request/wrong-value', '/rows/3/name'],
    ['import/repeated', '/rows/1'],
  ]);
});
