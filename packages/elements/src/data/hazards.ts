/** What can happen, in the words in which pages sort cautions. */
export type HazardKind =
  | 'toxic'
  | 'carcinogenic dust or fume'
  | 'toxic dust or fume'
  | 'harms reproduction'
  | 'toxic or volatile oxide'
  | 'pyrophoric powder'
  | 'flammable powder'
  | 'volatile when molten'
  | 'reacts with water or air'
  | 'attacks metals';

/** Where the hazards were taken from. Nobody had the documents open: all of them are from memory. */
export const hazardSources = {
  GHS: 'GHS class in the harmonised classification of Regulation (EC) No 1272/2008 (CLP), Annex VI, with its hazard statements (H...); from memory',
  SDS: 'safety data sheets of the element as it is sold, with the hazard statements (H...) found there; from memory, sheets of different suppliers differ',
  practice: 'common practice of melting, no source; from memory',
  boiling: 'boiling temperature of the element data; the temperature below which an element counts as volatile is common practice, no source',
} as const;

/** One hazard of an element or of what it turns into while it is weighed, ground, melted or cast. */
export interface Hazard {
  kind: HazardKind;
  text: string;
  source: keyof typeof hazardSources;
}

const flammablePowder: Hazard = { kind: 'flammable powder', source: 'SDS', text: 'Fine powder and grinding dust burn (flammable solid, H228).' };
const fumeFever: Hazard = { kind: 'toxic dust or fume', source: 'practice', text: 'Fresh oxide fume causes metal fume fever.' };
const reactiveMelt: Hazard = { kind: 'reacts with water or air', source: 'practice', text: 'A melt takes up oxygen and nitrogen, attacks oxide crucibles and explodes on contact with water.' };
const rareEarth: readonly Hazard[] = [
  { kind: 'pyrophoric powder', source: 'SDS', text: 'Powder, chips and grinding dust of rare earths ignite easily, fine powder by itself (H228, H250).' },
  { kind: 'reacts with water or air', source: 'SDS', text: 'Tarnishes in moist air and frees hydrogen from water (H261), the light rare earths fastest; keep dry, under oil or inert gas; a melt attacks oxide crucibles.' },
];

