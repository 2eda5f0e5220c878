import type { Quantity } from '../definition/quantity.ts';
import { constant, elementProduct, linear, share } from '../formula/expression.ts';

/**
 * Elements that grow protective oxide scales (at.%): 100 (c_Al + c_Cr + c_Si).
 * @source common practice, no source
 */
export const oxideFormers: Quantity = {
  id: 'oxideFormers',
  name: 'Formers of protective oxides',
  symbol: 'c_ox',
  unit: 'at.%',
  // The 100 stands inside the sum, which is then exact: 7 at.% are 7, not 7.000000000000001.
  formula: linear(elementProduct(constant(100, 'at.%'), share('Al', 'Cr', 'Si'))),
  notation: 'c_ox = 100 (c_Al + c_Cr + c_Si)',
  meaning: 'Aluminium, chromium and silicon together: those that can shield an alloy from hot air.',
  range: { min: 0, max: 100 },
  decimals: 1,
  source: {
    authors: 'Al, Cr and Si',
    year: null,
    where: 'the usual formers of alumina, chromia and silica',
    checked: 'common practice, no source',
  },
  caution:
    'A count, not a rate of oxidation: which scale grows depends on the rest, and oxides of Mo, W, Re, V, Os and Ru melt or evaporate.',
};
