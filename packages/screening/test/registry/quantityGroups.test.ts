import { expect, test } from 'vitest';
import { quantities, quantityGroups } from '../../src/index.ts';

test('every quantity is in exactly one group, and every group holds quantities alone', () => {
  const grouped = quantityGroups.flatMap(({ ids }) => ids).sort();
  expect(grouped).toEqual(quantities.map(({ id }) => id).sort());
});
