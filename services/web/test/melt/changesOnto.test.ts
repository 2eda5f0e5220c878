import { expect, test } from 'vitest';
import { changesOnto } from '../../src/melt/changesOnto.ts';
import { emptyDraft, emptyRow, type MeltDraft } from '../../src/melt/meltDraft.ts';

const row = (material: string, mass: string) => ({ ...emptyRow, material, mass });
const before: MeltDraft = {
  ...emptyDraft(),
  hardness: '150',
  weighed: [row('Co', '10'), row('Ni', '10')],
};

test('changes to one version go onto a newer one, and take nothing else of it away', () => {
  const newest = { ...before, density: '7.9' };
  const { draft, clashes } = changesOnto(newest, { ...before, hardness: '160' }, before);
  expect(clashes).toEqual([]);
  expect(draft).toEqual({ ...newest, hardness: '160' });
});

test('what both changed to the same is no clash', () => {
  const both = { ...before, hardness: '160' };
  expect(changesOnto(both, both, before)).toEqual({ draft: both, clashes: [] });
});

test('what both changed to different values is told, and stands as it is chosen', () => {
  const mine = { ...before, hardness: '160', notes: 'mine' };
  const newest = { ...before, hardness: '155' };
  const open = changesOnto(newest, mine, before);
  expect(open.clashes).toEqual([{ place: 'hardness', mine: '160', theirs: '155' }]);
  expect(changesOnto(newest, mine, before, { hardness: 'mine' }).draft).toEqual(mine);
  const theirs = changesOnto(newest, mine, before, { hardness: 'theirs' });
  expect(theirs).toEqual({ draft: { ...mine, hardness: '155' }, clashes: [] });
});

test('two people correct different masses: both stand; the same mass is a clash', () => {
  const mine = { ...before, weighed: [row('Co', '10.1'), row('Ni', '10')] };
  const newest = { ...before, weighed: [row('Co', '10'), row('Ni', '9.9'), row('Al', '1')] };
  expect(changesOnto(newest, mine, before)).toEqual({
    draft: { ...before, weighed: [row('Co', '10.1'), row('Ni', '9.9'), row('Al', '1')] },
    clashes: [],
  });
  const other = { ...before, weighed: [row('Co', '10.2'), row('Ni', '10')] };
  expect(changesOnto(other, mine, before).clashes.map(({ place }) => place)).toEqual(['weighed Co']);
});

test('a row that somebody took away while another corrected it is a clash', () => {
  const mine = { ...before, weighed: [row('Co', '10')] };
  const newest = { ...before, weighed: [row('Co', '10'), row('Ni', '9.9')] };
  const { clashes } = changesOnto(newest, mine, before);
  expect(clashes).toEqual([{ place: 'weighed Ni', mine: undefined, theirs: row('Ni', '9.9') }]);
  expect(changesOnto(newest, mine, before, { 'weighed Ni': 'mine' }).draft.weighed).toEqual([
    row('Co', '10'),
  ]);
});

test('an anneal is one place', () => {
  const annealed = { annealed: true, annealTemperature: '1473', annealHours: '24' };
  const start: MeltDraft = { ...before, ...annealed };
  const mine: MeltDraft = { ...start, annealTemperature: '1400' };
  const newest: MeltDraft = { ...start, annealed: false };
  expect(changesOnto(newest, mine, start).clashes.map(({ place }) => place)).toEqual(['anneal']);
  expect(changesOnto(newest, mine, start, { anneal: 'mine' }).draft).toEqual(mine);
});
