import type { Quantity } from '../definition/quantity.ts';
import { column, divide, elementQuotient, linear } from '../formula/expression.ts';

/**
 * Density ρ (g/cm³) from the molar volumes of the elements, A atomic masses (u):
 *   ρ = Σ cᵢAᵢ / Σ cᵢAᵢ/ρᵢ.
 * @source mixing of molar volumes; common practice
 */
export const density: Quantity = {
  id: 'density',
  name: 'Density',
  symbol: 'ρ',
  unit: 'g/cm3',
  formula: divide(
    linear('atomicMass'), // u
    linear(elementQuotient(column('atomicMass'), column('density'))), // u cm³/g
  ),
  notation: 'ρ = Σ cᵢAᵢ / Σ (cᵢAᵢ/ρᵢ)',
  meaning: 'Mass per volume if every element kept the volume that it has alone.',
  range: { min: 0 },
  decimals: 2,
  source: {
    authors: 'Mixing of molar volumes',
    year: null,
    where: 'rule of mixtures',
    checked: 'common practice, no source',
  },
  caution:
    'Real volumes differ by a few per cent, most in alloys of aluminium with transition metals; porosity is not in it.',
};
