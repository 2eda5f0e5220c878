import { factsFor, parseAlloy } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { explain, withOwnAlloys } from '../../src/index.ts';

const composition = parseAlloy('Co26Cr24Fe25Ni25');
const told = explain(composition, factsFor(Object.keys(composition)));

// Invented. By hand: of 100 atoms one is Cr instead of Co, so 1 % differ.
const own = {
  ...{ name: 'trial 7', phases: 'FCC', doi: '10.0000/invented', import: 3 },
  composition: parseAlloy('Co25Cr25Fe25Ni25'),
};

test('alloys of one’s own nearby are told behind the published ones, with their source', () => {
  const { nearest, paragraphs, phase } = withOwnAlloys(told, [own]);
  expect(nearest[0]).toMatchObject({ formula: 'trial 7', own: true, distance: expect.closeTo(0.01, 12) });
  const place = paragraphs.findIndex(({ subject }) => subject === 'broughtIn');
  expect(paragraphs[place - 1]!.subject).toBe('published');
  expect(paragraphs[place]!.text).toBe('trial 7 (own, import 3), 1 % of the atoms apart: FCC.');
  expect(paragraphs[place]!.sources).toEqual(['trial 7: doi 10.0000/invented']);
  expect(paragraphs.toSpliced(place, 1)).toEqual(told.paragraphs);
  expect(phase).toEqual(told.phase);
});

test('without one nearby nothing else is said', () => {
  const { paragraphs, nearest } = withOwnAlloys(told, [{ ...own, composition: parseAlloy('WTa') }]);
  expect(paragraphs).toEqual(told.paragraphs);
  expect(nearest.some((one) => one.own)).toBe(false);
});

test('own melts nearby are told as weighed, with how their phases were observed; the estimate knows nothing of them', () => {
  const melt = {
    ...{ name: 'First trial', doi: null, import: null, melt: 'mk3f', composition: own.composition },
    ...{ phases: 'FCC+B2', methods: ['X-ray diffraction', 'light microscopy'] },
  };
  const unseen = { ...melt, name: 'Second trial', melt: 'mk4g', phases: null, methods: [] };
  const { nearest, paragraphs, phase } = withOwnAlloys(told, [melt, unseen]);
  expect(nearest[0]).toMatchObject({ formula: 'First trial', own: true, melt: 'mk3f', import: null });
  expect(paragraphs.find(({ subject }) => subject === 'broughtIn')!.text).toBe(
    'First trial (own melt, as weighed Co 25.0, Cr 25.0, Fe 25.0, Ni 25.0 at.%), 1 % of the atoms apart: FCC+B2, ' +
      'observed by X-ray diffraction and light microscopy. ' +
      'Second trial (own melt, as weighed Co 25.0, Cr 25.0, Fe 25.0, Ni 25.0 at.%), 1 % of the atoms apart: ' +
      'phases not looked at yet.',
  );
  expect(phase).toEqual(told.phase);
  expect(nearest.filter((one) => !one.own)).toHaveLength(told.nearest.length);
});
