import type { Quantity } from '../definition/quantity.ts';
import { column, divide, elementProduct, elementQuotient, linear } from '../formula/expression.ts';

/**
 * Cost of the pure elements per litre of alloy (the price list's currency per L): cost · density,
 * g/cm³ being kg/L. The mass of the alloy cancels, so it is stated as Σ cᵢAᵢpᵢ / Σ cᵢAᵢ/ρᵢ: one
 * quotient of two sums has tighter bounds than the product of two quotients.
 * @source from cost and density
 */
export const costPerLitre: Quantity = {
  id: 'costPerLitre',
  name: 'Cost per litre',
  symbol: 'p_V',
  unit: 'currency/L',
  formula: divide(
    linear(elementProduct(column('atomicMass'), column('price'))), // u currency/kg
    linear(elementQuotient(column('atomicMass'), column('density'))), // u cm³/g = u L/kg
  ),
  notation: 'p_V = Σ cᵢAᵢpᵢ / Σ (cᵢAᵢ/ρᵢ)',
  meaning: 'What the pure elements in a litre of the alloy cost: the price of a part of given shape.',
  range: { min: 0 },
  decimals: 2,
  source: { authors: 'Mean by volume', year: null, where: 'price list in force', checked: 'definition' },
  caution: 'Prices of pure elements at a date: no master alloys, purities, losses or melting.',
};
