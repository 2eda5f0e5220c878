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
  expect(others.map(({ formula }) => formula)).toEqual(published.slice(0, -1).map(({ formula }) => formula));
});
