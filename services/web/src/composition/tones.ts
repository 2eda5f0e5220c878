/**
 * The tone of each element's share, 0 (darkest blue) to 11 (olive) of styles/tokens.css. No
 * element has a colour of its own: the numbers were searched for so that elements which often
 * stand side by side in an alloy, symbols alphabetical, lie at least three tones apart
 * and no two of an alloy that is often named share one (test/composition/tones.test.ts), for eyes that see no
 * colour too, since tones differ in lightness.
 */
export const tones: Readonly<Record<string, number>> = Object.fromEntries(
  `Ag3 Al9 Au10 B0 Be6 Bi0 C0 Ca5 Cd8 Ce2 Co5 Cr1 Cu4 Dy11 Er7 Fe11 Ga3 Gd0 Ge8 Hf2 Ho11 In1 Ir4 La9 Li1 Lu6
   Mg11 Mn2 Mo4 Nb11 Nd1 Ni7 Os11 Pb2 Pd3 Pr4 Pt0 Re3 Rh11 Ru3 Sb8 Sc4 Si3 Sm11 Sn0 Sr8 Ta6 Tb2 Ti0 Tm11 V3 W9
   Y10 Yb1 Zn10 Zr8`
    .split(/\s+/)
    .map((entry) => [entry.replace(/\d+/, ''), Number(entry.replace(/\D+/, ''))]),
);
