import type { Size } from '@tiegel/contract';
import { ask } from './overHttp.ts';

/** All of them on the finest grid have 1.4·10¹⁰ points: more than quick machines score in some seconds. */
const pool = [
  'Cr',
  'Fe',
  'Ni',
  'Co',
  'Mn',
  'Cu',
  'Al',
  'Ti',
  'V',
  'Mo',
  'Nb',
  'W',
  'Ta',
  'Zr',
  'Hf',
  'Si',
  'Pd',
  'Re',
  'Y',
  'Zn',
];

/** Searches of any size, with limits, ties, and rows that are kept in both ways. */
const specificationOf = (elements: number, step: number) => ({
  name: 'Long enough to be killed in',
  elements: { pool: pool.slice(0, elements) },
  components: 5,
  fractions: { step, min: 5, max: 40 },
  limits: [
    { quantity: 'mixingEnthalpy', min: -15, max: 5 },
    { quantity: 'valenceElectronConcentration', min: 7 },
  ],
  rank: [{ quantity: 'sizeMismatch', prefer: 'low' }],
  keep: 2000,
  keepPerSystem: 2,
});
export type Specification = ReturnType<typeof specificationOf>;

/** The smallest of them with at least so many grid points. */
export async function specificationWith(points: number, url: string): Promise<Specification> {
  for (const step of [5, 2.5, 1]) {
    for (let elements = 6; elements <= pool.length; elements += 1) {
      const specification = specificationOf(elements, step);
      const size = await ask<Size>(`${url}/api/v1/count`, specification);
      if (size.points >= points) return specification;
    }
  }
  throw new Error(`No search here has ${points} points.`);
}