/** Hazards by symbol, but for what follows from the boiling temperature (hazardsOf.ts). An empty list says that none is on record here, not that there is none. */
export const hazards: Readonly<Record<string, readonly Hazard[]>> = {
  Li: [
    { kind: 'reacts with water or air', source: 'GHS', text: 'Frees hydrogen from water, which may ignite (Water-react. 1, H260), and burns skin and eyes (Skin Corr. 1B, H314); molten lithium burns in air and attacks most crucibles.' },
    { kind: 'pyrophoric powder', source: 'SDS', text: 'Fine powder ignites by itself in moist air.' },
  ],
  Be: [
    { kind: 'carcinogenic dust or fume', source: 'GHS', text: 'May cause cancer by inhalation (Carc. 1B, H350i); fatal if inhaled (Acute Tox. 2, H330); damages lungs through repeated exposure (STOT RE 1, H372): chronic beryllium disease.' },
    { kind: 'toxic', source: 'GHS', text: 'Toxic if swallowed (Acute Tox. 3, H301); may cause allergic skin reactions (Skin Sens. 1, H317).' },
  ],
  B: [
    flammablePowder,
    { kind: 'harms reproduction', source: 'GHS', text: 'Boron oxide, formed in air, may damage fertility or the unborn child (Repr. 1B, H360FD).' },
  ],
  C: [
    { kind: 'toxic or volatile oxide', source: 'practice', text: 'Gives off carbon monoxide with oxides and moisture in the charge.' },
  ],
  Mg: [
    { kind: 'pyrophoric powder', source: 'GHS', text: 'Powder ignites by itself (Pyr. Sol. 1, H250) and frees hydrogen from water (Water-react. 1, H260); burning magnesium must not be quenched with water or carbon dioxide.' },
    { kind: 'reacts with water or air', source: 'practice', text: 'A melt ignites in air and explodes on contact with water, a wet mould or sand; melt it under a cover gas or flux.' },
  ],
  Al: [
    { kind: 'pyrophoric powder', source: 'GHS', text: 'Fine powder ignites by itself (Pyr. Sol. 1, H250) and frees hydrogen from water (Water-react. 2, H261).' },
    { kind: 'reacts with water or air', source: 'practice', text: 'A melt explodes on contact with water or a wet mould, and reacts violently with oxides of heavier metals.' },
  ],
  Si: [
    flammablePowder,
  ],
  Ca: [
    { kind: 'reacts with water or air', source: 'GHS', text: 'Frees hydrogen from water (Water-react. 2, H261); keep dry, under oil or inert gas.' },
  ],
  Sc: [...rareEarth],
  Ti: [
    { kind: 'pyrophoric powder', source: 'SDS', text: 'Fine powder and grinding dust ignite by themselves or by a spark (H250, H228, H251), and burn in nitrogen and carbon dioxide too.' },
    reactiveMelt,
  ],
  V: [
    { kind: 'toxic or volatile oxide', source: 'GHS', text: 'Vanadium pentoxide, V2O5, formed in hot air: may cause cancer (Carc. 1B, H350), fatal if inhaled (Acute Tox. 2, H330), toxic if swallowed (H301), harms airways and lungs (STOT RE 1, H372; STOT SE 3, H335), suspected of genetic defects and of harm to fertility, the unborn child and breast-fed children (H341, H361fd, H362); it melts near 950 K and drips or evaporates.' },
    flammablePowder,
  ],
  Cr: [
    { kind: 'carcinogenic dust or fume', source: 'GHS', text: 'Chromium(VI) in the fume of welding or melting in air, and in dust and slag of it: may cause cancer (chromium trioxide Carc. 1A, H350), fatal if inhaled (H330), causes asthma (H334).' },
    { kind: 'volatile when molten', source: 'practice', text: 'Evaporates markedly at its melting point in vacuum and coats the chamber.' },
    flammablePowder,
  ],
  Mn: [
    { kind: 'toxic dust or fume', source: 'SDS', text: 'Repeated inhalation of dust or fume harms the nervous system (STOT RE, H373).' },
    { kind: 'volatile when molten', source: 'practice', text: 'Loses mass at its melt long before it boils, most of all in vacuum; charge more of it and weigh afterwards.' },
    flammablePowder,
  ],
  Fe: [
    flammablePowder,
  ],
  Co: [
    { kind: 'carcinogenic dust or fume', source: 'GHS', text: 'Dust and fume may cause cancer (Carc. 1B, H350), suspected of genetic defects (Muta. 2, H341), may damage fertility (Repr. 1B, H360F).' },
    { kind: 'toxic', source: 'GHS', text: 'Causes asthma and allergic skin reactions (Resp. Sens. 1, H334; Skin Sens. 1, H317).' },
    flammablePowder,
  ],
  Ni: [
    { kind: 'carcinogenic dust or fume', source: 'GHS', text: 'Dust and fume: suspected of causing cancer (Carc. 2, H351; nickel oxides Carc. 1A, H350i), damages lungs through repeated exposure (STOT RE 1, H372).' },
    { kind: 'toxic', source: 'GHS', text: 'May cause allergic skin reactions (Skin Sens. 1, H317).' },
    { kind: 'toxic or volatile oxide', source: 'practice', text: 'Fine nickel and carbon monoxide form nickel carbonyl between about 320 and 470 K, which is fatal if inhaled.' },
  ],
  Cu: [
    fumeFever,
  ],
  Zn: [
    fumeFever,
    { kind: 'pyrophoric powder', source: 'GHS', text: 'Unstabilised powder ignites by itself (Pyr. Sol. 1, H250) and frees hydrogen from water (Water-react. 1, H260).' },
  ],
  Ga: [
    { kind: 'attacks metals', source: 'SDS', text: 'Liquid near room temperature; corrosive to metals (H290), it embrittles aluminium tools and parts.' },
  ],
  Ge: [
    flammablePowder,
  ],
  Sr: [
    { kind: 'reacts with water or air', source: 'SDS', text: 'Frees hydrogen from water (H260, H261) and tarnishes at once in air; powder ignites by itself; keep under oil or inert gas.' },
  ],
  Y: [...rareEarth],
  Zr: [
    { kind: 'pyrophoric powder', source: 'GHS', text: 'Powder ignites by itself (Pyr. Sol. 1, H250) and frees hydrogen from water (Water-react. 1, H260); chips and grinding dust burn.' },
    reactiveMelt,
  ],
  Nb: [
    flammablePowder,
  ],
  Mo: [
    { kind: 'toxic or volatile oxide', source: 'GHS', text: 'Molybdenum trioxide, MoO3, smokes off in air from about 1000 K: suspected of causing cancer (Carc. 2, H351), irritates eyes and airways (H319, H335).' },
    flammablePowder,
  ],
  Ru: [
    { kind: 'toxic or volatile oxide', source: 'SDS', text: 'Ruthenium tetroxide, RuO4, formed by strong oxidation, is volatile at room temperature and harms eyes and airways.' },
  ],
  Rh: [],
  Pd: [
    { kind: 'pyrophoric powder', source: 'practice', text: 'Finely divided palladium that has taken up hydrogen may ignite in air.' },
  ],
  Ag: [
    { kind: 'harms reproduction', source: 'GHS', text: 'Suspected of damaging fertility (Repr. 2, H361f); a recent entry.' },
  ],
  Cd: [
    { kind: 'toxic', source: 'GHS', text: 'Fatal if inhaled (Acute Tox. 2, H330); damages kidneys and bones through repeated exposure (STOT RE 1, H372); suspected of harm to fertility and the unborn child (Repr. 2, H361fd).' },
    { kind: 'carcinogenic dust or fume', source: 'GHS', text: 'May cause cancer (Carc. 1B, H350); suspected of genetic defects (Muta. 2, H341).' },
    { kind: 'pyrophoric powder', source: 'GHS', text: 'Unstabilised powder ignites by itself (Pyr. Sol. 1, H250).' },
  ],
  In: [
    { kind: 'toxic dust or fume', source: 'SDS', text: 'Dust and fume damage the lungs through repeated exposure (STOT RE 1, H372).' },
  ],
  Sn: [],
  Sb: [
    { kind: 'carcinogenic dust or fume', source: 'GHS', text: 'Antimony trioxide fume: suspected of causing cancer (Carc. 2, H351).' },
  ],
  La: [...rareEarth],
  Ce: [
    ...rareEarth,
    { kind: 'flammable powder', source: 'practice', text: 'Sparks when filed, ground or struck.' },
  ],
  Pr: [...rareEarth],
  Nd: [...rareEarth],
  Sm: [...rareEarth],
  Gd: [...rareEarth],
  Tb: [...rareEarth],
  Dy: [...rareEarth],
  Ho: [...rareEarth],
  Er: [...rareEarth],
  Tm: [...rareEarth],
  Yb: [...rareEarth],
  Lu: [...rareEarth],
  Hf: [
    { kind: 'pyrophoric powder', source: 'SDS', text: 'Fine powder and grinding dust ignite by themselves (H250, H251).' },
    reactiveMelt,
  ],
  Ta: [
    flammablePowder,
  ],
  W: [
    { kind: 'toxic or volatile oxide', source: 'practice', text: 'Tungsten trioxide smokes off in air from about 1300 K.' },
    flammablePowder,
  ],
  Re: [
    { kind: 'toxic or volatile oxide', source: 'practice', text: 'Rhenium heptoxide, Re2O7, forms in hot air and boils near 635 K.' },
    flammablePowder,
  ],
  Os: [
    { kind: 'toxic or volatile oxide', source: 'GHS', text: 'Osmium tetroxide, OsO4, forms from powder even in cold air and from the metal in hot air, and is volatile: fatal if inhaled, swallowed or in contact with skin (H300, H310, H330), burns eyes and skin (H314).' },
  ],
  Ir: [],
  Pt: [],
  Au: [],
  Pb: [
    { kind: 'toxic', source: 'GHS', text: 'May damage fertility or the unborn child (Repr. 1A, H360FD) and harm breast-fed children (H362).' },
    { kind: 'toxic dust or fume', source: 'SDS', text: 'Accumulates in the body; repeated exposure to dust or fume damages nerves, blood and kidneys (H372).' },
  ],
  Bi: [],
};

/** Stands wherever hazards are shown. */
export const generalCaution =
  'These cautions are reminders from memory and are not complete: follow the safety data sheets of the materials as bought and your local codes, and leave work with hazardous materials to those trained and licensed for it.';
