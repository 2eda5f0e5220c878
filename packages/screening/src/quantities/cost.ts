import type { Quantity } from '../definition/quantity.ts';
import { column, divide, elementProduct, linear } from '../formula/expression.ts';

/**
 * Cost of the pure elements per kilogram of alloy (the price list's currency per kg), p prices
 * per kilogram, A atomic masses (u): Σ cᵢAᵢpᵢ / Σ cᵢAᵢ.
 * @source mean by mass; prices: the price list in force
 */
export const cost: Quantity = {
  id: 'cost',
  name: 'Cost',
  symbol: 'p',
  unit: 'currency/kg',
  formula: divide(
    linear(elementProduct(column('atomicMass'), column('price'))), // u currency/kg
    linear('atomicMass'), // u
  ),
  notation: 'p = Σ cᵢAᵢpᵢ / Σ cᵢAᵢ',
  meaning: 'What the pure elements in a kilogram of the alloy cost, by the price list in force.',
  range: { min: 0 },
  decimals: 2,
  source: { authors: 'Mean by mass', year: null, where: 'price list in force', checked: 'definition' },
  caution: 'Prices of pure elements at a date: no master alloys, purities, losses or melting.',
};
