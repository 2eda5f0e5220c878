import { type CheckedData, disagreements, numberOf } from './checkedData.ts';

/** Open or directional structures: half the nearest distance says little of the volume of an atom. */
const openStructures = {
  B: 'icosahedra',
  C: 'graphite',
  Si: 'diamond structure',
  Ga: 'pairs of atoms',
  Ge: 'diamond structure',
  Sb: 'layers; radius assessed from glasses',
  Bi: 'layers; radius assessed from glasses',
};

/** Elements whose Miedema volume is not that of the solid at room temperature. */
const otherVolumes = {
  C: 'Miedema takes a hypothetical metal',
  Si: 'Miedema takes a hypothetical metal',
  Ge: 'Miedema takes a hypothetical metal',
  Sb: 'Miedema takes a hypothetical metal',
  Bi: 'Miedema takes a hypothetical metal',
  Yb: 'Miedema takes the trivalent metal; ytterbium is divalent at room temperature',
};

const AVOGADRO_PER_MOL = 6.02214076e23;

/**
 * Mass over density is the molar volume, and two columns know it by another way: the metallic
 * radius is 0.905 of the radius of a sphere of the atomic volume in close-packed structures
 * (π/(3√2) of the volume is filled) and 0.88 in bcc, and Miedema's surface is V^(2/3).
 */
export function atomicVolume({ elements }: CheckedData): string[] {
  const volumes = elements.map((element) => ({
    element,
    symbol: element.symbol,
    volume: numberOf(element, 'atomicMass') / numberOf(element, 'density'), // cm3/mol
  }));
  const radii = volumes.map(({ element, symbol, volume }) => ({
    symbol,
    found: numberOf(element, 'metallicRadius'),
    expected: 0.9 * Math.cbrt((3 * volume) / (4 * Math.PI * AVOGADRO_PER_MOL)) * 1e10, // cm to pm
  }));
  const surfaces = volumes.map(({ element, symbol, volume }) => ({
    symbol,
    found: numberOf(element, 'miedemaSurface'),
    expected: volume ** (2 / 3),
  }));
  return [
    ...disagreements('metallicRadius', 0.055, radii, openStructures),
    ...disagreements('miedemaSurface', 0.04, surfaces, otherVolumes),
  ];
}
