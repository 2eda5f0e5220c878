/** The data sets that the tables were read from, on the date given. Their notices: NOTICE.md. */
export const dataSets = {
  mendeleev: { name: 'mendeleev, elements.db', version: 'commit 580e340 (2025-11-22)', licence: 'MIT', read: '2026-11-25' },
  pymatgen: { name: 'pymatgen, periodic_table.json', version: '2022.11.7 (Debian 2022.11.7+dfsg1-11)', licence: 'MIT', read: '2026-11-25' },
  Magpie: { name: 'Magpie element tables, as kept in matminer', version: 'commit 8ddb18c (2026-06-30)', licence: 'BSD-3-Clause style (LBNL)', read: '2026-11-25' },
  matminer: { name: 'matminer, Miedema.csv and MiedemaLiquidDeltaHf.tsv', version: 'commit 8ddb18c (2026-06-30)', licence: 'BSD-3-Clause style (LBNL)', read: '2026-11-25' },
  MPEA: { name: 'MPEA dataset, MPEA_dataset.csv', version: 'commit d31e251 (2022-08-03)', licence: 'Apache-2.0', read: '2026-11-25' },
} as const;
export type DataSet = keyof typeof dataSets;

export interface ValueSource {
  /** What the value is and where it was published. */
  text: string;
  /** The data set that carried it; null: typed from memory, derived here, or absent. */
  dataSet: DataSet | null;
}

/**
 * Every source of a value or a record, by code. Codes that begin with 'none-' say why there is no value.
 * 'From memory' means that nobody has opened the book for this table.
 */
export const sources = {
  IUPAC: { dataSet: 'mendeleev', text: 'IUPAC/CIAAW standard atomic weights 2016 (Meija et al., Pure Appl. Chem. 88 (2016) 265), the conventional value where IUPAC gives an interval. Later revisions (Hf 2019; Gd, Lu, Zr 2024: from memory) change no value by more than 0.003 %.' },
  CRC: { dataSet: 'mendeleev', text: 'CRC Handbook of Chemistry and Physics, 95th ed. (2014). Density near room temperature (tin: white tin). Temperatures are °C + 273.15, rounded to 1 K, or to 0.01 K for fixed points of ITS-90 and for metals that melt low.' },
  'CRC-sublimation': { dataSet: 'mendeleev', text: 'CRC Handbook of Chemistry and Physics, 95th ed. (2014): graphite sublimes, so the boiling column holds the sublimation temperature at 1 atm.' },
  WE: { dataSet: 'pymatgen', text: 'Table of WebElements lineage. Density: taken where it departs from the CRC Handbook by more than 1 % and the density from the lattice parameter sides with it (V, Mn, Ru, Ta, Re); graphite 2.26. Pauling scale in the revision of Allred (1961). Moduli: polycrystalline, room temperature.' },
  SM: { dataSet: null, text: 'The set customary for these alloys: Senkov & Miracle, Mater. Res. Bull. 36 (2001) 2183, also used by Guo & Liu (2011). Typed from memory; it reproduces published size mismatches (CoCrFeMnNi 3.27 %, CoCrFeNi 0.30 %).' },
  CN12: { dataSet: 'pymatgen', text: 'Metallic radius at 12-fold coordination (lineage of Teatum, Gschneidner & Waber).' },
  MIR: { dataSet: 'Magpie', text: 'Radius assessed from metallic glasses: Miracle et al., Int. Mater. Rev. 55 (2010) 218.' },
  MP: { dataSet: 'Magpie', text: 'Allen configuration energy on the Pauling scale: Allen, JACS 111 (1989) 9003; Mann, Meek & Allen, JACS 122 (2000) 2780; d block Mann et al., JACS 122 (2000) 5132. Taken up to Sb only: from Ce on that table is misaligned.' },
  MV: { dataSet: 'mendeleev', text: 'Allen configuration energy (eV) times 2.30016/13.605693, rounded to the published digits.' },
  group: { dataSet: null, text: 'Electrons in the valence band including d (Guo, Ng, Lu & Liu, J. Appl. Phys. 109 (2011) 103505): the group number for groups 1 to 12, s + p electrons for groups 13 to 15.' },
  trivalent: { dataSet: null, text: 'Lanthanides counted as 3: a convention, common practice, no source. Ce as 4 and Yb as 2 are also seen.' },
  MD: { dataSet: 'matminer', text: 'de Boer, Boom, Mattens, Miedema & Niessen, Cohesion in Metals (North-Holland 1988). Electron density: cube root of the tabulated density; surface: molar volume (cm³/mol) to the power 2/3; the class is the usual division. Moduli of this source are of the lineage of Gschneidner (1964).' },
  MAG: { dataSet: 'Magpie', text: 'Shear modulus of the Magpie element table.' },
  SMI: { dataSet: null, text: 'Smithells Metals Reference Book, table of polycrystalline elastic moduli. From memory; taken where the value of WE contradicts the other moduli.' },
  HB: { dataSet: null, text: 'Handbook values from memory: the value of WE (zirconium, E 68 GPa) contradicts them.' },
  VRH: { dataSet: null, text: 'Voigt-Reuss-Hill mean of the single-crystal constants C₁₁, C₁₂, C₄₄ (GPa; Si 165.7, 63.9, 79.6; Ge 128.9, 48.3, 67.1). Constants from memory.' },
  EGB: { dataSet: null, text: 'Derived here from shear and bulk modulus: E = 9BG/(3B + G).' },
  TI: { dataSet: 'matminer', text: "Takeuchi & Inoue, Mater. Trans. 46 (2005) 2817–2829: Miedema’s model of the equimolar binary liquid. No magnetism, no structure; poor for Fe-Cr, Cr-Mn, Co-Cr, Fe-Mn; Zr-Ni and Al-Ni are several kJ/mol off measured ones." },
  BORG: { dataSet: 'MPEA', text: 'Published alloys with observed phases and mechanical properties: Borg, Frey, Moh, Pollock, Gorsse, Miracle, Senkov, Meredig & Saal, Expanded dataset of mechanical properties and observed phases of multi-principal element alloys, Sci. Data 7 (2020) 430, doi:10.1038/s41597-020-00768-9. Selected whole systems; labels as their publications report them.' },
  NOM: { dataSet: null, text: 'Nominal compositions of conventional alloys by their designations (UNS, EN). From memory, no standard was open.' },
  'none-sublimes': { dataSet: null, text: 'No value: graphite sublimes at 1 atm. Published alloy work with carbon usually inserts 3823 K or 3800 K.' },
  'none-allen': { dataSet: null, text: 'No value: none was published for La to Yb.' },
  'none-anisotropic': { dataSet: null, text: 'No value: graphite is too anisotropic for one isotropic modulus.' },
  'none-inconsistent': { dataSet: null, text: "No value: the tabulated 4.2 GPa is a shear constant that does not agree with Young’s modulus." },
  'none-unmeasured': { dataSet: null, text: 'No value in the data sets at hand.' },
} as const satisfies Record<string, ValueSource>;
export type SourceCode = keyof typeof sources;
