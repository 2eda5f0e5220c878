import type { Quantity } from '../definition/quantity.ts';
import { linear } from '../formula/expression.ts';
import { molarVolume } from '../formula/molarVolume.ts';

/**
 * Atomic volume V (cm³ per mole of atoms) from the molar volumes of the elements, A atomic masses
 * (u), ρ densities (g/cm³): V = Σ cᵢAᵢ/ρᵢ. 10 cm³/mol are 16.6 Å³ per atom.
 * @source mixing of molar volumes; common practice
 */
export const atomicVolume: Quantity = {
  id: 'atomicVolume',
  name: 'Atomic volume',
  symbol: 'V',
  unit: 'cm3/mol',
  formula: linear(molarVolume),
  notation: 'V = Σ cᵢAᵢ/ρᵢ',
  meaning: 'Volume of a mole of atoms if every element kept the volume that it has alone.',
  range: { min: 0 },
  decimals: 2,
  source: {
    authors: 'Mixing of molar volumes',
    year: null,
    where: 'rule of mixtures',
    checked: 'common practice, no source',
  },
  caution: 'Real volumes differ by a few per cent, most in alloys of aluminium with transition metals.',
};
