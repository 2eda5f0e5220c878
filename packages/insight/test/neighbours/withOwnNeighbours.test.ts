import { parseAlloy } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { nearestPublished, withOwnNeighbours } from '../../src/index.ts';

// Invented.
const own = { name: 'trial 7', phases: 'FCC', doi: null, import: 3 };

test('one’s own alloys stand among the published ones by distance, and say that they are', () => {
  const asked = parseAlloy('Co26Cr24Fe25Ni25');
  const published = nearestPublished(asked);
  expect(withOwnNeighbours(asked, published, []).map(({ own, ...one }) => [own, one.formula])).toEqual(
    published.map(({ formula }) => [false, formula]),
  );
  const near = { ...own, composition: asked };
  const far = { ...own, name: 'far', composition: parseAlloy('WTa') };
  const [first, ...others] = withOwnNeighbours(asked, published, [far, near]);
  // A distance of 0 by hand: the same composition.
  expect(first).toMatchObject({ formula: 'trial 7', own: true, import: 3, distance: 0, doi: [] });
  expect(others.map(({ formula }) => formula)).toEqual(published.map(({ formula }) => formula));
});

test('a melt is told with its id and how its phases were observed; however many are near, the published ones stay', () => {
  const asked = parseAlloy('Co26Cr24Fe25Ni25');
  const published = nearestPublished(asked);
  const melt = (number: number) => ({
    ...{ name: `melt ${number}`, composition: asked, phases: 'FCC', doi: null, import: null },
    ...{ melt: `m${number}`, methods: ['X-ray diffraction'] },
  });
  const known = withOwnNeighbours(
    asked,
    published,
    Array.from({ length: 12 }, (_, at) => melt(at)),
  );
  expect(known[0]).toMatchObject({
    ...{ formula: 'melt 0', own: true, import: null, melt: 'm0', methods: ['X-ray diffraction'] },
  });
  expect(known.filter((one) => one.own)).toHaveLength(published.length);
  expect(known.filter((one) => !one.own).map(({ formula, melt: of }) => [formula, of])).toEqual(
    published.map(({ formula }) => [formula, null]),
  );
});

// By hand: of 100 atoms 12 are Cr instead of Co, more than to any of the nearest published alloys.
test('a melt within 15 % of the atoms is told though many published alloys are nearer; one without a name by its composition', () => {
  const asked = parseAlloy('Co25Cr25Fe25Ni25');
  const near = { ...own, name: '', composition: parseAlloy('Co13Cr37Fe25Ni25') };
  const published = nearestPublished(asked);
  expect(published.at(-1)!.distance).toBeLessThan(0.12);
  const found = withOwnNeighbours(asked, published, [near]).filter((one) => one.own);
  expect(found).toMatchObject([{ formula: 'Co13Cr37Fe25Ni25', distance: expect.closeTo(0.12, 12) }]);
});
