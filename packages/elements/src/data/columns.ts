import type { SourceCode } from './sources.ts';

/** One kind of value: id as in facts and formulas, unit as printed ('' for a plain number), the source unless a row deviates. */
export interface Column {
  id: string;
  name: string;
  symbol: string;
  unit: string;
  meaning: string;
  /** 'words' columns never enter facts. */
  holds: 'numbers' | 'words';
  source: SourceCode;
}

/** The columns of element data. */
export const columns = [
  { id: 'atomicMass', name: 'Atomic mass', symbol: 'A', unit: 'u', holds: 'numbers', source: 'IUPAC', meaning: 'Standard atomic weight.' },
  { id: 'density', name: 'Density', symbol: 'ρ', unit: 'g/cm3', holds: 'numbers', source: 'CRC', meaning: 'Density of the solid near room temperature.' },
  { id: 'meltingTemperature', name: 'Melting temperature', symbol: 'T_m', unit: 'K', holds: 'numbers', source: 'CRC', meaning: 'Melting point at 1 atm.' },
  { id: 'boilingTemperature', name: 'Boiling temperature', symbol: 'T_b', unit: 'K', holds: 'numbers', source: 'CRC', meaning: 'Boiling point at 1 atm; of carbon, the sublimation point.' },
  { id: 'metallicRadius', name: 'Metallic radius', symbol: 'r', unit: 'pm', holds: 'numbers', source: 'SM', meaning: 'Atomic radius in the metal; mostly half the nearest distance in the structure of the element itself.' },
  { id: 'paulingElectronegativity', name: 'Pauling electronegativity', symbol: 'χ', unit: '', holds: 'numbers', source: 'WE', meaning: 'Electronegativity on the Pauling scale, from bond energies.' },
  { id: 'allenElectronegativity', name: 'Allen electronegativity', symbol: 'χ_A', unit: '', holds: 'numbers', source: 'MP', meaning: 'Mean energy of the valence electrons, on the Pauling scale.' },
  { id: 'valenceElectrons', name: 'Valence electrons', symbol: 'VEC', unit: '', holds: 'numbers', source: 'group', meaning: 'Electrons in the valence band, d electrons included.' },
  { id: 'youngsModulus', name: "Young’s modulus", symbol: 'E', unit: 'GPa', holds: 'numbers', source: 'WE', meaning: "Young’s modulus of the polycrystal at room temperature." },
  { id: 'shearModulus', name: 'Shear modulus', symbol: 'G', unit: 'GPa', holds: 'numbers', source: 'WE', meaning: 'Shear modulus of the polycrystal at room temperature.' },
  { id: 'bulkModulus', name: 'Bulk modulus', symbol: 'B', unit: 'GPa', holds: 'numbers', source: 'WE', meaning: 'Bulk modulus of the polycrystal at room temperature.' },
  { id: 'miedemaPotential', name: 'Miedema potential', symbol: 'φ*', unit: 'V', holds: 'numbers', source: 'MD', meaning: "Potential of the electronic charge in Miedema’s model." },
  { id: 'miedemaElectronDensity', name: 'Miedema electron density', symbol: 'n_ws^(1/3)', unit: 'du⅓', holds: 'numbers', source: 'MD', meaning: "Cube root of the electron density at the boundary of the Wigner-Seitz cell, in Miedema’s density units (du)." },
  { id: 'miedemaSurface', name: 'Miedema surface', symbol: 'V^(2/3)', unit: 'cm2', holds: 'numbers', source: 'MD', meaning: 'Molar volume (cm³) to the power 2/3.' },
  { id: 'miedemaClass', name: 'Miedema class', symbol: '', unit: '', holds: 'words', source: 'MD', meaning: "Which constant of Miedema’s model holds: transition (with Cu, Ag, Au and the lanthanides) or non-transition." },
  { id: 'miedemaHybridisation', name: 'Miedema hybridisation constant', symbol: 'R', unit: '', holds: 'numbers', source: 'MD', meaning: "Factor of the hybridisation term of Miedema’s model between a transition and a non-transition element." },
  { id: 'miedemaVolume', name: 'Miedema volume constant', symbol: 'a', unit: '', holds: 'numbers', source: 'MD', meaning: "Change of volume on alloying in Miedema’s model." },
  { id: 'miedemaTransformation', name: 'Miedema transformation enthalpy', symbol: 'H_trans', unit: 'kJ/mol', holds: 'numbers', source: 'MD', meaning: 'Energy that turns the element into a metal; 0 for a metal.' },
] as const satisfies readonly Column[];
export type ColumnId = (typeof columns)[number]['id'];

/** The columns of element pairs. */
export const pairColumns = [
  { id: 'mixingEnthalpy', name: 'Pair mixing enthalpy', symbol: 'H_ij', unit: 'kJ/mol', holds: 'numbers', source: 'TI', meaning: 'Enthalpy of mixing of the equimolar binary liquid, per mole of atoms; negative where unlike atoms attract.' },
] as const satisfies readonly Column[];

/** The column that a price list adds to facts; its source is the list. 'currency' stands for the list's currency. */
export const priceColumn = { id: 'price', name: 'Price', symbol: 'p', unit: 'currency/kg', meaning: 'Price of the pure element in the price list in force.' } as const;
