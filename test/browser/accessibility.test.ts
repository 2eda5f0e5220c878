import type { CandidatePage } from '@tiegel/contract';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeOf, seriousFindings, turnNarrowAndDark, wideAndLight } from './axeOf.ts';
import { openSite, type Site } from './site.ts';

let site: Site;
/** address of each page, by its name */
let paths: Record<string, string>;

beforeAll(async () => {
  site = await openSite();
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const { id } = await site.finish(specification);
  const none = await site.finish({ ...specification, limits: [{ quantity: 'density', max: 6.2 }] });
  const { items } = await site.api<CandidatePage>(`/searches/${id}/candidates?limit=1`);
  const composition = Object.entries(items[0]!.composition).flat().join('');
  const { number } = await bringIn(
    'materials',
    'material,contains,amounts,purity,price,currency,melting\nFeNb66,Fe34Nb66,wt.%,98.5,40,EUR,1853\n',
  );
  paths = {
    'the form': '/ask',
    'the list of searches': '/searches',
    'a search': `/searches/${id}?max.density=7.8&has=Ti`,
    'a result as a scatter': `/searches/${id}?view=scatter&brush=1,3,7.4,7.8`,
    'a result as distributions': `/searches/${id}?view=distributions`,
    'the elements of a result': `/searches/${id}?view=elements`,
    'the systems of a result': `/searches/${id}?view=systems`,
    'the unexplored of a result': `/searches/${id}?view=unexplored`,
    'a search that found nothing': `/searches/${none.id}`,
    'a candidate': `/searches/${id}/candidates/${composition}`,
    'an alloy': '/alloys/CoCrFeMnNi?replace=Co&with=Ni,Cu',
    'an alloy without a basis': '/alloys/Li50Sc50',
    'where alloys are written': '/alloys',
    'no alloy': '/alloys/CoXx20',
    'a comparison': '/compare?alloy=CoCrFeMnNi&alloy=CoCrFeNi&alloy=NbMoTaW',
    'the evidence': '/evidence',
    'the data': '/data',
    'the elements': '/data/elements',
    'one element': '/data/elements/Be',
    'the pairs as a matrix': '/data/pairs?show=matrix&element=Al,Co,Cr,Fe,Ni',
    'the pairs as a list': '/data/pairs?show=list&element=Fe',
    'the prices': '/data/prices',
    'the published alloys': '/data/alloys',
    'the raw materials': '/data/materials',
    'what was brought in': '/data/imports',
    'one import': `/data/imports/${number}`,
    'bringing in': '/data/imports/new?kind=pairs',
    'the versions of the data': '/data/versions',
    'no such page': '/nowhere',
    'no such search': '/searches/none',
  };
});
afterAll(() => site?.close());

async function bringIn(kind: string, csv: string): Promise<{ number: number }> {
  const headers = { 'content-type': 'text/csv', 'idempotency-key': 'for-accessibility' };
  const answer = await fetch(`${site.url}/api/v1/imports?kind=${kind}`, {
    method: 'POST',
    body: csv,
    headers,
  });
  return (await answer.json()) as { number: number };
}

/** What tells that a page is whole, by its name. */
const whole: Record<string, string> = {
  'the form': '.card',
  'the list of searches': '.search-line',
  'a search': '.candidates tbody a, .candidate-card',
  'a result as a scatter': '.selected .candidates tbody a, .selected .candidate-card',
  'a result as distributions': '.histogram .bar',
  'the elements of a result': '.figure .bar',
  'the systems of a result': '.systems tbody a, .system-cards a',
  'the unexplored of a result': '.systems tbody a, .system-cards a',
  'a search that found nothing': '.note-warning',
  'a candidate': '.quantity',
  'an alloy': '.substitutes',
  'an alloy without a basis': '.verdict-line',
  'where alloys are written': '.alloy-entry',
  'no alloy': '[role="alert"]',
  'a comparison': '.strip-mark',
  'the evidence': '.reliability-dot',
  'the data': '.data-overview code',
  'the elements': '.data-table tbody a, .data-card',
  'one element': '.data-partners',
  'the pairs as a matrix': '.pair-matrix td',
  'the pairs as a list': '.data-table tbody a, .data-card',
  'the prices': '.data-table tbody a, .data-card',
  'the published alloys': '.data-table tbody a, .data-card',
  'the raw materials': '.data-materials',
  'what was brought in': '.import-line',
  'one import': '.import-rows',
  'bringing in': '#import-rows',
  'the versions of the data': '.data-version',
  'no such page': 'h1',
  'no such search': '[role="alert"]',
};
// axe-core's rules for WCAG 2.2 A and AA, and its best practices.
test.each(Object.keys(whole))(
  '%s has no serious finding in light on a wide screen, in dark on a phone',
  async (name) => {
    const { page } = await site.visit(paths[name]!, wideAndLight);
    const isWhole = () => page.locator(whole[name]!).first().waitFor();
    await isWhole();
    if (name === 'the form') {
      await page.getByRole('button', { name: 'As the demonstration' }).click();
      await page.locator('.size-numbers').waitFor();
    }
    expect(await seriousFindings(page)).toEqual([]);
    await turnNarrowAndDark(page);
    await isWhole();
    expect(await seriousFindings(page)).toEqual([]);
  },
);

test('what is wrong with a form is found by axe where something is wrong', async () => {
  const { page } = await site.visit('/ask');
  await page.locator('.card').first().waitFor();
  await page.evaluate("document.querySelector('label[for=field-components-min]').remove()");
  const { violations } = await axeOf(page, { runOnly: { type: 'rule', values: ['label'] } });
  expect(violations.map(({ id }) => id)).toEqual(['label']);
});
