import { joinStore, openStore, type Store } from '@tiegel/store';
import { afterEach, expect, test } from 'vitest';
import { temporaryFolder } from '../../../../test/fixtures/temporaryFolder.ts';
import { candidateColumns, openImports } from '../../src/index.ts';

const closing: (() => unknown)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0).toReversed()) await close();
});

/** Imports over two connections of one file, as two processes have them. */
async function twoSides() {
  const folder = await temporaryFolder('brought');
  closing.push(folder.remove);
  const file = `${folder.path}/tiegel.sqlite`;
  const store: Store = openStore({ file, columns: candidateColumns });
  closing.push(() => store.close());
  const joined = joinStore({ file, columns: candidateColumns });
  closing.push(() => joined.close());
  return [openImports(store), openImports(joined)] as const;
}
/** Another request: what was held for the one before is looked through anew. */
const later = () => new Promise(setImmediate);

// Invented values.
const pairs = (value: number) => `a,b,mixingEnthalpy\nAl,Ni,${value}\n`;
const prices = 'symbol,pricePerKilogram,currency,date,source\nMn,3,CHF,2026-10-05,invented\n';
const alloys = 'composition,name,phases\nAlNi,trial 7,B2\n';

test('what another process brings, withdraws and brings back holds here at once, though it was held in memory', async () => {
  const [here, there] = await twoSides();
  const own = () => here.pairs().map(({ mixingEnthalpy }) => mixingEnthalpy);
  expect([own(), here.alloys(), here.prices()?.currency]).toEqual([[], [], 'EUR']);
  const { number } = there.enter('pairs', pairs(-24));
  there.enter('prices', prices);
  there.enter('alloys', alloys);
  await later();
  expect(own()).toEqual([-24]);
  expect(here.prices()?.currency).toBe('CHF');
  expect(here.alloys().map(({ name }) => name)).toEqual(['trial 7']);
  expect(here.behind([])).toEqual([1, 2]);
  there.withdraw(number);
  await later();
  expect(own()).toEqual([]);
  there.restore(number);
  await later();
  expect(own()).toEqual([-24]);
  // And the other way round.
  here.enter('pairs', pairs(-25));
  await later();
  expect(there.pairs().map(({ mixingEnthalpy }) => mixingEnthalpy)).toEqual([-25]);
  expect(there.preview('pairs', pairs(-25)).counts).toMatchObject({ same: 1 });
});

test('one stretch of work sees one state of the data', async () => {
  const [here, there] = await twoSides();
  expect(here.pairs()).toEqual([]);
  await later();
  const before = here.pairs();
  there.enter('pairs', pairs(-24));
  expect([here.pairs(), here.behind([])]).toEqual([before, []]);
  await later();
  expect(here.behind([])).toEqual([1]);
});
