/**
 * The tone of each element's share, 0 (darkest blue) to 11 (olive) of styles/tokens.css. No
 * element has a colour of its own: the numbers were searched for so that elements which often
 * stand side by side in an alloy, symbols alphabetical, lie at least three tones apart
 * (test/tones.test.ts), for eyes that see no colour too, since tones differ in lightness.
 */
export const tones: Readonly<Record<string, number>> = Object.fromEntries(
  `Ag4 Al8 Au10 B2 Be6 Bi0 C4 Ca11 Cd8 Ce2 Co5 Cr0 Cu4 Dy11 Er7 Fe11 Ga3 Gd0 Ge8 Hf6 Ho11 In1 Ir4 La9 Li0 Lu6
   Mg11 Mn0 Mo3 Nb10 Nd0 Ni7 Os11 Pb2 Pd8 Pr4 Pt0 Re6 Rh11 Ru3 Sb8 Sc5 Si2 Sm11 Sn0 Sr8 Ta6 Tb2 Ti0 Tm11 V3 W9
   Y6 Yb1 Zn7 Zr11`
    .split(/\s+/)
    .map((entry) => [entry.replace(/\d+/, ''), Number(entry.replace(/\D+/, ''))]),
);
