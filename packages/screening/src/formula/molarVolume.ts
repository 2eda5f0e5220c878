import { column, constant, elementProduct, elementQuotient } from './expression.ts';

/**
 * The molar volume of each element alone, Vᵢ = Aᵢ/ρᵢ (cm³/mol), A atomic masses (u), ρ densities
 * (g/cm³). 1 u of a particle is 1 g of a mole of them (to 3e-10 since 2019).
 */
export const molarVolume = elementProduct(
  constant(1, 'g/(mol u)'),
  elementQuotient(column('atomicMass'), column('density')),
);
