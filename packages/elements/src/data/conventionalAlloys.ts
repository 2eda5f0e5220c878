import type { SourceCode } from './sources.ts';

/** Where all of them are from (sources.ts). */
export const nominalSource: SourceCode = 'NOM';

/**
 * Alloys in daily use and their nominal compositions in wt.%: middle of the range that the
 * designation allows, half of the largest amount where only that is given, the balance for the
 * base; phosphorus, sulphur, nitrogen, oxygen and traces are left out. Designations (UNS, EN) and
 * compositions are from memory, no standard was open: right to some tenths of a per cent, which
 * moves an entropy by less than 0.3 J/(mol K), and good for a comparison, not for a melt.
 */
export const nominalAlloys: readonly NominalAlloy[] = [
  { name: 'Low-carbon steel 1018', designation: 'UNS G10180', base: 'Fe', weightPercent: { C: 0.18, Mn: 0.75 } },
  { name: 'Stainless steel 304', designation: 'UNS S30400, EN 1.4301', base: 'Fe', weightPercent: { C: 0.04, Cr: 19, Mn: 1, Ni: 9.25, Si: 0.5 } },
  { name: 'Stainless steel 316', designation: 'UNS S31600, EN 1.4401', base: 'Fe', weightPercent: { C: 0.04, Cr: 17, Mn: 1, Mo: 2.5, Ni: 12, Si: 0.5 } },
  { name: 'Duplex stainless steel 2205', designation: 'UNS S32205, EN 1.4462', base: 'Fe', weightPercent: { C: 0.015, Cr: 22.5, Mn: 1, Mo: 3.25, Ni: 5.5, Si: 0.5 } },
  { name: 'High-speed steel M2', designation: 'UNS T11302, EN 1.3343', base: 'Fe', weightPercent: { C: 0.86, Cr: 4.1, Mn: 0.3, Mo: 5, Si: 0.3, V: 1.95, W: 6.1 } },
  { name: 'Aluminium alloy 6061', designation: 'UNS A96061, EN AW-6061', base: 'Al', weightPercent: { Cr: 0.2, Cu: 0.28, Mg: 1, Si: 0.6 } },
  { name: 'Aluminium alloy 7075', designation: 'UNS A97075, EN AW-7075', base: 'Al', weightPercent: { Cr: 0.23, Cu: 1.6, Mg: 2.5, Zn: 5.6 } },
  { name: 'Magnesium alloy AZ91', designation: 'UNS M11916', base: 'Mg', weightPercent: { Al: 9, Mn: 0.3, Zn: 0.7 } },
  { name: 'Cartridge brass 70/30', designation: 'UNS C26000, EN CW505L', base: 'Zn', weightPercent: { Cu: 70 } },
  { name: 'Cupronickel 70/30', designation: 'UNS C71500, EN CW354H', base: 'Cu', weightPercent: { Fe: 0.7, Mn: 0.5, Ni: 30 } },
  { name: 'Titanium alloy Ti-6Al-4V', designation: 'UNS R56400', base: 'Ti', weightPercent: { Al: 6, V: 4 } },
  { name: 'Nickel superalloy 718', designation: 'UNS N07718, EN 2.4668', base: 'Fe', weightPercent: { Al: 0.5, Cr: 19, Mo: 3.05, Nb: 5.1, Ni: 52.5, Ti: 0.9 } },
  { name: 'Cobalt alloy Co-28Cr-6Mo', designation: 'UNS R31537', base: 'Co', weightPercent: { Cr: 28, Mn: 0.5, Mo: 6, Si: 0.5 } },
];

/** A designation and its composition; the element `base` makes up what is left of 100 wt.%. */
export interface NominalAlloy {
  name: string;
  designation: string;
  base: string;
  weightPercent: Readonly<Record<string, number>>;
}
