import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseAlloy, symbols } from '@tiegel/elements';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { neighbourhood } from '../../src/ask/begin/neighbourhood.ts';
import { readPartners } from '../../src/ask/begin/readPartners.ts';
import { templates } from '../../src/ask/begin/templates.ts';
import { type Draft, emptyDraft } from '../../src/ask/draft/draft.ts';
import { draftOf } from '../../src/ask/draft/draftOf.ts';
import { specificationOf } from '../../src/ask/draft/specificationOf.ts';

const folder = join(import.meta.dirname, '../../src/ask/begin/templates');

test('every template file is offered, and goes through the form unchanged', async () => {
  const offered = await Promise.all(templates.map(({ specification }) => specification()));
  const files = readdirSync(folder).map((name) => JSON.parse(readFileSync(join(folder, name), 'utf8')));
  const names = (all: { name?: string }[]) => all.map(({ name }) => name).sort();
  expect(names(offered)).toEqual(names(files));
  for (const one of offered) expect(specificationOf(draftOf(one)).specification).toEqual(one);
});

test('a neighbourhood has the elements of the alloy, shares around its own, and partners from none on', () => {
  const { specification } = specificationOf({
    ...emptyDraft,
    ...neighbourhood({ composition: { Cr: 20, Fe: 45, Ni: 32, Ti: 3 }, within: 5, partners: ['Mo', 'Fe'] }),
  });
  expect(specification).toMatchObject({
    elements: { pool: ['Cr', 'Fe', 'Mo', 'Ni', 'Ti'], require: ['Cr', 'Fe', 'Ni'] },
    components: { min: 3, max: 5 },
    fractions: {
      step: 2.5,
      each: {
        Cr: { min: 15, max: 25 },
        Fe: { min: 40, max: 50 },
        Mo: { max: 5 },
        Ni: { min: 27, max: 37 },
        Ti: { max: 8 },
      },
    },
  });
});

test('the alloy itself lies within the bounds of its neighbourhood, whatever it is', () => {
  const alloy = fc
    .uniqueArray(fc.constantFrom(...symbols), { minLength: 1, maxLength: 8 })
    .chain((some) =>
      fc.tuple(...some.map((symbol) => fc.integer({ min: 1, max: 40 }).map((n) => `${symbol}${n}`))),
    )
    .map((parts) => parseAlloy(parts.join(' ')));
  fc.assert(
    fc.property(alloy, fc.double({ min: 0.2, max: 50, noNaN: true }), (composition, within) => {
      const draft = { ...emptyDraft, ...neighbourhood({ composition, within, partners: [] }) } as Draft;
      const { specification, unclear } = specificationOf(draft);
      expect(unclear).toEqual({});
      const { step, each } = specification.fractions as {
        step: number;
        each: Record<string, { min?: number; max: number }>;
      };
      for (const [symbol, share] of Object.entries(composition)) {
        expect(each[symbol]!.min ?? 0).toBeLessThanOrEqual(share + 1e-4);
        expect(each[symbol]!.max).toBeGreaterThanOrEqual(Math.min(share, 100) - 1e-4);
        if (specification.elements!.require.includes(symbol))
          expect(each[symbol]!.min ?? step).toBeGreaterThan(0);
      }
    }),
  );
});

test('partners are read as people list them, and what is no element is told', () => {
  expect(readPartners('Mo, V;W  Mo Xx', symbols)).toEqual({ partners: ['Mo', 'V', 'W'], unknown: ['Xx'] });
  expect(readPartners('  ', symbols)).toEqual({ partners: [], unknown: [] });
});
