import type { SourceCode } from './sources.ts';

/** Where all records are from (sources.ts). */
export const publishedSource: SourceCode = 'BORG';

/** DOI and year of every publication behind the records below, by DOI. */
export const publishedReferences: readonly (readonly [doi: string, year: number])[] = [
  ['10.1002/adem.200300567', 2004],
  ['10.1002/adem.200900171', 2010],
  ['10.1002/adma.201701678', 2017],
  ['10.1002/adma.201807142', 2018],
  ['10.1007/s00339-019-2484-1', 2019],
  ['10.1007/s00339-019-2506-z', 2019],
  ['10.1007/s10853-012-6260-2', 2012],
  ['10.1007/s10853-018-03196-8', 2018],
  ['10.1007/s10853-019-03567-9', 2019],
  ['10.1007/s11106-019-00012-z', 2019],
  ['10.1007/s11661-005-0218-9', 2005],
  ['10.1007/s11661-006-0081-3', 2006],
  ['10.1007/s11661-017-4386-1', 2017],
  ['10.1007/s11661-018-4646-8', 2018],
  ['10.1007/s11661-019-05231-y', 2019],
  ['10.1007/s11665-015-1767-8', 2015],
  ['10.1007/s11665-017-2799-z', 2017],
  ['10.1007/s11665-018-3822-8', 2018],
  ['10.1007/s11837-013-0753-6', 2013],
  ['10.1007/s11837-013-0756-3', 2013],
  ['10.1007/s11837-014-1066-0', 2014],
  ['10.1007/s11837-015-1402-z', 2015],
  ['10.1007/s12598-019-01310-6', 2019],
  ['10.1007/s40195-019-00921-3', 2019],
  ['10.1007/s40195-019-00935-x', 2019],
  ['10.1016/C2013-0-14235-3', 2014],
  ['10.1016/j.actamat.2011.06.041', 2011],
  ['10.1016/j.actamat.2012.11.032', 2013],
  ['10.1016/j.actamat.2013.06.018', 2013],
  ['10.1016/j.actamat.2013.09.037', 2014],
  ['10.1016/j.actamat.2014.08.026', 2014],
  ['10.1016/j.actamat.2015.07.004', 2015],
  ['10.1016/j.actamat.2016.06.063', 2016],
  ['10.1016/j.actamat.2016.11.016', 2017],
  ['10.1016/j.actamat.2017.03.066', 2017],
  ['10.1016/j.actamat.2017.03.069', 2017],
  ['10.1016/j.actamat.2017.09.035', 2018],
  ['10.1016/j.actamat.2017.09.062', 2018],
  ['10.1016/j.actamat.2018.11.049', 2019],
  ['10.1016/j.actamat.2018.12.010', 2019],
  ['10.1016/j.actamat.2018.12.012', 2019],
  ['10.1016/j.actamat.2019.03.010', 2019],
  ['10.1016/j.actamat.2019.04.017', 2019],
  ['10.1016/j.actamat.2019.06.006', 2019],
  ['10.1016/j.actamat.2019.06.032', 2019],
  ['10.1016/j.apsusc.2015.07.207', 2015],
  ['10.1016/j.ijplas.2018.10.005', 2019],
  ['10.1016/j.ijrmhm.2014.07.009', 2014],
  ['10.1016/j.ijrmhm.2019.02.009', 2019],
  ['10.1016/j.intermet.2006.08.005', 2007],
  ['10.1016/j.intermet.2011.01.004', 2011],
  ['10.1016/j.intermet.2012.03.005', 2012],
  ['10.1016/j.intermet.2012.09.008', 2013],
  ['10.1016/j.intermet.2014.11.005', 2015],
  ['10.1016/j.intermet.2015.01.004', 2015],
  ['10.1016/j.intermet.2015.03.013', 2015],
  ['10.1016/j.intermet.2015.09.011', 2016],
  ['10.1016/j.intermet.2015.10.011', 2016],
  ['10.1016/j.intermet.2016.09.003', 2016],
  ['10.1016/j.intermet.2017.01.007', 2017],
  ['10.1016/j.intermet.2019.04.003', 2019],
  ['10.1016/j.intermet.2019.106477', 2019],
  ['10.1016/j.intermet.2019.106486', 2019],
  ['10.1016/j.intermet.2019.106550', 2019],
  ['10.1016/j.jallcom.2008.07.124', 2009],
  ['10.1016/j.jallcom.2008.11.059', 2009],
  ['10.1016/j.jallcom.2008.12.088', 2009],
  ['10.1016/j.jallcom.2009.08.090', 2009],
  ['10.1016/j.jallcom.2009.10.088', 2010],
  ['10.1016/j.jallcom.2010.02.032', 2010],
  ['10.1016/j.jallcom.2010.10.047', 2011],
  ['10.1016/j.jallcom.2013.03.253', 2013],
  ['10.1016/j.jallcom.2013.11.084', 2014],
  ['10.1016/j.jallcom.2014.11.064', 2015],
  ['10.1016/j.jallcom.2014.12.157', 2015],
  ['10.1016/j.jallcom.2015.07.185', 2015],
  ['10.1016/j.jallcom.2015.07.209', 2015],
  ['10.1016/j.jallcom.2015.07.285', 2015],
  ['10.1016/j.jallcom.2015.08.224', 2015],
  ['10.1016/j.jallcom.2015.11.050', 2016],
  ['10.1016/j.jallcom.2015.11.091', 2016],
  ['10.1016/j.jallcom.2016.05.034', 2016],
  ['10.1016/j.jallcom.2016.10.014', 2017],
  ['10.1016/j.jallcom.2016.11.188', 2017],
  ['10.1016/j.jallcom.2017.03.307', 2017],
  ['10.1016/j.jallcom.2018.01.247', 2018],
  ['10.1016/j.jallcom.2018.07.346', 2018],
  ['10.1016/j.jallcom.2018.08.093', 2019],
  ['10.1016/j.jallcom.2018.08.115', 2019],
  ['10.1016/j.jallcom.2018.10.168', 2019],
  ['10.1016/j.jallcom.2018.10.230', 2019],
  ['10.1016/j.jallcom.2018.11.111', 2019],
  ['10.1016/j.jallcom.2018.11.181', 2019],
  ['10.1016/j.jallcom.2018.12.040', 2019],
  ['10.1016/j.jallcom.2019.01.341', 2019],
  ['10.1016/j.jallcom.2019.04.121', 2019],
  ['10.1016/j.jallcom.2019.04.291', 2019],
  ['10.1016/j.jallcom.2019.05.322', 2019],
  ['10.1016/j.jallcom.2019.06.138', 2019],
  ['10.1016/j.jallcom.2019.06.301', 2019],
  ['10.1016/j.jallcom.2019.07.100', 2019],
  ['10.1016/j.jallcom.2019.07.195', 2019],
  ['10.1016/j.jmmm.2014.07.023', 2014],
  ['10.1016/j.jmst.2014.09.011', 2015],
  ['10.1016/j.jmst.2018.09.068', 2019],
  ['10.1016/j.jmst.2018.10.009', 2019],
  ['10.1016/j.matchar.2015.11.018', 2016],
  ['10.1016/j.matchar.2018.06.036', 2019],
  ['10.1016/j.matchar.2018.07.015', 2019],
  ['10.1016/j.matchar.2019.03.006', 2019],
  ['10.1016/j.matchar.2019.05.022', 2019],
  ['10.1016/j.matchar.2019.109792', 2019],
  ['10.1016/j.matchemphys.2017.06.054', 2018],
  ['10.1016/j.matdes.2009.09.016', 2010],
  ['10.1016/j.matdes.2012.08.019', 2013],
  ['10.1016/j.matdes.2013.04.061', 2013],
  ['10.1016/j.matdes.2013.12.048', 2014],
  ['10.1016/j.matdes.2015.05.019', 2015],
  ['10.1016/j.matdes.2015.06.072', 2015],
  ['10.1016/j.matdes.2016.05.079', 2016],
  ['10.1016/j.matdes.2016.12.036', 2017],
  ['10.1016/j.matdes.2017.02.072', 2017],
  ['10.1016/j.matdes.2017.11.033', 2018],
  ['10.1016/j.matdes.2018.06.003', 2018],
  ['10.1016/j.matdes.2019.107698', 2019],
  ['10.1016/j.matlet.2014.05.134', 2014],
  ['10.1016/j.matlet.2014.11.162', 2015],
  ['10.1016/j.matlet.2016.03.133', 2016],
  ['10.1016/j.matlet.2016.08.060', 2016],
  ['10.1016/j.matlet.2017.04.072', 2017],
  ['10.1016/j.matlet.2019.03.075', 2019],
  ['10.1016/j.matlet.2019.04.012', 2019],
  ['10.1016/j.msea.2006.11.049', 2007],
  ['10.1016/j.msea.2008.01.064', 2008],
  ['10.1016/j.msea.2008.08.025', 2008],
  ['10.1016/j.msea.2008.12.053', 2009],
  ['10.1016/j.msea.2010.05.052', 2010],
  ['10.1016/j.msea.2010.07.028', 2010],
  ['10.1016/j.msea.2010.07.049', 2010],
  ['10.1016/j.msea.2011.09.033', 2011],
  ['10.1016/j.msea.2011.10.110', 2012],
  ['10.1016/j.msea.2011.11.045', 2012],
  ['10.1016/j.msea.2011.11.063', 2012],
  ['10.1016/j.msea.2012.07.003', 2012],
  ['10.1016/j.msea.2012.12.018', 2013],
  ['10.1016/j.msea.2015.02.072', 2015],
  ['10.1016/j.msea.2015.08.024', 2015],
  ['10.1016/j.msea.2015.08.078', 2015],
  ['10.1016/j.msea.2015.09.089', 2016],
  ['10.1016/j.msea.2015.12.017', 2016],
  ['10.1016/j.msea.2016.07.102', 2016],
  ['10.1016/j.msea.2017.04.003', 2017],
  ['10.1016/j.msea.2017.04.111', 2017],
  ['10.1016/j.msea.2017.08.019', 2017],
  ['10.1016/j.msea.2017.10.073', 2018],
  ['10.1016/j.msea.2017.12.004', 2018],
  ['10.1016/j.msea.2018.10.094', 2019],
  ['10.1016/j.msea.2018.12.020', 2019],
  ['10.1016/j.msea.2018.12.077', 2019],
  ['10.1016/j.msea.2019.01.050', 2019],
  ['10.1016/j.msea.2019.01.083', 2019],
  ['10.1016/j.msea.2019.01.088', 2019],
  ['10.1016/j.msea.2019.01.112', 2019],
  ['10.1016/j.msea.2019.04.025', 2019],
  ['10.1016/j.msea.2019.04.096', 2019],
  ['10.1016/j.msea.2019.04.104', 2019],
  ['10.1016/j.msea.2019.05.056', 2019],
  ['10.1016/j.msea.2019.05.078', 2019],
  ['10.1016/j.msea.2019.138039', 2019],
  ['10.1016/j.msea.2019.138181', 2019],
  ['10.1016/j.proeng.2012.03.043', 2012],
  ['10.1016/j.scriptamat.2016.04.014', 2016],
  ['10.1016/j.scriptamat.2016.06.019', 2016],
  ['10.1016/j.scriptamat.2017.05.019', 2017],
  ['10.1016/j.scriptamat.2018.08.048', 2019],
  ['10.1016/j.scriptamat.2018.09.008', 2019],
  ['10.1016/j.scriptamat.2018.10.023', 2019],
  ['10.1016/j.scriptamat.2018.11.042', 2019],
  ['10.1016/j.ultramic.2015.06.009', 2015],
  ['10.1016/j.vacuum.2018.12.009', 2019],
  ['10.1016/j.vacuum.2019.04.043', 2019],
  ['10.1016/j.wear.2009.10.013', 2010],
  ['10.1038/s41467-019-08460-2', 2019],
  ['10.1038/s41467-019-10533-1', 2019],
  ['10.1038/s41598-017-16509-9', 2017],
  ['10.1038/s41598-019-43329-w', 2019],
  ['10.1063/1.3587228', 2011],
  ['10.1063/1.4966659', 2016],
  ['10.1080/00325899.2018.1554834', 2018],
  ['10.1080/00325899.2019.1576389', 2019],
  ['10.1080/02670836.2017.1342367', 2017],
  ['10.1080/14786435.2015.1028506', 2015],
  ['10.1080/21663831.2014.985855', 2014],
  ['10.1080/21663831.2016.1221861', 2016],
  ['10.1088/0256-307X/35/3/036102', 2018],
  ['10.1088/2053-1591/ab0597', 2019],
  ['10.1088/2053-1591/ab2517', 2019],
  ['10.1134/S0031918X17060084', 2017],
  ['10.1149/1.2744133', 2007],
  ['10.1155/2019/2157592', 2019],
  ['10.1557/adv.2017.76', 2017],
  ['10.1557/jmr.2019.18', 2019],
  ['10.1557/jmr.2019.40', 2019],
  ['10.2320/matertrans.47.1395', 2006],
  ['10.3166/acsm.31.633-648', 2006],
  ['10.3390/coatings9010016', 2018],
  ['10.3390/e16020870', 2014],
  ['10.3390/e21010015', 2018],
  ['10.3390/e21020114', 2019],
  ['10.3390/e21030288', 2019],
  ['10.3390/e21050448', 2019],
  ['10.3390/ma12071136', 2019],
  ['10.3390/met9030351', 2019],
  ['10.4028/www.scientific.net/MSF.846.13', 2016],
  ['10.4028/www.scientific.net/MSF.849.76', 2016],
  ['10.4028/www.scientific.net/MSF.898.638', 2017],
];

/** What one record says beside its phases; what it does not say is left out. Units behind the names. */
interface RecordedValues {
  test?: 'tension' | 'compression';
  /** °C, of the mechanical test */
  celsius?: number;
  /** MPa, yield strength */
  yields?: number;
  /** MPa, greatest stress */
  strength?: number;
  /** % */
  elongation?: number;
  /** µm */
  grain?: number;
  /** HV */
  hardness?: number;
  /** g/cm3, measured */
  density?: number;
  /** GPa, measured */
  youngs?: number;
}

/** How the sample was made, as the data set sorts it. */
export type Processing = 'cast' | 'wrought' | 'annealed' | 'powder' | 'other' | 'unknown';

/** Processing, phases ('' where none was reported), place in publishedReferences, values. */
export type RecordRow = readonly [Processing, string, number, RecordedValues?];

/**
 * Published alloys: the ratio formula of the data set and its records. Selected whole systems of
 * the data set of Borg et al., Scientific Data 7 (2020) 430 (source BORG, sources.ts; notice and
 * full citation: NOTICE.md). Phases in the order FCC, BCC, HCP, B2, L12, Laves, Sec. (a second
 * phase that was not identified), Other.
 */
export const publishedRecords: readonly (readonly [formula: string, records: readonly RecordRow[]])[] = [
  ['AgAlNbTiZn', [
    ['annealed', '', 157, { density: 4.75 }],
    ['annealed', '', 157, { density: 5.78 }],
    ['annealed', '', 157, { density: 5.79 }],
    ['annealed', '', 157, { density: 5.51 }],
    ['annealed', '', 157],
  ]],
  ['Al0.053CuMnNi', [
    ['cast', 'FCC', 77, { test: 'compression', celsius: 25, yields: 330, elongation: 45, hardness: 166 }],
  ]],
  ['Al0.05Cr0.5FeMn0.625Ni0.375', [
    ['cast', 'FCC+BCC', 87, { test: 'compression', celsius: 25, yields: 354 }],
    ['cast', 'FCC+BCC', 87, { test: 'compression', celsius: 400, yields: 260 }],
    ['cast', 'FCC+BCC', 87, { test: 'compression', celsius: 600, yields: 155 }],
  ]],
  ['Al0.108Co0.514Cr0.514Cu0.108Fe0.514Ni', [
    ['wrought', 'FCC', 152, { test: 'tension', celsius: 25, yields: 719, strength: 1048, elongation: 30 }],
    ['wrought', 'FCC+L12', 152, { test: 'tension', celsius: 25, yields: 460, strength: 732, elongation: 32 }],
  ]],
  ['Al0.111CuMnNi', [
    ['cast', 'FCC+Sec.', 77, { test: 'compression', celsius: 25, yields: 515, elongation: 40, hardness: 241 }],
  ]],
  ['Al0.125CoCrCuFeMnNiTiV', [
    ['cast', 'FCC+BCC', 132, { test: 'compression', celsius: 25, yields: 1862, strength: 2431, elongation: 1, youngs: 164 }],
  ]],
  ['Al0.143Cr0.343FeMn0.8Ni0.571', [
    ['cast', 'FCC', 166, { test: 'tension', celsius: 25, yields: 280, strength: 556, elongation: 48 }],
    ['cast', 'FCC', 166, { test: 'tension', celsius: 25, yields: 1253, strength: 1392, elongation: 6.78 }],
  ]],
  ['Al0.15Cr0.5Cu0.25Fe0.5Ni', [
    ['wrought', 'FCC', 111, { test: 'tension', celsius: 25, yields: 62, strength: 169, elongation: 98, hardness: 107, youngs: 16.6 }],
    ['wrought', 'FCC+L12', 111, { test: 'tension', celsius: 25, yields: 350, strength: 642, elongation: 73, hardness: 209, youngs: 47 }],
    ['wrought', 'FCC+L12+Sec.', 111, { test: 'tension', celsius: 25, yields: 535, strength: 904, elongation: 39, hardness: 321, youngs: 35.2 }],
    ['wrought', 'FCC+L12+Sec.', 111, { test: 'tension', celsius: 25, yields: 255, strength: 584, elongation: 88, hardness: 159, youngs: 51.4 }],
  ]],
  ['Al0.15Cr0.5FeMn0.625Ni0.375', [
    ['cast', 'FCC+BCC', 87, { test: 'compression', celsius: 25, yields: 550 }],
    ['cast', 'FCC+BCC', 87, { test: 'compression', celsius: 400, yields: 469 }],
    ['cast', 'FCC+BCC', 87, { test: 'compression', celsius: 600, yields: 272 }],
  ]],
  ['Al0.186Cr0.149FeMn0.861Ni0.28', [
    ['cast', '', 160, { test: 'tension', celsius: 25, yields: 159, strength: 535 }],
    ['annealed', '', 160, { test: 'tension', celsius: 25, yields: 409, strength: 584 }],
    ['cast', '', 160, { test: 'tension', celsius: 25, yields: 355, strength: 1174 }],
    ['annealed', '', 160, { test: 'tension', celsius: 25, yields: 954, strength: 978 }],
  ]],
  ['Al0.1CoCrFeNi', [
    ['wrought', 'FCC', 40, { test: 'tension', celsius: 25, yields: 1198, elongation: 1.5, grain: 20 }],
    ['wrought', 'FCC', 40, { test: 'tension', celsius: 25, yields: 1403, elongation: 1.2, grain: 20 }],
    ['wrought', 'FCC', 40, { test: 'tension', celsius: 25, yields: 711, strength: 928, elongation: 30.3, grain: 20 }],
    ['wrought', 'FCC', 40, { test: 'tension', celsius: 25, yields: 356, elongation: 42.4, grain: 7 }],
  ]],
  ['Al0.1Cr0.5Cu0.5Fe0.5Ni', [
    ['unknown', 'FCC', 186, { celsius: 25 }],
  ]],
  ['Al0.214Nb0.714Ta0.714TiZr0.929', [
    ['other', 'BCC', 20, { test: 'compression', celsius: 25, yields: 1965, strength: 2054, elongation: 5, grain: 200, hardness: 490 }],
    ['other', 'BCC', 20, { test: 'compression', celsius: 800, yields: 362, strength: 397, elongation: 50 }],
    ['other', 'BCC', 20, { test: 'compression', celsius: 1000, yields: 236, strength: 247, elongation: 50 }],
  ]],
  ['Al0.242Co0.515Cr0.515Cu0.242Fe0.515Ni', [
    ['annealed', '', 178, { hardness: 168 }],
    ['annealed', '', 178, { hardness: 328 }],
    ['annealed', '', 107, { hardness: 206 }],
    ['cast', 'Other', 19, { test: 'tension', celsius: 25, yields: 357, strength: 459, elongation: 9 }],
    ['annealed', 'Other', 19, { test: 'tension', celsius: 25, yields: 365, strength: 365, elongation: 0.1 }],
    ['annealed', 'FCC+L12', 19, { test: 'tension', celsius: 25, yields: 215, strength: 489, elongation: 39 }],
  ]],
  ['Al0.25CoCrCuFeMnNiTiV', [
    ['cast', 'BCC', 132, { test: 'compression', celsius: 25, yields: 1465, strength: 2016, elongation: 2, youngs: 190 }],
  ]],
  ['Al0.25CoCrFeNi', [
    ['annealed', 'FCC', 67, { celsius: 25, hardness: 110 }],
    ['annealed', 'FCC', 67, { celsius: 25, hardness: 113 }],
  ]],
  ['Al0.25Cr0.5FeMn0.625Ni0.375', [
    ['cast', 'BCC+B2', 87, { test: 'compression', celsius: 25, yields: 994, grain: 175 }],
    ['cast', 'BCC+B2', 87, { test: 'compression', celsius: 400, yields: 943 }],
    ['cast', 'BCC+B2', 87, { test: 'compression', celsius: 600, yields: 359 }],
  ]],
  ['Al0.25MoNbTiV', [
    ['cast', 'BCC', 206, { test: 'compression', celsius: 25, yields: 1250, strength: 1500, elongation: 13, hardness: 460 }],
  ]],
  ['Al0.25NbTaTiZr', [
    ['other', 'BCC+B2', 122, { test: 'compression', celsius: 1000, yields: 366, strength: 408 }],
    ['other', 'BCC+B2', 122, { test: 'compression', celsius: 25, yields: 1745, strength: 1830 }],
  ]],
  ['Al0.286Cr0.343FeMn0.657Ni0.571', [
    ['wrought', 'FCC', 166, { test: 'tension', celsius: 25, yields: 320, strength: 625, elongation: 42.2 }],
    ['wrought', 'FCC', 166, { test: 'tension', celsius: 25, yields: 1400, strength: 1500, elongation: 5.83 }],
  ]],
  ['Al0.2Cr0.5Cu0.5Fe0.5Ni', [
    ['unknown', 'FCC', 186, { celsius: 25 }],
  ]],
  ['Al0.2Cr0.667FeMn0.667Ni0.333', [
    ['cast', 'FCC+BCC', 136, { celsius: 25, hardness: 297 }],
  ]],
  ['Al0.304CoCrFeNi', [
    ['unknown', 'FCC+B2', 129, { test: 'tension', celsius: 25, yields: 860, strength: 1050, elongation: 48, grain: 0.7 }],
    ['unknown', 'FCC+B2', 129, { test: 'tension', celsius: 25, yields: 690, strength: 930, elongation: 51, grain: 2.7 }],
    ['unknown', 'FCC+B2', 129, { test: 'tension', celsius: 25, yields: 550, strength: 800, elongation: 64, grain: 3.8 }],
    ['unknown', 'FCC', 129, { test: 'tension', celsius: 25, yields: 260, strength: 620, elongation: 87, grain: 53 }],
    ['wrought', 'FCC+BCC', 129],
    ['wrought', 'FCC', 172],
    ['wrought', 'FCC+L12', 172],
    ['wrought', 'FCC+L12', 172],
    ['wrought', 'FCC', 121, { test: 'tension', celsius: 25, yields: 159, strength: 410, elongation: 65, grain: 144 }],
    ['wrought', 'FCC+B2', 121, { test: 'tension', celsius: 25, yields: 215, strength: 520, elongation: 43, grain: 144 }],
    ['wrought', 'FCC+L12', 121, { test: 'tension', celsius: 25, yields: 285, strength: 540, elongation: 55, grain: 144 }],
    ['wrought', 'FCC', 121, { test: 'tension', celsius: 25, yields: 263, strength: 589, elongation: 60, grain: 23 }],
    ['wrought', 'FCC+B2+L12', 121, { test: 'tension', celsius: 25, yields: 490, strength: 840, elongation: 45, grain: 23 }],
    ['annealed', 'FCC+BCC', 34],
    ['cast', 'FCC+L12', 66, { test: 'tension', celsius: 25, yields: 175, strength: 335, elongation: 58 }],
    ['annealed', 'FCC+L12', 66, { test: 'tension', celsius: 25, yields: 305, strength: 525, elongation: 44 }],
    ['annealed', 'FCC+B2', 66, { test: 'tension', celsius: 25, yields: 280, strength: 570, elongation: 44 }],
    ['annealed', 'FCC', 72],
    ['annealed', 'FCC', 72],
    ['annealed', 'FCC+B2', 119],
    ['cast', 'FCC', 145, { test: 'compression', celsius: 25, elongation: 25 }],
  ]],
  ['Al0.312Ca0.021Li0.792MgSi0.021', [
    ['cast', '', 211, { test: 'compression', celsius: 25, yields: 360, elongation: 9, density: 1.52 }],
  ]],
  ['Al0.333Ca0.011Li0.844MgSi0.033', [
    ['cast', '', 211, { test: 'compression', celsius: 25, yields: 342, elongation: 44, density: 1.5 }],
  ]],
  ['Al0.333Ca0.011Li0.867MgSi0.011', [
    ['cast', '', 211, { test: 'compression', celsius: 25, yields: 300, elongation: 63, density: 1.46 }],
  ]],
  ['Al0.333Cr0.667FeMn0.667Ni0.333', [
    ['cast', 'BCC', 136, { celsius: 25, hardness: 396 }],
  ]],
  ['Al0.343Co0.514Cr0.514FeNi0.514', [
    ['cast', 'BCC+B2', 171, { test: 'tension', celsius: 25, yields: 866, strength: 1223, elongation: 7.9 }],
    ['cast', '', 171, { test: 'tension', celsius: 650, yields: 400, strength: 468, elongation: 6.3 }],
    ['cast', '', 171, { test: 'tension', celsius: 700, yields: 220, strength: 340, elongation: 5.4 }],
    ['cast', '', 171, { test: 'compression', celsius: 25, yields: 1166, elongation: 30.2 }],
  ]],
  ['Al0.35Cr0.5FeMn0.625Ni0.375', [
    ['cast', 'BCC+B2', 87, { test: 'compression', celsius: 25, yields: 942, grain: 175 }],
    ['cast', 'BCC+B2', 87, { test: 'compression', celsius: 400, yields: 833 }],
    ['cast', 'BCC+B2', 87, { test: 'compression', celsius: 600, yields: 326 }],
  ]],
  ['Al0.375CoCrFeNi', [
    ['annealed', 'FCC', 67, { celsius: 25, hardness: 131 }],
    ['annealed', 'FCC', 67, { celsius: 25, hardness: 196 }],
  ]],
  ['Al0.3CoCrFeMo0.1Ni', [
    ['unknown', 'FCC', 69, { hardness: 200 }],
  ]],
  ['Al0.3CoCrFeNi', [
    ['wrought', 'FCC+B2+Sec.', 174, { test: 'tension', celsius: 25, yields: 900, strength: 1074, elongation: 25, grain: 0.71 }],
    ['cast', 'FCC', 124, { hardness: 117 }],
    ['wrought', 'FCC+L12', 176, { test: 'tension', celsius: 25, yields: 143, strength: 400, elongation: 65 }],
    ['wrought', 'FCC+L12', 176, { test: 'tension', celsius: 25, yields: 471, strength: 850, elongation: 45 }],
    ['wrought', 'FCC+B2+Sec.', 176, { test: 'tension', celsius: 25, yields: 841, strength: 1050, elongation: 35 }],
    ['wrought', 'FCC+BCC+B2+Sec.', 176, { test: 'tension', celsius: 25, yields: 161, strength: 1650, elongation: 7 }],
    ['wrought', 'FCC+BCC+B2+Sec.', 176, { test: 'tension', celsius: 25, yields: 187, strength: 1850, elongation: 5 }],
    ['wrought', 'FCC+B2+Sec.', 39, { test: 'tension', celsius: 25, yields: 840, strength: 1039, elongation: 32 }],
    ['wrought', 'FCC', 39, { test: 'tension', celsius: 25, yields: 159, strength: 410, elongation: 65 }],
    ['cast', 'FCC', 195, { test: 'compression', celsius: 300, hardness: 132 }],
    ['cast', 'FCC', 195, { test: 'compression', celsius: 340, hardness: 147 }],
    ['cast', 'FCC', 195, { test: 'compression', celsius: 430, hardness: 165 }],
    ['unknown', 'FCC', 69, { hardness: 160 }],
  ]],
  ['Al0.3Cr0.5Cu0.5Fe0.5Ni', [
    ['unknown', 'FCC', 186, { celsius: 25 }],
  ]],
  ['Al0.3HfNbTaTiZr', [
    ['cast', 'BCC', 73, { test: 'compression', celsius: 25, yields: 1188, elongation: 50, grain: 105, hardness: 353, youngs: 63 }],
  ]],
  ['Al0.429Ca0.286LiMgSi0.143', [
    ['cast', '', 211, { test: 'compression', celsius: 25, yields: 418, elongation: 13, density: 1.57 }],
  ]],
  ['Al0.451Co0.451Cr0.451Fe0.451Ni', [
    ['unknown', 'B2+L12', 33, { test: 'tension', celsius: 25, yields: 545, strength: 1110, elongation: 20 }],
    ['unknown', '', 33, { test: 'tension', celsius: -70, yields: 570, strength: 1143, elongation: 18 }],
    ['unknown', '', 33, { test: 'tension', celsius: -192, yields: 700, strength: 1000, elongation: 9 }],
    ['cast', 'FCC+B2', 33, { test: 'tension', celsius: 25, yields: 545, strength: 1110, elongation: 20 }],
  ]],
  ['Al0.465Co0.465Cr0.465Fe0.465Ni', [
    ['unknown', 'B2+L12', 33, { test: 'tension', celsius: 25, yields: 545, strength: 1050, elongation: 16.5 }],
    ['unknown', '', 33, { test: 'tension', celsius: -70, yields: 595, strength: 1168, elongation: 15.8 }],
    ['unknown', '', 33, { test: 'tension', celsius: -192, yields: 700, strength: 1000, elongation: 7 }],
    ['cast', 'FCC+B2', 33, { test: 'tension', celsius: 25, yields: 545, strength: 1050, elongation: 16.5 }],
  ]],
  ['Al0.476Co0.476Cr0.476Fe0.476Ni', [
    ['wrought', 'FCC+B2', 182, { test: 'tension', celsius: 25, yields: 1263, elongation: 21.4 }],
    ['wrought', 'FCC+B2', 182, { test: 'tension', celsius: 25, yields: 1154, elongation: 25 }],
    ['wrought', 'FCC+B2', 182, { test: 'tension', celsius: 25, yields: 1490, elongation: 16 }],
  ]],
  ['Al0.4Cr0.5Cu0.5Fe0.5Ni', [
    ['unknown', 'FCC', 186, { celsius: 25 }],
  ]],
  ['Al0.4Hf0.6NbTaTiZr', [
    ['other', 'BCC', 20, { test: 'compression', celsius: 25, yields: 1841, strength: 2269, elongation: 10, grain: 140, hardness: 500 }],
    ['other', 'BCC', 20, { test: 'compression', celsius: 800, yields: 796, strength: 834, elongation: 50 }],
    ['other', 'BCC', 20, { test: 'compression', celsius: 1000, yields: 298, strength: 455, elongation: 50 }],
    ['other', 'BCC', 44, { test: 'compression', celsius: 23, yields: 1841, density: 9.08 }],
    ['other', 'BCC', 44, { test: 'compression', celsius: 1000, yields: 298, density: 9.08 }],
    ['other', 'BCC', 44, { test: 'compression', celsius: 1200, yields: 89, density: 9.08 }],
  ]],
  ['Al0.511Co0.511Cr0.511Fe0.511Ni', [
    ['unknown', 'B2+L12', 33, { test: 'tension', celsius: 25, yields: 545, strength: 1030, elongation: 16.5 }],
    ['unknown', '', 33, { test: 'tension', celsius: -70, yields: 580, strength: 1034, elongation: 10.5 }],
    ['unknown', '', 33, { test: 'tension', celsius: -192, yields: 700, strength: 1000, elongation: 4 }],
    ['cast', 'FCC+B2', 33, { test: 'tension', celsius: 25, yields: 545, strength: 1030, elongation: 16.5 }],
  ]],
  ['Al0.515Cr0.515Cu0.515Fe0.515Ni', [
    ['cast', 'FCC+BCC+B2', 148, { test: 'compression', celsius: 25, elongation: 30 }],
  ]],
  ['Al0.544C0.001Co0.69FeNi0.69', [
    ['cast', 'B2+L12', 175, { test: 'compression', celsius: 25, yields: 1202, elongation: 32.6 }],
  ]],
  ['Al0.545Cr0.545Fe0.515NiTi0.273', [
    ['cast', 'BCC+B2+L12', 103, { test: 'compression', celsius: 25, elongation: 16.3 }],
    ['annealed', 'BCC+B2+L12', 103, { test: 'compression', celsius: 25, elongation: 19.8 }],
  ]],
  ['Al0.55CoCrFeMnNiTa0.6', [
    ['unknown', 'FCC+BCC+Sec.', 213, { hardness: 570 }],
  ]],
  ['Al0.562Co0.938Cr0.312Fe0.312Ni', [
    ['cast', 'FCC+BCC', 5, { test: 'compression', celsius: 25, yields: 1129.4, elongation: 16.7, hardness: 305.4 }],
  ]],
  ['Al0.569Ca0.143Li0.857MgSi0.286Y0.003', [
    ['cast', '', 211, { test: 'compression', celsius: 25, yields: 556, elongation: 3, density: 1.7 }],
  ]],
  ['Al0.581Co0.968Cr0.323Fe0.323Mo0.032Ni', [
    ['cast', 'FCC+BCC', 5, { test: 'compression', celsius: 25, yields: 1159.7, elongation: 18.2, hardness: 357.3 }],
  ]],
  ['Al0.5B0.2CoCrCuFeNi', [
    ['cast', '', 198, { celsius: 25, hardness: 415 }],
  ]],
  ['Al0.5B0.6CoCrCuFeNi', [
    ['cast', '', 198, { celsius: 25, hardness: 505 }],
  ]],
  ['Al0.5BCoCrCuFeNi', [
    ['cast', '', 198, { celsius: 25, hardness: 736 }],
  ]],
  ['Al0.5Co0.5Cr0.5Fe0.5Mo0.25Ni', [
    ['cast', 'FCC+B2+Sec.', 52, { celsius: 25, hardness: 395 }],
  ]],
  ['Al0.5Co0.5Cr0.5FeMo0.25Ni0.5', [
    ['cast', 'BCC+Sec.', 181, { celsius: 25, hardness: 639 }],
  ]],
  ['Al0.5CoCr0.5Fe0.5Mo0.25Ni0.5', [
    ['cast', 'FCC+BCC+Sec.', 1, { celsius: 25, grain: 200, hardness: 586 }],
  ]],
  ['Al0.5CoCrCuFeNi', [
    ['cast', '', 198, { celsius: 25, hardness: 300 }],
    ['cast', 'FCC', 203, { celsius: 25, hardness: 225 }],
    ['cast', 'FCC', 11, { celsius: 25, hardness: 215 }],
    ['cast', 'FCC', 10, { test: 'compression', celsius: 1000, yields: 150 }],
    ['cast', 'FCC', 10, { test: 'compression', celsius: 25, yields: 388 }],
    ['cast', 'FCC', 10, { test: 'compression', celsius: 300, yields: 411 }],
    ['cast', 'FCC', 10, { test: 'compression', celsius: 500, yields: 421 }],
    ['cast', 'FCC', 10, { test: 'compression', celsius: 700, yields: 426 }],
    ['cast', 'FCC', 10, { test: 'compression', celsius: 900, yields: 230 }],
    ['cast', 'FCC', 10, { test: 'compression', celsius: 1100, yields: 80 }],
    ['wrought', 'Other', 31, { test: 'tension', celsius: 25, yields: 1284, strength: 1344, elongation: 7.6 }],
    ['wrought', 'FCC', 68, { test: 'tension', celsius: 25, yields: 1290, strength: 1400, elongation: 5 }],
    ['wrought', 'Other', 68, { test: 'tension', celsius: 25, yields: 650, strength: 790, elongation: 27 }],
    ['wrought', 'FCC', 68, { test: 'tension', celsius: 700, yields: 180, strength: 185, elongation: 5 }],
    ['wrought', 'Other', 68, { test: 'tension', celsius: 700, yields: 160, strength: 180, elongation: 12 }],
    ['cast', 'FCC', 179, { hardness: 160 }],
  ]],
  ['Al0.5CoCrFeMnNiTa0.2', [
    ['unknown', 'FCC+BCC+Sec.', 213, { hardness: 385 }],
  ]],
  ['Al0.5CoCrFeMnNiTa0.4', [
    ['unknown', 'FCC+BCC+Sec.', 213, { hardness: 486 }],
  ]],
  ['Al0.5CoCrFeMo0.5Ni', [
    ['cast', 'FCC+Sec.', 18, { celsius: 25, hardness: 425 }],
  ]],
  ['Al0.5CoCrFeNi', [
    ['annealed', 'FCC+BCC', 67, { celsius: 25, hardness: 159 }],
    ['annealed', 'FCC+BCC', 67, { celsius: 25, hardness: 209 }],
    ['unknown', 'FCC+BCC', 51, { hardness: 250 }],
  ]],
  ['Al0.5Cr0.5Cu0.5Fe0.5Ni', [
    ['unknown', 'FCC+BCC', 186, { celsius: 25 }],
  ]],
  ['Al0.5CrCuFeNi', [
    ['cast', 'FCC', 17, { hardness: 226 }],
    ['wrought', 'FCC', 17, { hardness: 287 }],
  ]],
  ['Al0.5CrFeMnNi', [
    ['cast', 'BCC+B2', 165, { test: 'compression', celsius: 25, yields: 1091, elongation: 50, hardness: 353 }],
  ]],
  ['Al0.5HfNbTaTiZr', [
    ['cast', 'BCC', 73, { test: 'compression', celsius: 25, yields: 1302, elongation: 46, grain: 86, hardness: 396, youngs: 97 }],
  ]],
  ['Al0.5MoNbTiV', [
    ['cast', 'BCC', 206, { test: 'compression', celsius: 25, yields: 1625, strength: 1800, elongation: 11, hardness: 487 }],
  ]],
  ['Al0.5NbTa0.5TiZr', [
    ['wrought', 'BCC+HCP', 130, { test: 'compression', celsius: 25, yields: 1500, elongation: 6 }],
    ['powder', 'BCC', 130],
    ['wrought', 'BCC+HCP', 130, { test: 'compression', celsius: 25, yields: 1200, elongation: 8 }],
    ['wrought', 'BCC+HCP', 130, { test: 'compression', celsius: 25, yields: 2100, elongation: 12 }],
    ['wrought', 'BCC+HCP', 130, { test: 'compression', celsius: 25, yields: 1740, elongation: 20 }],
    ['wrought', 'BCC+HCP', 130, { test: 'compression', celsius: 25, yields: 1630, elongation: 12 }],
  ]],
  ['Al0.667CCo0.667Cr0.667Fe0.667Ni0.667', [
    ['cast', 'BCC+Sec.', 70, { test: 'compression', celsius: 25, yields: 1255, strength: 2083, youngs: 73 }],
  ]],
  ['Al0.667Co0.667Cr0.667Fe0.667Mo0.333Ni', [
    ['cast', 'FCC+B2+Sec.', 52, { celsius: 25, hardness: 586 }],
  ]],
  ['Al0.667Co0.667Cr0.667FeMo0.333Ni0.667', [
    ['cast', 'BCC+Sec.', 181, { celsius: 25, hardness: 635 }],
  ]],
  ['Al0.667CoCr0.667Fe0.667Mo0.333Ni0.667', [
    ['cast', 'BCC+Sec.', 1, { celsius: 25, hardness: 741 }],
  ]],
  ['Al0.667CoCrCuFeMnNiTiV', [
    ['cast', 'BCC+Sec.', 132, { test: 'compression', celsius: 25, yields: 1461, strength: 1461, elongation: 1, youngs: 163 }],
  ]],
  ['Al0.667Li0.667Mg0.333Sc0.667Ti', [
    ['unknown', 'FCC+HCP', 192, { celsius: 25, hardness: 591 }],
  ]],
  ['Al0.667NbTa0.333TiZr0.333', [
    ['other', 'BCC', 20, { test: 'compression', celsius: 25, yields: 1280, strength: 1367, elongation: 4, grain: 2000, hardness: 408 }],
    ['other', 'BCC', 20, { test: 'compression', celsius: 800, yields: 728, strength: 1000, elongation: 12 }],
    ['other', 'BCC', 20, { test: 'compression', celsius: 1000, yields: 403, strength: 415, elongation: 50 }],
  ]],
  ['Al0.6CoCr0.333Fe0.333Mo0.067Ni', [
    ['cast', 'FCC+BCC', 5, { test: 'compression', celsius: 25, yields: 1250.8, elongation: 14.7, hardness: 362.6 }],
  ]],
  ['Al0.6CoCr0.333Fe0.333Mo0.1Ni0.967', [
    ['cast', 'FCC+BCC', 5, { test: 'compression', celsius: 25, yields: 1198.3, elongation: 14.5, hardness: 359.7 }],
  ]],
  ['Al0.6CoCrFeNi', [
    ['cast', 'FCC+BCC+B2', 124, { hardness: 228 }],
  ]],
  ['Al0.6Cr0.5Cu0.5Fe0.5Ni', [
    ['unknown', 'FCC+BCC', 186, { celsius: 25 }],
  ]],
  ['Al0.6CrFeMnNi', [
    ['cast', 'BCC+B2', 165, { test: 'compression', celsius: 25, yields: 1130, elongation: 53, hardness: 361 }],
  ]],
  ['Al0.714Cr0.714Cu0.714Fe0.714Ni', [
    ['annealed', 'FCC+BCC', 142, { celsius: 25, hardness: 367 }],
  ]],
  ['Al0.75CoCrFeNi', [
    ['annealed', 'FCC+BCC', 67, { celsius: 25, hardness: 388 }],
    ['annealed', 'FCC+BCC', 67, { celsius: 25, hardness: 280 }],
  ]],
  ['Al0.75HfNbTaTiZr', [
    ['cast', 'BCC', 73, { test: 'compression', celsius: 25, yields: 1415, strength: 2050, elongation: 30, grain: 89, hardness: 427, youngs: 102 }],
  ]],
  ['Al0.75MoNbTiV', [
    ['cast', 'BCC', 206, { test: 'compression', celsius: 25, yields: 1260, strength: 1300, elongation: 8, hardness: 517 }],
  ]],
  ['Al0.774FeMn0.903Ni0.484Ti0.026', [
    ['cast', '', 199, { hardness: 330 }],
    ['annealed', '', 199, { hardness: 410 }],
    ['annealed', '', 199, { hardness: 330 }],
  ]],
  ['Al0.774FeMn0.903Ni0.484Ti0.097', [
    ['cast', '', 199, { hardness: 500 }],
    ['annealed', '', 199, { hardness: 495 }],
    ['annealed', '', 199, { hardness: 490 }],
  ]],
  ['Al0.7Co0.3CrFeNi', [
    ['powder', 'FCC+BCC+B2', 115, { test: 'compression', celsius: 25, yields: 2033, strength: 2635, elongation: 8, hardness: 624 }],
  ]],
  ['Al0.7CrFeMnNi', [
    ['cast', 'BCC+B2', 165, { test: 'compression', celsius: 25, yields: 1170, elongation: 55, hardness: 375 }],
  ]],
  ['Al0.833Cr0.833Cu0.833Fe0.833Ni', [
    ['annealed', 'FCC+BCC', 142, { celsius: 25, hardness: 407 }],
  ]],
  ['Al0.853Co0.647CrFe0.147Ni0.294', [
    ['unknown', '', 41, { hardness: 699 }],
  ]],
  ['Al0.875CoCrFeNi', [
    ['annealed', 'BCC', 67, { celsius: 25, hardness: 538 }],
    ['annealed', 'FCC+BCC', 67, { celsius: 25, hardness: 361 }],
    ['unknown', 'FCC+BCC', 25, { celsius: 25 }],
  ]],
  ['Al0.8CoCrCuFeNi', [
    ['cast', 'FCC+BCC', 1, { celsius: 25, hardness: 270 }],
  ]],
  ['Al0.8CrFeMnNi', [
    ['cast', 'BCC+B2', 165, { test: 'compression', celsius: 25, yields: 1200, elongation: 55, hardness: 386 }],
  ]],
  ['Al0.947Co0.158MoNi0.289W0.237', [
    ['cast', '', 183, { celsius: 25, hardness: 725 }],
  ]],
  ['Al0.9CoCrFeNi', [
    ['cast', 'FCC+BCC+B2', 124, { hardness: 511 }],
  ]],
  ['AlC0.1CoCrFeNi', [
    ['cast', 'BCC+Sec.', 70, { test: 'compression', celsius: 25, yields: 957, strength: 2550, youngs: 213 }],
  ]],
  ['AlC0.2CoCrFeNi', [
    ['cast', 'BCC+Sec.', 70, { test: 'compression', celsius: 25, yields: 906, strength: 2386, youngs: 151 }],
  ]],
  ['AlC0.3CoCrFeNi', [
    ['cast', 'BCC+Sec.', 70, { test: 'compression', celsius: 25, yields: 867, strength: 2178, youngs: 137 }],
  ]],
  ['AlC0.4CoCrFeNi', [
    ['cast', 'BCC+Sec.', 70, { test: 'compression', celsius: 25, yields: 1056, strength: 2375, youngs: 156 }],
  ]],
  ['AlC0.5CoCrFeNi', [
    ['cast', 'BCC+Sec.', 70, { test: 'compression', celsius: 25, yields: 1060, strength: 2250, youngs: 181 }],
  ]],
  ['AlCCoCrFeNi', [
    ['cast', 'BCC+Sec.', 70, { test: 'compression', celsius: 25, yields: 1251, strength: 2166, youngs: 75 }],
    ['powder', 'FCC+BCC', 189],
  ]],
  ['AlCo0.149Cr0.34Cu0.191Fe0.34Ni0.106', [
    ['unknown', '', 41, { hardness: 749 }],
  ]],
  ['AlCo0.234Cr0.468Cu0.106Fe0.213Ni0.106', [
    ['unknown', '', 41, { hardness: 797 }],
  ]],
  ['AlCo0.238Cr0.714Cu0.119Fe0.167Ni0.143', [
    ['unknown', '', 41, { hardness: 783 }],
  ]],
  ['AlCo0.255Cr0.255Cu0.106Fe0.277Ni0.234', [
    ['unknown', '', 41, { hardness: 811 }],
  ]],
  ['AlCo0.255Cr0.426Cu0.106Fe0.234Ni0.106', [
    ['unknown', '', 41, { hardness: 843 }],
  ]],
  ['AlCo0.256Cr0.795Cu0.128Fe0.205Ni0.179', [
    ['unknown', '', 41, { hardness: 802 }],
  ]],
  ['AlCo0.25CrFeNi', [
    ['unknown', '', 86, { test: 'compression', celsius: 25, yields: 1363, elongation: 19 }],
  ]],
  ['AlCo0.277Cr0.277Cu0.106Fe0.255Ni0.213', [
    ['unknown', '', 41, { hardness: 799 }],
  ]],
  ['AlCo0.277Cr0.426Cu0.106Fe0.213Ni0.106', [
    ['unknown', '', 41, { hardness: 805 }],
  ]],
  ['AlCo0.278Cr0.861Cu0.167Fe0.25Ni0.222', [
    ['unknown', '', 41, { hardness: 790 }],
  ]],
  ['AlCo0.289Cr0.158Cu0.237Fe0.816Ni0.132', [
    ['unknown', '', 41, { hardness: 604 }],
  ]],
  ['AlCo0.298Cr0.319Cu0.106Fe0.277Ni0.128', [
    ['unknown', '', 41, { hardness: 728 }],
  ]],
  ['AlCo0.298Cr0.404Cu0.106Fe0.213Ni0.106', [
    ['unknown', '', 41, { hardness: 855 }],
  ]],
  ['AlCo0.298Cr0.426Cu0.106Fe0.191Ni0.106', [
    ['unknown', '', 41, { hardness: 859 }],
  ]],
  ['AlCo0.304Cr0.5Cu0.109Fe0.152Ni0.109', [
    ['unknown', '', 41, { hardness: 811 }],
  ]],
  ['AlCo0.318Cr0.5Cu0.114Fe0.205Ni0.136', [
    ['unknown', '', 41, { hardness: 790 }],
  ]],
  ['AlCo0.326Cr0.488Cu0.116Fe0.279Ni0.116', [
    ['unknown', '', 41, { hardness: 828 }],
  ]],
  ['AlCo0.333Cr0.333Fe0.333Ni0.333', [
    ['cast', 'BCC', 64, { celsius: 25, hardness: 506 }],
  ]],
  ['AlCo0.349Cr0.395Cu0.116Fe0.326Ni0.14', [
    ['unknown', '', 41, { hardness: 794 }],
  ]],
  ['AlCo0.362Cr0.34Cu0.106Fe0.213Ni0.106', [
    ['unknown', '', 41, { hardness: 841 }],
  ]],
  ['AlCo0.383Cr0.319Cu0.106Fe0.213Ni0.106', [
    ['unknown', '', 41, { hardness: 849 }],
  ]],
  ['AlCo0.395Cr0.349Fe0.326Ni0.256', [
    ['unknown', '', 41, { hardness: 806 }],
  ]],
  ['AlCo0.404Cr0.404Cu0.106Fe0.106Ni0.106', [
    ['unknown', '', 41, { hardness: 878 }],
  ]],
  ['AlCo0.419Cr0.465Fe0.279Ni0.163', [
    ['unknown', '', 41, { hardness: 864 }],
  ]],
  ['AlCo0.419Cr0.558Fe0.233Ni0.116', [
    ['unknown', '', 41, { hardness: 856 }],
  ]],
  ['AlCo0.426Cr0.383Cu0.106Fe0.106Ni0.106', [
    ['unknown', 'BCC+B2', 41, { hardness: 883 }],
  ]],
  ['AlCo0.442Cr0.442Fe0.256Ni0.186', [
    ['unknown', '', 41, { hardness: 855 }],
  ]],
  ['AlCo0.442Cr0.558Fe0.186Ni0.14', [
    ['unknown', '', 41, { hardness: 855 }],
  ]],
  ['AlCo0.457Cr0.391Cu0.109Fe0.109Ni0.109', [
    ['unknown', '', 41, { hardness: 840 }],
  ]],
  ['AlCo0.465Cr0.442Fe0.209Ni0.209', [
    ['unknown', '', 41, { hardness: 816 }],
  ]],
  ['AlCo0.465Cr0.488Fe0.209Ni0.163', [
    ['unknown', '', 41, { hardness: 828 }],
  ]],
  ['AlCo0.465Cr0.512Fe0.186Ni0.163', [
    ['unknown', '', 41, { hardness: 857 }],
  ]],
  ['AlCo0.4Cr0.4Fe0.4Ni0.4', [
    ['cast', 'BCC', 64, { celsius: 25, hardness: 487 }],
  ]],
  ['AlCo0.512Cr0.512Fe0.186Ni0.116', [
    ['unknown', '', 41, { hardness: 882 }],
  ]],
  ['AlCo0.512Cr0.535Fe0.163Ni0.116', [
    ['unknown', 'BCC+B2', 41, { hardness: 883 }],
  ]],
  ['AlCo0.512Cr0.581Fe0.116Ni0.116', [
    ['unknown', '', 41, { hardness: 848 }],
  ]],
  ['AlCo0.535Cr0.488Fe0.186Ni0.116', [
    ['unknown', '', 41, { hardness: 863 }],
  ]],
  ['AlCo0.558Cr0.512Fe0.116Ni0.14', [
    ['unknown', '', 41, { hardness: 875 }],
  ]],
  ['AlCo0.558Cr0.535Fe0.116Ni0.116', [
    ['unknown', '', 41, { hardness: 868 }],
    ['unknown', '', 41, { hardness: 868 }],
  ]],
  ['AlCo0.581Cr0.512Fe0.116Ni0.116', [
    ['unknown', '', 41, { hardness: 865 }],
    ['unknown', '', 41, { hardness: 865 }],
  ]],
  ['AlCo0.5Cr0.5Cu0.5Fe0.5Ni0.5', [
    ['cast', 'BCC', 10, { test: 'compression', celsius: 1000, yields: 116 }],
    ['cast', 'BCC', 10, { test: 'compression', celsius: 1100, yields: 79 }],
    ['cast', 'BCC', 10, { test: 'compression', celsius: 25, yields: 1620 }],
    ['cast', 'BCC', 10, { test: 'compression', celsius: 600, yields: 805 }],
    ['cast', 'BCC', 10, { test: 'compression', celsius: 500, yields: 1120 }],
    ['cast', 'BCC', 10, { test: 'compression', celsius: 700, yields: 567 }],
    ['cast', 'BCC', 10, { test: 'compression', celsius: 900, yields: 214 }],
    ['cast', 'BCC', 10, { test: 'compression', celsius: 800, yields: 302 }],
    ['cast', 'FCC+BCC', 179, { hardness: 560 }],
  ]],
  ['AlCo0.5Cr0.5Fe0.5Mo0.25Ni0.5', [
    ['cast', 'BCC+B2', 18, { celsius: 25, hardness: 605 }],
  ]],
  ['AlCo0.5Cr0.5Fe0.5Ni0.5', [
    ['annealed', 'BCC', 67, { celsius: 25, hardness: 509 }],
    ['annealed', 'BCC', 67, { celsius: 25, hardness: 512 }],
    ['cast', 'BCC', 64, { celsius: 25, hardness: 432 }],
    ['cast', 'BCC+B2', 100, { test: 'compression', celsius: 25, yields: 1241, elongation: 9.98, grain: 80.67, hardness: 581.7 }],
    ['unknown', 'BCC', 51, { hardness: 733 }],
  ]],
  ['AlCo0.5CrFe0.147Ni0.294', [
    ['unknown', '', 41, { hardness: 699 }],
  ]],
  ['AlCo0.5CrFeMo0.5Ni', [
    ['cast', 'BCC+Sec.', 1, { celsius: 25, hardness: 801 }],
  ]],
  ['AlCo0.5CrFeNi', [
    ['unknown', '', 86, { test: 'compression', celsius: 25, yields: 1349, elongation: 20 }],
  ]],
  ['AlCo0.667Cr0.667Cu0.667Fe0.667Ni0.667', [
    ['cast', 'FCC+BCC', 179, { hardness: 498 }],
  ]],
  ['AlCo0.667Cr0.667Fe0.667Mo0.333Ni0.667', [
    ['cast', 'B2+Sec.', 18, { celsius: 25, hardness: 655 }],
  ]],
  ['AlCo0.667Cr0.667Fe0.667Ni0.667', [
    ['annealed', 'BCC', 67, { celsius: 25, hardness: 484 }],
    ['annealed', 'BCC', 67, { celsius: 25, hardness: 517 }],
    ['cast', 'BCC', 64, { celsius: 25, hardness: 402 }],
  ]],
  ['AlCo0.674Cr0.419Fe0.116Ni0.116', [
    ['unknown', '', 41, { hardness: 782 }],
  ]],
  ['AlCo0.75CrFeNi', [
    ['unknown', '', 86, { test: 'compression', celsius: 25, yields: 1331, elongation: 20 }],
  ]],
  ['AlCo0.8Cr0.8Fe0.8Ni0.8', [
    ['annealed', 'BCC', 67, { celsius: 25, hardness: 487 }],
    ['annealed', 'BCC', 67, { celsius: 25, hardness: 499 }],
  ]],
  ['AlCoCr0.091Nb0.727W0.212', [
    ['cast', '', 183, { celsius: 25, hardness: 1084 }],
  ]],
  ['AlCoCrCuFeMnNi', [
    ['cast', 'FCC+BCC+Sec.', 134, { test: 'compression', celsius: 25, yields: 1005, elongation: 15 }],
  ]],
  ['AlCoCrCuFeNi', [
    ['cast', 'FCC+BCC', 143, { celsius: 25, hardness: 472 }],
    ['cast', 'FCC+BCC', 134, { test: 'compression', celsius: 25, yields: 1303, elongation: 24 }],
    ['cast', 'FCC+BCC', 10, { test: 'compression', celsius: 1000, yields: 47 }],
    ['cast', 'FCC+BCC', 10, { test: 'compression', celsius: 25, yields: 948 }],
    ['cast', 'FCC+BCC', 10, { test: 'compression', celsius: 600, yields: 561 }],
    ['cast', 'FCC+BCC', 10, { test: 'compression', celsius: 700, yields: 307 }],
    ['cast', 'FCC+BCC', 10, { test: 'compression', celsius: 800, yields: 172 }],
    ['cast', 'FCC+BCC', 10, { test: 'compression', celsius: 900, yields: 98 }],
    ['cast', 'BCC+Sec.', 141, { test: 'tension', celsius: 25, yields: 790, strength: 790, elongation: 0.2 }],
    ['wrought', 'BCC+Sec.', 141, { test: 'tension', celsius: 25, yields: 1040, strength: 1170, elongation: 1 }],
    ['cast', 'BCC+Sec.', 141, { test: 'tension', celsius: 700, yields: 350, strength: 360, elongation: 5 }],
    ['wrought', 'BCC+Sec.', 141, { test: 'tension', celsius: 700, yields: 63, strength: 91, elongation: 63 }],
    ['cast', 'FCC+BCC', 179, { hardness: 458 }],
    ['unknown', '', 120, { test: 'compression', celsius: 25, yields: 1285, elongation: 24.6 }],
  ]],
  ['AlCoCrCuNiTi', [
    ['unknown', 'BCC', 113, { test: 'compression', celsius: 25, strength: 1495, youngs: 36 }],
  ]],
  ['AlCoCrCuNiTiY', [
    ['cast', 'Other', 113, { test: 'compression', celsius: 25, strength: 1192, youngs: 37 }],
  ]],
  ['AlCoCrCuNiTiY0.5', [
    ['cast', 'Other', 113, { test: 'compression', celsius: 25, strength: 1025, youngs: 36 }],
  ]],
  ['AlCoCrCuNiTiY0.8', [
    ['cast', 'Other', 113, { test: 'compression', celsius: 25, strength: 1325, youngs: 38 }],
  ]],
  ['AlCoCrFe0.6Mo0.5Ni', [
    ['cast', 'BCC+Sec.', 181, { celsius: 25, hardness: 754 }],
  ]],
  ['AlCoCrFeMo0.1Ni', [
    ['cast', 'BCC', 137, { test: 'compression', celsius: 25, yields: 1804, strength: 2280 }],
  ]],
  ['AlCoCrFeMo0.2Ni', [
    ['cast', 'BCC+Sec.', 137, { test: 'compression', celsius: 25, yields: 2456, strength: 2953 }],
  ]],
  ['AlCoCrFeMo0.3Ni', [
    ['cast', 'BCC+Sec.', 137, { test: 'compression', celsius: 25, yields: 2649, strength: 3208 }],
  ]],
  ['AlCoCrFeMo0.4Ni', [
    ['cast', 'BCC+Sec.', 137, { test: 'compression', celsius: 25, yields: 2670, strength: 3161 }],
  ]],
  ['AlCoCrFeMo0.5', [
    ['cast', 'B2+Sec.', 52, { celsius: 25, hardness: 857 }],
  ]],
  ['AlCoCrFeMo0.5Ni', [
    ['cast', 'B2+Sec.', 18, { celsius: 25, hardness: 715 }],
    ['cast', 'BCC+Sec.', 137, { test: 'compression', celsius: 25, yields: 2757, strength: 3036 }],
    ['cast', 'BCC+Sec.', 1, { celsius: 25, hardness: 796 }],
    ['cast', 'BCC+Sec.', 181, { celsius: 25, hardness: 755 }],
    ['cast', 'B2+Sec.', 52, { celsius: 25, hardness: 730 }],
  ]],
  ['AlCoCrFeMo0.5Ni0.5', [
    ['cast', 'B2+Sec.', 52, { celsius: 25, hardness: 708 }],
  ]],
  ['AlCoCrFeNb0.1Ni', [
    ['cast', 'BCC', 140, { test: 'compression', celsius: 25, yields: 1641, strength: 3285, hardness: 569 }],
  ]],
  ['AlCoCrFeNb0.25Ni', [
    ['cast', 'BCC+Sec.', 140, { test: 'compression', celsius: 25, yields: 1959, strength: 3008, hardness: 668 }],
  ]],
  ['AlCoCrFeNb0.5Ni', [
    ['cast', 'BCC+Sec.', 140, { test: 'compression', celsius: 25, yields: 2473, strength: 3170, hardness: 747 }],
  ]],
  ['AlCoCrFeNb0.75Ni', [
    ['cast', 'BCC+Sec.', 140, { celsius: 25 }],
  ]],
  ['AlCoCrFeNi', [
    ['annealed', 'BCC', 67, { celsius: 25, hardness: 484 }],
    ['annealed', 'FCC+BCC', 67, { celsius: 25, hardness: 433 }],
    ['cast', 'BCC', 64, { celsius: 25, hardness: 395 }],
    ['cast', 'BCC', 133, { test: 'compression', celsius: 25, yields: 1251, strength: 2004 }],
    ['cast', 'BCC', 70, { test: 'compression', celsius: 25, yields: 1138 }],
    ['cast', 'BCC', 137, { test: 'compression', celsius: 25, yields: 1051 }],
    ['cast', 'BCC', 140, { test: 'compression', celsius: 25, yields: 1373, strength: 3531, hardness: 520 }],
    ['cast', 'BCC', 138, { test: 'compression', celsius: 25, yields: 1110 }],
    ['cast', 'BCC+B2', 147, { test: 'tension', celsius: 700, yields: 395, strength: 400, elongation: 1 }],
    ['cast', 'BCC+B2', 81, { test: 'compression', celsius: 25, yields: 1380, elongation: 10 }],
    ['annealed', 'FCC+BCC+B2+Sec.', 81, { test: 'compression', celsius: 25, yields: 1430, elongation: 1.6 }],
    ['annealed', 'FCC+BCC+B2', 81, { test: 'compression', celsius: 25, yields: 1690, elongation: 2.7 }],
    ['annealed', 'FCC+BCC+B2', 81, { test: 'compression', celsius: 25, yields: 1220, elongation: 13 }],
    ['annealed', 'FCC+BCC+B2', 81, { test: 'compression', celsius: 25, yields: 1450, elongation: 20 }],
    ['annealed', 'FCC+BCC', 84, { test: 'tension', celsius: 25, yields: 900, strength: 935, elongation: 0.8 }],
    ['cast', 'BCC+B2', 116, { test: 'compression', celsius: 25, elongation: 22.7 }],
    ['cast', 'BCC+B2', 147, { test: 'tension', celsius: 700, yields: 395, strength: 400, elongation: 1 }],
    ['other', 'FCC+BCC+B2+Sec.', 147, { test: 'tension', celsius: 700, yields: 295, strength: 393, elongation: 12 }],
    ['cast', 'BCC+B2', 109, { test: 'compression', celsius: 25, yields: 1631, elongation: 16, grain: 204, hardness: 519 }],
    ['cast', 'BCC+B2', 109, { test: 'compression', celsius: 25, yields: 1209, elongation: 23, grain: 185, hardness: 493 }],
    ['unknown', '', 85, { test: 'compression', celsius: 25, yields: 1300, elongation: 24.2 }],
    ['unknown', '', 86, { test: 'compression', celsius: 25, yields: 1313, elongation: 19 }],
    ['powder', 'FCC+BCC', 99],
    ['powder', 'FCC+BCC', 99],
    ['powder', 'FCC+BCC', 99],
    ['powder', 'FCC+BCC', 99],
    ['powder', 'FCC+BCC', 99],
    ['powder', 'FCC+BCC', 110, { test: 'compression', celsius: 25, yields: 1221.1, elongation: 30, grain: 10.21, hardness: 550 }],
    ['powder', 'FCC+BCC', 110, { test: 'compression', celsius: 25, yields: 1186.7, elongation: 33, grain: 15.68, hardness: 510 }],
    ['powder', 'FCC+BCC', 110, { test: 'compression', celsius: 25, yields: 1112.9, elongation: 30, grain: 16.7, hardness: 503 }],
    ['powder', 'BCC+B2', 196, { test: 'compression', celsius: 25 }],
    ['powder', 'BCC+B2', 196, { test: 'compression', celsius: 25 }],
    ['powder', 'FCC+BCC+B2', 196, { test: 'compression', celsius: 25 }],
    ['powder', 'FCC+BCC+B2', 196, { test: 'compression', celsius: 25 }],
    ['powder', 'FCC+BCC+B2', 196, { test: 'compression', celsius: 25, yields: 520 }],
    ['powder', 'FCC+BCC+B2', 196, { test: 'compression', celsius: 25, yields: 1150 }],
    ['powder', 'FCC+BCC+B2', 196, { test: 'compression', celsius: 25, yields: 1287 }],
    ['powder', 'FCC+BCC+B2', 196, { test: 'compression', celsius: 25, yields: 1286 }],
    ['powder', 'FCC+BCC+B2', 196, { test: 'compression', celsius: 25, yields: 1390 }],
    ['powder', 'FCC+BCC+B2', 196, { test: 'compression', celsius: 25, yields: 1626 }],
    ['unknown', 'BCC', 51, { hardness: 500 }],
  ]],
  ['AlCoCrFeNiSi', [
    ['cast', 'BCC+Sec.', 138, { test: 'compression', celsius: 25, yields: 2411, strength: 2950 }],
  ]],
  ['AlCoCrFeNiSi0.2', [
    ['cast', 'BCC', 138, { test: 'compression', celsius: 25, yields: 1265, strength: 2173 }],
  ]],
  ['AlCoCrFeNiSi0.4', [
    ['cast', 'BCC', 138, { test: 'compression', celsius: 25, yields: 1481, strength: 2444 }],
  ]],
  ['AlCoCrFeNiSi0.6', [
    ['cast', 'BCC', 138, { test: 'compression', celsius: 25, yields: 1834, strength: 2195 }],
  ]],
  ['AlCoCrFeNiSi0.8', [
    ['cast', 'BCC+Sec.', 138, { test: 'compression', celsius: 25, yields: 2179, strength: 2664 }],
  ]],
  ['AlCoCuFeNdNi', [
    ['cast', 'Other', 143, { celsius: 25, hardness: 578 }],
  ]],
  ['AlCoCuFeNiSi', [
    ['cast', 'FCC+BCC', 143, { celsius: 25, hardness: 682 }],
  ]],
  ['AlCoCuFeNiTi', [
    ['cast', 'FCC+BCC', 143, { celsius: 25, hardness: 626 }],
    ['unknown', '', 120, { test: 'compression', celsius: 25, yields: 1612, elongation: 12.8 }],
  ]],
  ['AlCoCuFeNiZr', [
    ['cast', 'FCC+BCC+Sec.', 143, { celsius: 25, hardness: 472 }],
  ]],
  ['AlCr0.077Cu0.077Mg0.077Si0.231Zn0.077', [
    ['cast', 'FCC', 185, { test: 'compression', celsius: 25, yields: 490, elongation: 6, density: 3.06, youngs: 78.4 }],
  ]],
  ['AlCrCuFeMnW0.05', [
    ['powder', 'BCC+Sec.', 201, { test: 'compression', celsius: 25, yields: 1120, hardness: 680 }],
  ]],
  ['AlCrCuFeMnW0.1', [
    ['powder', 'BCC+Sec.', 201, { test: 'compression', celsius: 25, yields: 1250, hardness: 705 }],
  ]],
  ['AlCrCuFeMnW0.5', [
    ['powder', 'BCC+Sec.', 201, { test: 'compression', celsius: 25, yields: 1510, hardness: 780 }],
  ]],
  ['AlCrCuFeNi', [
    ['cast', 'FCC+BCC', 64, { celsius: 25, hardness: 342 }],
    ['annealed', 'FCC+BCC', 142, { celsius: 25, hardness: 495 }],
    ['powder', 'FCC+BCC+B2', 94, { hardness: 434 }],
    ['powder', 'FCC+BCC+B2', 94, { hardness: 666 }],
    ['powder', 'FCC+BCC+B2', 94, { hardness: 761 }],
    ['powder', 'FCC+BCC+B2', 94, { hardness: 747 }],
    ['powder', 'FCC+BCC+B2', 94, { test: 'compression', celsius: 20, yields: 1511, elongation: 5 }],
    ['powder', 'FCC+BCC+B2', 94, { test: 'compression', celsius: 400, yields: 1366, elongation: 17 }],
    ['powder', 'FCC+BCC+B2', 94, { test: 'compression', celsius: 600, yields: 410, elongation: 35 }],
    ['powder', 'FCC+BCC+B2', 94, { test: 'compression', celsius: 800, yields: 48, elongation: 35 }],
  ]],
  ['AlCrCuFeNi0.6', [
    ['annealed', 'FCC+BCC', 142, { celsius: 25, hardness: 496 }],
  ]],
  ['AlCrCuFeNi0.8', [
    ['annealed', 'FCC+BCC', 142, { celsius: 25, hardness: 486 }],
  ]],
  ['AlCrFeMo0.2Ni', [
    ['cast', 'BCC+B2', 71, { test: 'compression', celsius: 25, yields: 1487, strength: 3222, hardness: 549 }],
  ]],
  ['AlCrFeMo0.5Ni', [
    ['cast', 'BCC+B2', 71, { test: 'compression', celsius: 25, yields: 1749, strength: 2644, hardness: 622 }],
    ['cast', 'BCC+B2', 194, { test: 'compression', celsius: 25, yields: 1914.1, strength: 4023.6, hardness: 623.7 }],
  ]],
  ['AlCrFeMo0.5NiTi0.25', [
    ['cast', 'BCC+B2', 194, { test: 'compression', celsius: 25, yields: 2161.7, strength: 3641.5, hardness: 712 }],
  ]],
  ['AlCrFeMo0.5NiTi0.4', [
    ['cast', 'BCC+B2', 194, { test: 'compression', celsius: 25, yields: 2185.1, strength: 3673.4, hardness: 731.9 }],
  ]],
  ['AlCrFeMo0.5NiTi0.5', [
    ['cast', 'BCC+B2', 194, { test: 'compression', celsius: 25, yields: 2228.7, strength: 3166.2, hardness: 751.7 }],
  ]],
  ['AlCrFeMo0.5NiTi0.6', [
    ['cast', 'BCC+B2', 194, { test: 'compression', celsius: 25, yields: 1314.5, strength: 1314.5, hardness: 756.1 }],
  ]],
  ['AlCrFeMo0.5NiTi0.75', [
    ['cast', 'BCC+B2', 194, { test: 'compression', celsius: 25, yields: 618.8, strength: 618.8, hardness: 766.2 }],
  ]],
  ['AlCrFeMo0.8Ni', [
    ['cast', 'B2+Sec.', 71, { test: 'compression', celsius: 25, yields: 1513, strength: 1513, hardness: 854 }],
  ]],
  ['AlCrFeMoNi', [
    ['cast', 'B2+Sec.', 71, { celsius: 25, hardness: 905 }],
  ]],
  ['AlCrMoNbTi', [
    ['cast', 'BCC', 79, { test: 'compression', celsius: 25 }],
    ['cast', 'BCC', 79, { test: 'compression', celsius: 400, yields: 1080, strength: 1100, elongation: 2 }],
    ['cast', 'BCC', 79, { test: 'compression', celsius: 600, yields: 1060, strength: 1170, elongation: 3 }],
    ['cast', 'BCC', 79, { test: 'compression', celsius: 800, yields: 860, strength: 1000, elongation: 2 }],
    ['cast', 'BCC', 79, { test: 'compression', celsius: 1000, yields: 594, strength: 630, elongation: 15 }],
    ['cast', 'BCC', 79, { test: 'compression', celsius: 1200, yields: 105, strength: 116, elongation: 24 }],
    ['annealed', 'BCC', 12, { test: 'compression', celsius: 600, yields: 930 }],
    ['annealed', 'BCC', 12, { test: 'compression', celsius: 800, yields: 875 }],
    ['annealed', 'BCC', 12, { test: 'compression', celsius: 1000, yields: 550 }],
    ['annealed', 'BCC', 12, { test: 'compression', celsius: 1200, yields: 150 }],
    ['annealed', 'BCC+Laves', 44, { test: 'compression', celsius: 23, yields: 1010, density: 6.56 }],
    ['annealed', 'BCC+Laves', 44, { test: 'compression', celsius: 1000, yields: 550, density: 6.56 }],
    ['annealed', 'BCC+Laves', 44, { test: 'compression', celsius: 1200, yields: 105, density: 6.56 }],
  ]],
  ['AlCrMoTi', [
    ['annealed', 'BCC', 12, { test: 'compression', celsius: 400, yields: 1070 }],
    ['annealed', 'BCC', 12, { test: 'compression', celsius: 600, yields: 1020 }],
    ['annealed', 'BCC', 12, { test: 'compression', celsius: 800, yields: 875 }],
    ['annealed', 'BCC', 12, { test: 'compression', celsius: 1000, yields: 375 }],
    ['annealed', 'BCC', 12, { test: 'compression', celsius: 1200, yields: 100 }],
    ['annealed', 'BCC', 44, { test: 'compression', celsius: 23, yields: 1100, density: 5.98 }],
    ['annealed', 'BCC', 44, { test: 'compression', celsius: 1000, yields: 375, density: 5.98 }],
    ['annealed', 'BCC', 44, { test: 'compression', celsius: 1200, yields: 100, density: 5.98 }],
  ]],
  ['AlCu0.077Mg0.077Mn0.077Si0.231Zn0.077', [
    ['cast', 'FCC', 185, { test: 'compression', celsius: 25, yields: 622, elongation: 2, density: 2.98, youngs: 114.1 }],
  ]],
  ['AlCu0.077Mg0.077Ni0.077Si0.231Zn0.077', [
    ['cast', 'FCC', 185, { test: 'compression', celsius: 25, yields: 534, elongation: 1, density: 3.15, youngs: 107.8 }],
  ]],
  ['AlCu0.5Li0.5MgSn0.2', [
    ['cast', 'Other', 21, { celsius: 25 }],
  ]],
  ['AlCu0.889Fe0.667Ni0.889Ti', [
    ['cast', 'FCC', 45, { test: 'compression', celsius: 25, yields: 980, strength: 1326, hardness: 516, youngs: 145 }],
    ['cast', 'FCC', 45, { test: 'compression', celsius: 25, yields: 980, strength: 1326, hardness: 516, youngs: 145 }],
  ]],
  ['AlCuFeNiTi', [
    ['cast', 'FCC', 45, { test: 'compression', celsius: 25, yields: 1074, strength: 1617, hardness: 516, youngs: 146 }],
  ]],
  ['AlFeNiTiVZr', [
    ['cast', 'BCC', 0, { celsius: 25, hardness: 800 }],
  ]],
  ['AlHfNbTaTiZr', [
    ['cast', 'BCC+Sec.', 73, { test: 'compression', celsius: 25, yields: 1489, strength: 1900, elongation: 21, grain: 92, hardness: 441, youngs: 103 }],
  ]],
  ['AlHfNbTi', [
    ['annealed', 'B2', 123],
    ['cast', 'B2', 123],
  ]],
  ['AlHfTaTi', [
    ['annealed', 'B2', 123],
    ['cast', 'B2', 123],
  ]],
  ['AlLi0.062Mg0.062Sn0.062Zn0.062', [
    ['cast', 'FCC+Sec.', 21, { test: 'compression', celsius: 25, yields: 415, strength: 836, elongation: 16 }],
  ]],
  ['AlLi0.5MgSn0.2Zn0.5', [
    ['cast', 'FCC+Sec.', 21, { test: 'compression', celsius: 25, yields: 546, strength: 546 }],
  ]],
  ['AlLiMgSnZn', [
    ['cast', 'FCC+HCP+Sec.', 21, { test: 'compression', celsius: 25, yields: 600, strength: 615, elongation: 1 }],
  ]],
  ['AlMoNbTi', [
    ['annealed', 'BCC', 12, { test: 'compression', celsius: 600, yields: 520 }],
    ['annealed', 'BCC', 12, { test: 'compression', celsius: 800, yields: 500 }],
    ['annealed', 'BCC', 12, { test: 'compression', celsius: 1000, yields: 540 }],
    ['annealed', 'BCC', 12, { test: 'compression', celsius: 1200, yields: 200 }],
    ['annealed', 'BCC', 44, { test: 'compression', celsius: 23, yields: 1100, density: 6.46 }],
    ['annealed', 'BCC', 44, { test: 'compression', celsius: 1000, yields: 540, density: 6.46 }],
    ['annealed', 'BCC', 44, { test: 'compression', celsius: 1200, yields: 200, density: 6.46 }],
    ['annealed', 'BCC+Sec.', 123],
    ['cast', 'BCC', 123, { hardness: 509 }],
  ]],
  ['AlMoNbTiV', [
    ['cast', 'BCC', 206, { test: 'compression', celsius: 25, yields: 1375, strength: 1400, elongation: 3, hardness: 537 }],
  ]],
  ['AlNbTa0.5TiZr0.5', [
    ['other', 'B2', 122, { test: 'compression', celsius: 1000, yields: 535, strength: 542 }],
    ['other', 'B2', 122, { test: 'compression', celsius: 25, yields: 1352, strength: 1357 }],
  ]],
  ['AlNbTaTi', [
    ['cast', 'BCC', 43, { test: 'compression', celsius: 20, yields: 1152 }],
    ['cast', 'BCC', 43, { test: 'compression', celsius: 200, yields: 740 }],
    ['cast', 'BCC', 43, { test: 'compression', celsius: 100, yields: 740 }],
    ['annealed', 'BCC+Sec.', 123],
    ['cast', 'BCC', 123, { hardness: 458 }],
  ]],
  ['AlNbTiV', [
    ['annealed', 'BCC', 126, { test: 'compression', celsius: 25, yields: 1020, strength: 1318, grain: 350, hardness: 448 }],
    ['annealed', 'BCC', 126, { test: 'compression', celsius: 600, yields: 810, strength: 1050 }],
    ['annealed', 'BCC', 126, { test: 'compression', celsius: 800, yields: 685 }],
    ['annealed', 'BCC', 126, { test: 'compression', celsius: 1000, yields: 158 }],
    ['annealed', 'B2', 153, { test: 'compression', celsius: 600, yields: 780, strength: 1005 }],
    ['annealed', 'B2', 153, { test: 'compression', celsius: 800, yields: 560, strength: 700 }],
    ['annealed', 'B2', 153, { test: 'compression', celsius: 25, yields: 1000, strength: 1280 }],
    ['annealed', 'BCC', 78, { test: 'compression', celsius: 600, yields: 780, strength: 1005 }],
    ['annealed', 'BCC', 78, { test: 'compression', celsius: 800, yields: 560, strength: 700 }],
    ['annealed', 'BCC', 78, { test: 'compression', celsius: 1000, yields: 110 }],
    ['annealed', 'BCC', 78, { test: 'compression', celsius: 25, yields: 1000, strength: 1280 }],
  ]],
  ['C0.041CoCrFeMnNb0.041Ni', [
    ['wrought', 'FCC+Sec.', 95, { test: 'tension', celsius: 25, yields: 732, strength: 911 }],
  ]],
  ['C0.111CoCrFeNiW0.111', [
    ['powder', 'FCC', 205, { grain: 0.0189, hardness: 475, density: 7.24 }],
  ]],
  ['C0.1CoCrFeMnNiTi0.1', [
    ['powder', 'FCC+Sec.', 180, { test: 'compression', celsius: 25, yields: 1616, hardness: 457, density: 7.5 }],
    ['powder', 'FCC+Sec.', 180, { test: 'compression', celsius: 25, yields: 1652, hardness: 461, density: 7.64 }],
    ['powder', 'FCC+Sec.', 180, { test: 'compression', celsius: 25, yields: 1490, hardness: 428, density: 7.66 }],
    ['powder', 'FCC+Sec.', 180, { test: 'compression', celsius: 25, yields: 1194, hardness: 378, density: 7.69 }],
  ]],
  ['C0.2MoNbRe0.5Ta0.2W', [
    ['cast', 'BCC+Sec.', 91, { test: 'compression', celsius: 25, yields: 1074, elongation: 12.1, hardness: 510 }],
  ]],
  ['C0.429CoCrFeNiW0.429', [
    ['powder', 'FCC', 205, { grain: 0.0182, hardness: 531, density: 8.39 }],
  ]],
  ['C0.4MoNbRe0.5Ta0.4W', [
    ['cast', 'BCC+Sec.', 91, { test: 'compression', celsius: 25, yields: 1144, elongation: 12.7, hardness: 558 }],
  ]],
  ['C0.5MoNbRe0.5Ta0.5W', [
    ['cast', 'BCC+Sec.', 91, { test: 'compression', celsius: 25, yields: 1202, elongation: 14.2, hardness: 583 }],
  ]],
  ['C0.6MoNbRe0.5Ta0.6W', [
    ['cast', 'BCC+Sec.', 91, { test: 'compression', celsius: 25, yields: 1241, elongation: 13.8, hardness: 615 }],
  ]],
  ['Co0.25Cr0.25FeMn', [
    ['cast', 'FCC', 168, { test: 'tension', celsius: 25, yields: 213, strength: 471, elongation: 55.7 }],
    ['cast', 'FCC', 168, { test: 'tension', celsius: 25, yields: 393, strength: 634, elongation: 26.5 }],
    ['wrought', 'FCC', 168, { test: 'tension', celsius: 25, yields: 792, strength: 1055, elongation: 22.6 }],
    ['wrought', 'FCC', 168, { test: 'tension', celsius: 25, yields: 559, strength: 1004, elongation: 33.9, grain: 18 }],
    ['wrought', 'FCC', 168, { test: 'tension', celsius: 25, yields: 512, strength: 978, elongation: 55.3, grain: 32 }],
    ['wrought', 'FCC', 168, { test: 'tension', celsius: 25, yields: 476, strength: 947, elongation: 69.4, grain: 63 }],
  ]],
  ['Co0.273Cr0.477Nb0.477Ni0.045Ti', [
    ['cast', '', 183, { celsius: 25, hardness: 422 }],
  ]],
  ['Co0.286Cr0.429FeMn0.143Ni0.714V0.286', [
    ['wrought', 'FCC', 158, { test: 'tension', celsius: 25, yields: 401, strength: 717, elongation: 49, grain: 8.7 }],
    ['wrought', 'FCC', 158, { test: 'tension', celsius: 25, yields: 350, strength: 690, elongation: 50, grain: 10.4 }],
    ['wrought', 'FCC', 158, { test: 'tension', celsius: 25, yields: 312, strength: 660, elongation: 51, grain: 11.2 }],
    ['wrought', 'FCC', 158, { test: 'tension', celsius: 25, yields: 240, strength: 610, elongation: 53, grain: 48.2 }],
    ['wrought', 'FCC', 158, { test: 'tension', celsius: 25, yields: 210, strength: 593, elongation: 52, grain: 82.7 }],
  ]],
  ['Co0.2Cr0.2FeMn0.6', [
    ['annealed', 'FCC+HCP', 35, { test: 'tension', celsius: 25, yields: 250, strength: 730, elongation: 50, grain: 45 }],
    ['wrought', 'FCC+HCP', 35, { test: 'tension', celsius: 25, yields: 330, strength: 870, elongation: 75, grain: 4.5 }],
    ['wrought', 'FCC+HCP', 35, { test: 'tension', celsius: 25, yields: 280, strength: 800, elongation: 65, grain: 6 }],
    ['wrought', 'FCC+HCP', 35, { test: 'tension', celsius: 25, yields: 350, strength: 830, elongation: 63, grain: 15 }],
    ['wrought', 'FCC+HCP', 184, { test: 'tension', celsius: 25, yields: 298, strength: 1400, elongation: 45, grain: 6.5 }],
    ['wrought', 'FCC+HCP', 184, { test: 'tension', celsius: 25, yields: 400, strength: 1200, elongation: 42, grain: 5.2 }],
    ['cast', 'FCC+Sec.', 161, { hardness: 296 }],
  ]],
  ['Co0.318Cr0.227FeMo0.091Ni0.182', [
    ['wrought', 'FCC+Sec.', 93, { test: 'tension', celsius: 25, yields: 443, strength: 840, elongation: 61.6, grain: 4.4 }],
    ['wrought', 'FCC+Sec.', 93, { test: 'tension', celsius: 25, yields: 301, strength: 718, elongation: 77.5, grain: 26.3 }],
    ['wrought', 'FCC+Sec.', 93, { test: 'tension', celsius: 25, yields: 261, strength: 673, elongation: 86.6, grain: 70.1 }],
    ['wrought', 'FCC+Sec.', 93, { test: 'tension', celsius: 25, yields: 231, strength: 638, elongation: 87.2, grain: 136.5 }],
  ]],
  ['Co0.327Cr0.227FeMo0.136Ni0.127', [
    ['wrought', 'FCC+Sec.', 93, { test: 'tension', celsius: 25, yields: 711, strength: 1096, elongation: 38.3, grain: 3.2 }],
    ['wrought', 'FCC+Sec.', 93, { test: 'tension', celsius: 25, yields: 684, strength: 1078, elongation: 48.1, grain: 4.8 }],
    ['wrought', 'FCC+Sec.', 93, { test: 'tension', celsius: 25, yields: 506, strength: 933, elongation: 59.3, grain: 5.4 }],
    ['wrought', 'FCC+Sec.', 93, { test: 'tension', celsius: 25, yields: 296, strength: 693, elongation: 63.2, grain: 120.6 }],
  ]],
  ['Co0.333Cr0.667Fe0.667NiTi0.2', [
    ['wrought', 'FCC', 169, { grain: 263, hardness: 197 }],
    ['wrought', 'FCC', 169, { test: 'tension', celsius: 25, yields: 586, strength: 875, elongation: 46, grain: 90, hardness: 308 }],
  ]],
  ['Co0.476Cr0.476Fe0.476Nb0.095Ni', [
    ['cast', 'FCC+Laves', 131, { test: 'tension', celsius: 25, yields: 170, strength: 537, elongation: 32 }],
    ['annealed', 'FCC+Laves+Sec.', 131, { test: 'tension', celsius: 25, yields: 560, strength: 860, elongation: 19 }],
  ]],
  ['Co0.476Cr0.476Fe0.476Nb0.19Ni', [
    ['cast', 'FCC+Laves', 131, { test: 'tension', celsius: 25, yields: 640, strength: 840, elongation: 7 }],
    ['annealed', 'FCC+Laves', 131, { test: 'tension', celsius: 25, elongation: 3 }],
  ]],
  ['Co0.564Nb0.795Ta0.103TiW0.103', [
    ['cast', '', 183, { celsius: 25, hardness: 277 }],
  ]],
  ['Co0.986Cr0.952Fe0.933Mn0.914Ni', [
    ['wrought', 'BCC', 162, { test: 'tension', celsius: 25, yields: 1290, strength: 1415, elongation: 1.1 }],
    ['wrought', 'FCC+BCC+Sec.', 162, { test: 'tension', celsius: 25, yields: 1135, strength: 1260, elongation: 1.8, grain: 1.3 }],
    ['wrought', 'FCC+BCC+Sec.', 162, { test: 'tension', celsius: 25, yields: 585, strength: 815, elongation: 31.7, grain: 2 }],
    ['wrought', 'FCC+Sec.', 162, { test: 'tension', celsius: 25, yields: 425, strength: 735, elongation: 40.2, grain: 3.6 }],
    ['wrought', 'FCC', 162, { test: 'tension', celsius: 25, yields: 270, strength: 630, elongation: 46.2, grain: 17.1 }],
    ['wrought', '', 162, { test: 'tension', celsius: 25, yields: 1120, strength: 1175, elongation: 1.5, grain: 0.07 }],
  ]],
  ['CoCr0.429Fe0.571Mo0.286Ni0.571', [
    ['cast', 'FCC', 173, { test: 'tension', celsius: 25, yields: 350, strength: 720, elongation: 21.9 }],
    ['wrought', 'FCC+Sec.', 173, { test: 'tension', celsius: 25, yields: 1311, strength: 1410, elongation: 12.1 }],
    ['wrought', 'FCC+Sec.', 173, { test: 'tension', celsius: 25, yields: 1212, strength: 1360, elongation: 14.9 }],
    ['wrought', 'FCC+Sec.', 173, { test: 'tension', celsius: 25, yields: 1028, strength: 1249, elongation: 18.3 }],
    ['wrought', 'FCC+Sec.', 173, { test: 'tension', celsius: 25, yields: 879, strength: 1194, elongation: 25.4 }],
    ['wrought', 'FCC+Sec.', 173, { test: 'tension', celsius: 25, yields: 799, strength: 1127, elongation: 28.2 }],
    ['wrought', 'FCC', 173, { test: 'tension', celsius: 25, yields: 350, strength: 918, elongation: 62.4 }],
  ]],
  ['CoCr0.487Nb0.231Ta0.026Ti0.821', [
    ['cast', '', 183, { celsius: 25, hardness: 856 }],
  ]],
  ['CoCr0.588Fe0.176Mo0.176Ni', [
    ['wrought', 'FCC', 46, { test: 'tension', celsius: 25, elongation: 8 }],
    ['wrought', 'FCC', 46, { test: 'tension', celsius: 25, elongation: 14, grain: 0.7 }],
    ['wrought', 'FCC', 46, { test: 'tension', celsius: 25, yields: 1100, strength: 1300, elongation: 32, grain: 0.8 }],
    ['wrought', 'FCC', 46, { test: 'tension', celsius: 25, yields: 950, elongation: 36, grain: 1.2 }],
    ['wrought', 'FCC', 46, { test: 'tension', celsius: 25, yields: 649, elongation: 42, grain: 3.2 }],
    ['wrought', 'FCC', 46, { test: 'tension', celsius: 25, yields: 439, elongation: 63, grain: 18.2 }],
    ['wrought', 'FCC', 46, { test: 'tension', celsius: 25, yields: 309, elongation: 82, grain: 94.1 }],
  ]],
  ['CoCr0.667Fe0.667NiTi0.333', [
    ['annealed', 'FCC', 26, { celsius: 25, hardness: 509 }],
  ]],
  ['CoCr0.667Fe0.667NiTi0.667', [
    ['annealed', 'FCC+Sec.', 26, { celsius: 25, hardness: 654 }],
  ]],
  ['CoCrCuFe', [
    ['unknown', 'FCC', 204, { celsius: 25, hardness: 134 }],
  ]],
  ['CoCrCuFeMnNiTiV', [
    ['cast', 'FCC+BCC+Sec.', 132, { test: 'compression', celsius: 25, yields: 1312, strength: 1312, elongation: 1, youngs: 74 }],
  ]],
  ['CoCrCuFeNiTi', [
    ['cast', 'FCC', 49, { test: 'compression', celsius: 25, yields: 1272, strength: 1272, elongation: 2 }],
  ]],
  ['CoCrCuFeNiTi0.5', [
    ['cast', 'FCC', 65, { test: 'compression', celsius: 25, yields: 700, strength: 1650, youngs: 93 }],
    ['cast', 'FCC', 49, { test: 'compression', celsius: 25, yields: 700, strength: 1650, elongation: 22 }],
  ]],
  ['CoCrCuFeNiTi0.8', [
    ['cast', 'FCC+Sec.', 49, { test: 'compression', celsius: 25, yields: 1042, strength: 1848, elongation: 3 }],
  ]],
  ['CoCrCuFeNiTiVZr', [
    ['cast', '', 0, { celsius: 25, hardness: 680 }],
  ]],
  ['CoCrFeGaNi', [
    ['cast', 'FCC+BCC', 7],
  ]],
  ['CoCrFeMn', [
    ['unknown', '', 58, { test: 'compression', celsius: 25, yields: 338, elongation: 4.3 }],
  ]],
  ['CoCrFeMn0.2NiPd', [
    ['cast', 'FCC+Sec.', 209, { test: 'compression', celsius: 25, yields: 650, elongation: 50, hardness: 470 }],
  ]],
  ['CoCrFeMn0.4NiPd', [
    ['cast', 'FCC+Sec.', 209, { test: 'compression', celsius: 25, yields: 650, elongation: 46, hardness: 380 }],
  ]],
  ['CoCrFeMn0.6NiPd', [
    ['cast', 'FCC+Sec.', 209, { test: 'compression', celsius: 25, yields: 650, elongation: 42, hardness: 180 }],
  ]],
  ['CoCrFeMn0.8NiPd', [
    ['cast', 'FCC+Sec.', 209, { test: 'compression', celsius: 25, yields: 650, elongation: 35, hardness: 160 }],
  ]],
  ['CoCrFeMnMo0.042Ni', [
    ['cast', 'FCC', 105, { test: 'compression', celsius: 25, yields: 225 }],
  ]],
  ['CoCrFeMnMo0.087Ni', [
    ['cast', 'FCC+Sec.', 105, { test: 'compression', celsius: 25, yields: 330 }],
  ]],
  ['CoCrFeMnMo0.136Ni', [
    ['cast', 'FCC+Sec.', 105, { test: 'compression', celsius: 25, yields: 560 }],
  ]],
  ['CoCrFeMnMo0.19Ni', [
    ['cast', 'FCC+Sec.', 105, { test: 'compression', celsius: 25, yields: 765 }],
  ]],
  ['CoCrFeMnNi', [
    ['cast', 'FCC', 29, { test: 'tension', celsius: 25, yields: 208, elongation: 62, hardness: 176 }],
    ['cast', 'FCC', 74, { test: 'compression', celsius: 25, grain: 300, hardness: 144 }],
    ['annealed', 'FCC', 74, { test: 'compression', celsius: 25, yields: 230, grain: 350, hardness: 135 }],
    ['wrought', 'FCC', 28, { test: 'tension', celsius: 25, yields: 370, strength: 670, elongation: 56, grain: 4.4 }],
    ['wrought', 'FCC', 190, { test: 'tension', celsius: 25, yields: 243, strength: 558, elongation: 50, grain: 13 }],
    ['wrought', 'FCC', 190, { test: 'tension', celsius: 25, yields: 249, strength: 621, elongation: 41, grain: 7 }],
    ['annealed', 'FCC', 197, { test: 'compression', celsius: 25, yields: 230, elongation: 75 }],
    ['wrought', 'FCC', 156, { test: 'tension', celsius: 25, yields: 1120, elongation: 1.1, grain: 0.5 }],
    ['wrought', 'FCC', 156, { test: 'tension', celsius: -196, yields: 1692, elongation: 10.3 }],
    ['cast', 'FCC', 177, { test: 'compression', celsius: 25, yields: 210, elongation: 57, hardness: 130.2 }],
    ['wrought', 'FCC', 177, { test: 'compression', celsius: 25, yields: 1150, elongation: 6, hardness: 394.1 }],
    ['wrought', 'FCC', 177, { test: 'compression', celsius: 25, yields: 1300, elongation: 0.7, hardness: 430.7 }],
    ['wrought', 'FCC', 104, { test: 'tension', celsius: 25, yields: 300, strength: 676, elongation: 52, grain: 30 }],
    ['wrought', 'FCC', 104, { test: 'tension', celsius: 25, yields: 800, strength: 888, elongation: 39.5, grain: 0.65 }],
    ['cast', 'FCC+BCC', 89, { test: 'compression', celsius: 25, yields: 1314, grain: 0.4, hardness: 415 }],
    ['cast', 'FCC', 105, { test: 'compression', celsius: 25, yields: 216 }],
    ['wrought', 'FCC', 159, { test: 'tension', celsius: 25, yields: 378.7, strength: 700.1, elongation: 54, grain: 7.9 }],
    ['wrought', 'FCC', 88, { test: 'tension', celsius: 25, yields: 386.2, strength: 666.3, elongation: 57.5 }],
    ['unknown', '', 53, { youngs: 202 }],
    ['unknown', '', 200, { youngs: 202.2 }],
    ['wrought', 'FCC', 62, { test: 'tension', celsius: 25, yields: 293.1, strength: 625.6, elongation: 63, grain: 245.48, density: 7.753 }],
    ['cast', 'FCC', 163, { test: 'tension', celsius: 25, yields: 210, elongation: 57 }],
    ['wrought', 'FCC', 163, { test: 'tension', celsius: 25, yields: 1150, elongation: 6 }],
    ['wrought', 'FCC', 163, { test: 'tension', celsius: 25, yields: 1300, elongation: 2 }],
    ['wrought', 'FCC', 163, { test: 'tension', celsius: 25, yields: 1050, elongation: 8, grain: 4 }],
    ['wrought', 'FCC', 163, { test: 'tension', celsius: 25, yields: 560, elongation: 49, grain: 8 }],
    ['wrought', 'FCC', 163, { test: 'tension', celsius: 25, yields: 520, elongation: 47, grain: 8 }],
    ['wrought', 'FCC', 163, { test: 'tension', celsius: 25, yields: 320, elongation: 59, grain: 10 }],
    ['wrought', 'FCC', 163, { test: 'tension', celsius: 25, yields: 280, elongation: 62, grain: 20 }],
    ['annealed', 'FCC', 92, { grain: 300 }],
    ['powder', 'FCC', 92, { grain: 4.2 }],
    ['powder', 'FCC', 92, { grain: 1.3 }],
    ['powder', 'Other', 101, { test: 'tension', celsius: 25, hardness: 410.9, density: 7.5, youngs: 184 }],
    ['wrought', 'FCC', 95, { test: 'tension', celsius: 25, yields: 353, strength: 635 }],
    ['wrought', 'FCC', 14, { test: 'tension', celsius: 25, yields: 1199.26, strength: 1335.35, elongation: 4.37 }],
    ['wrought', 'FCC', 14, { test: 'tension', celsius: 25, yields: 1269.23, strength: 1366.3, elongation: 1.16 }],
    ['wrought', 'FCC', 14, { test: 'tension', celsius: 25, yields: 1371.21, strength: 1402.83, elongation: 1.58 }],
    ['wrought', 'FCC', 14, { test: 'tension', celsius: 25, yields: 1362.74, strength: 1471.05, elongation: 3.15, grain: 0.166 }],
    ['wrought', 'FCC', 14, { test: 'tension', celsius: 25, yields: 1241.81, strength: 1325.25, elongation: 4.31, grain: 0.248 }],
    ['wrought', 'FCC', 14, { test: 'tension', celsius: 25, yields: 930.3, strength: 1021.32, elongation: 19.01, grain: 0.468 }],
    ['wrought', 'FCC', 14, { test: 'tension', celsius: 25, yields: 729.21, strength: 901.74, elongation: 26.3, grain: 1.79 }],
    ['wrought', 'FCC', 14, { test: 'tension', celsius: 25, yields: 494.82, strength: 735.6, elongation: 38.7, grain: 4.57 }],
    ['wrought', 'FCC', 14, { test: 'tension', celsius: 25, yields: 366.88, strength: 673.25, elongation: 42.55, grain: 13.45 }],
    ['wrought', 'FCC', 14, { test: 'tension', celsius: 25, yields: 290.65, strength: 618.51, elongation: 43.15, grain: 22.37 }],
    ['wrought', 'FCC', 14, { test: 'tension', celsius: 25, yields: 258.76, strength: 598.75, elongation: 45.05, grain: 30.6 }],
    ['unknown', 'FCC+BCC', 213],
    ['powder', 'FCC', 188, { test: 'compression', celsius: 25, yields: 1100, elongation: 47, grain: 0.03, hardness: 435, density: 7.753 }],
  ]],
  ['CoCrFeMnNiTa0.2', [
    ['unknown', 'FCC+BCC', 213, { hardness: 200 }],
  ]],
  ['CoCrFeMnNiTa0.4', [
    ['unknown', 'FCC+BCC', 213, { hardness: 290 }],
  ]],
  ['CoCrFeMnNiTa0.6', [
    ['unknown', 'FCC+BCC', 213, { hardness: 345 }],
  ]],
  ['CoCrFeMnNiV', [
    ['annealed', 'FCC+Sec.', 74, { test: 'compression', celsius: 25, yields: 1660, strength: 1845, grain: 12, hardness: 636 }],
    ['cast', 'FCC+Sec.', 74, { test: 'compression', celsius: 25, hardness: 650 }],
    ['annealed', 'FCC+Sec.', 197, { test: 'compression', celsius: 25, yields: 1700, elongation: 1 }],
  ]],
  ['CoCrFeMnNiV0.25', [
    ['cast', 'FCC', 74, { test: 'compression', celsius: 25, grain: 120, hardness: 151 }],
    ['annealed', 'FCC+Sec.', 74, { test: 'compression', celsius: 25, yields: 200, grain: 130, hardness: 144 }],
  ]],
  ['CoCrFeMnNiV0.263', [
    ['annealed', 'FCC+Sec.', 197, { test: 'compression', celsius: 25, yields: 200, elongation: 75 }],
  ]],
  ['CoCrFeMnNiV0.5', [
    ['cast', 'FCC', 74, { test: 'compression', celsius: 25, grain: 220, hardness: 186 }],
    ['annealed', 'FCC', 74, { test: 'compression', celsius: 25, yields: 620, grain: 250, hardness: 275 }],
    ['annealed', 'FCC+Sec.', 197, { test: 'compression', celsius: 25, yields: 620, elongation: 75 }],
  ]],
  ['CoCrFeMnNiV0.75', [
    ['annealed', 'FCC+Sec.', 74, { test: 'compression', celsius: 25, yields: 740, strength: 1325, grain: 500, hardness: 380 }],
    ['cast', 'FCC+Sec.', 74, { test: 'compression', celsius: 25, grain: 500, hardness: 342 }],
  ]],
  ['CoCrFeMnNiV0.765', [
    ['annealed', 'FCC+Sec.', 197, { test: 'compression', celsius: 25, yields: 780, elongation: 8 }],
  ]],
  ['CoCrFeMo0.083Ni', [
    ['cast', '', 32, { test: 'tension', celsius: 25, yields: 198.8, strength: 479, elongation: 51.1 }],
  ]],
  ['CoCrFeMo0.149Ni', [
    ['cast', 'FCC', 167, { test: 'tension', celsius: 25, yields: 489, strength: 895 }],
    ['wrought', '', 167, { test: 'tension', celsius: 25, yields: 873 }],
    ['wrought', '', 167, { test: 'tension', celsius: 25, yields: 952, strength: 1122 }],
    ['wrought', 'FCC', 167, { test: 'tension', celsius: 25, yields: 1136, strength: 1245 }],
    ['wrought', 'FCC', 167, { test: 'tension', celsius: 25, yields: 1301, strength: 1493 }],
    ['wrought', '', 167, { test: 'tension', celsius: 25, yields: 1311, strength: 1421 }],
    ['wrought', '', 167, { test: 'tension', celsius: 25, yields: 1273, strength: 1458 }],
    ['powder', 'FCC+Sec.', 212, { hardness: 210 }],
  ]],
  ['CoCrFeMo0.208Ni', [
    ['cast', '', 32, { test: 'tension', celsius: 25, yields: 254.7, strength: 589.6, elongation: 55.1 }],
  ]],
  ['CoCrFeMo0.2Ni', [
    ['cast', 'FCC', 210, { test: 'tension', celsius: 25, yields: 400, strength: 780, elongation: 53 }],
    ['annealed', 'FCC', 210, { test: 'tension', celsius: 25, strength: 838, elongation: 43 }],
    ['annealed', 'FCC', 210, { test: 'tension', celsius: 25, strength: 899, elongation: 31 }],
    ['annealed', 'FCC', 210, { test: 'tension', celsius: 25, strength: 902, elongation: 29 }],
    ['annealed', 'FCC', 210, { test: 'tension', celsius: 25, strength: 811, elongation: 52 }],
    ['annealed', 'FCC', 210, { test: 'tension', celsius: 25, strength: 790, elongation: 49 }],
    ['annealed', 'FCC', 210, { test: 'tension', celsius: 25, strength: 799, elongation: 47 }],
    ['annealed', 'FCC', 210, { test: 'tension', celsius: 25, strength: 802, elongation: 37 }],
    ['annealed', 'FCC', 210, { test: 'tension', celsius: 25, strength: 823, elongation: 36 }],
    ['annealed', 'FCC', 210, { test: 'tension', celsius: 25, strength: 849, elongation: 34 }],
    ['annealed', 'FCC', 210, { test: 'tension', celsius: 25, strength: 895, elongation: 32 }],
  ]],
  ['CoCrFeMo0.304Ni', [
    ['cast', 'FCC+Sec.', 32, { test: 'tension', celsius: 25, yields: 305.3, strength: 709.7, elongation: 49.3 }],
    ['wrought', 'FCC+Sec.', 32, { test: 'tension', celsius: 25, yields: 815.5, strength: 1186.5, elongation: 18.9, grain: 3 }],
    ['wrought', 'FCC+Sec.', 32, { test: 'tension', celsius: 25, yields: 646.7, strength: 1042, elongation: 32.5, grain: 3.1 }],
    ['wrought', 'FCC+Sec.', 32, { test: 'tension', celsius: 25, yields: 683.7, strength: 1066.6, elongation: 30.4, grain: 1.6 }],
  ]],
  ['CoCrFeMo0.5Ni', [
    ['cast', 'FCC+Sec.', 18, { celsius: 25, hardness: 210 }],
  ]],
  ['CoCrFeMoNiTiVZr', [
    ['cast', '', 0, { celsius: 25, hardness: 850 }],
  ]],
  ['CoCrFeNb0.103Ni', [
    ['cast', 'FCC+Sec.', 54, { test: 'tension', celsius: 25, yields: 318, strength: 622, elongation: 19, grain: 175 }],
  ]],
  ['CoCrFeNb0.155Ni', [
    ['cast', 'FCC+Sec.', 54, { test: 'tension', celsius: 25, yields: 322, strength: 744, elongation: 23, grain: 175 }],
  ]],
  ['CoCrFeNb0.206Ni', [
    ['cast', 'FCC+Sec.', 54, { test: 'tension', celsius: 25, yields: 403, strength: 807, elongation: 9, grain: 175 }],
  ]],
  ['CoCrFeNb0.309Ni', [
    ['cast', 'FCC+Sec.', 54, { test: 'tension', celsius: 25, yields: 479, strength: 879, elongation: 4, grain: 175 }],
  ]],
  ['CoCrFeNb0.412Ni', [
    ['cast', 'FCC+Sec.', 54, { test: 'tension', celsius: 25, yields: 638, strength: 1004, elongation: 1, grain: 175 }],
  ]],
  ['CoCrFeNiPd', [
    ['cast', 'FCC', 209, { hardness: 295 }],
  ]],
  ['CoCrFeNiTi', [
    ['cast', 'FCC', 135, { test: 'compression', celsius: 25, strength: 2020, youngs: 135 }],
  ]],
  ['CoCrFeNiTi0.2', [
    ['wrought', 'FCC', 38, { test: 'tension', celsius: 25, yields: 700, strength: 1240, elongation: 36, grain: 51 }],
    ['wrought', 'FCC', 38, { test: 'tension', celsius: -196, yields: 860, strength: 1580, elongation: 46 }],
  ]],
  ['CoCrFeNiTi0.3', [
    ['wrought', 'FCC', 169, { test: 'tension', celsius: 25, yields: 540, strength: 772, elongation: 60, grain: 90, hardness: 263 }],
    ['wrought', 'FCC', 169, { grain: 216, hardness: 185 }],
  ]],
  ['CoCrFeNiW0.2', [
    ['cast', 'FCC', 63, { test: 'compression', celsius: 25, yields: 335, elongation: 52, hardness: 244 }],
  ]],
  ['CoCrFeNiW0.5', [
    ['cast', 'FCC+Sec.', 63, { test: 'compression', celsius: 25, yields: 556, elongation: 35.6, hardness: 357.9 }],
  ]],
  ['CoCrMnNi', [
    ['wrought', 'FCC', 30, { test: 'tension', celsius: 25, yields: 282, strength: 694, elongation: 44, grain: 36 }],
  ]],
  ['CoCrMoNbTi', [
    ['cast', 'BCC+Laves', 16, { test: 'compression', celsius: 25, strength: 1096.8 }],
  ]],
  ['CoCrMoNbTi0.2', [
    ['cast', 'BCC+Laves', 16, { test: 'compression', celsius: 25, strength: 1905.6 }],
  ]],
  ['CoCrMoNbTi0.4', [
    ['cast', 'BCC', 16, { test: 'compression', celsius: 25, strength: 1771.3 }],
  ]],
  ['CoCrMoNbTi0.5', [
    ['cast', 'BCC+Laves', 16, { test: 'compression', celsius: 25, strength: 1609.2 }],
  ]],
  ['CoCuFeMnNi', [
    ['cast', 'FCC', 114, { test: 'tension', celsius: 25, strength: 478, hardness: 208 }],
    ['cast', 'FCC', 164, { celsius: 800 }],
    ['cast', 'FCC', 164, { celsius: 900 }],
    ['cast', 'FCC', 164, { celsius: 100 }],
  ]],
  ['CoCuFeMnNiSn0.03', [
    ['cast', 'FCC', 114, { test: 'tension', celsius: 25, strength: 465, hardness: 192 }],
  ]],
  ['CoCuFeMnNiSn0.05', [
    ['cast', 'FCC+Sec.', 114, { test: 'tension', celsius: 25, strength: 475, hardness: 205 }],
  ]],
  ['CoCuFeMnNiSn0.08', [
    ['cast', 'FCC+Sec.', 114, { test: 'tension', celsius: 25, strength: 425, hardness: 219 }],
  ]],
  ['CoCuFeMnNiSn0.1', [
    ['cast', 'FCC+Sec.', 114, { test: 'tension', celsius: 25, strength: 470, hardness: 253 }],
  ]],
  ['CoCuFeMnNiSn0.2', [
    ['cast', 'FCC+Sec.', 114, { test: 'tension', celsius: 25, strength: 368, hardness: 319 }],
  ]],
  ['CoCuFeNiTiVZr', [
    ['cast', '', 0, { celsius: 25, hardness: 630 }],
  ]],
  ['CoFeMoNiTiVZr', [
    ['cast', '', 0, { celsius: 25, hardness: 790 }],
  ]],
  ['CoFeNi', [
    ['cast', 'FCC', 102, { test: 'compression', celsius: 25, yields: 204, hardness: 125 }],
    ['cast', 'FCC', 102, { test: 'compression', celsius: 25, yields: 209, hardness: 125 }],
    ['wrought', 'FCC', 30, { test: 'tension', celsius: 25, yields: 211, strength: 513, elongation: 31, grain: 28 }],
    ['unknown', '', 151, { youngs: 174 }],
    ['wrought', 'FCC', 61, { test: 'tension', celsius: 25, elongation: 15 }],
    ['wrought', 'FCC', 61, { test: 'tension', celsius: 25, yields: 276, strength: 540, elongation: 51, grain: 42 }],
    ['wrought', 'FCC', 61, { test: 'tension', celsius: 25, yields: 217, strength: 498, elongation: 47, grain: 74 }],
    ['wrought', 'FCC', 61, { test: 'tension', celsius: 25, yields: 201, strength: 430, elongation: 44.5, grain: 90 }],
    ['wrought', 'FCC', 42, { test: 'tension', celsius: 25, grain: 53.7, youngs: 161 }],
  ]],
  ['CoFeNiV', [
    ['cast', 'FCC', 75, { celsius: 25, hardness: 238 }],
  ]],
  ['CoMnNi', [
    ['wrought', 'FCC', 30, { test: 'tension', celsius: 25, yields: 231, strength: 653, elongation: 38, grain: 32 }],
    ['wrought', 'FCC', 42, { test: 'tension', celsius: 25, yields: 333, strength: 569, elongation: 40, grain: 1.43, youngs: 190 }],
    ['wrought', 'FCC', 42, { test: 'tension', celsius: 25, yields: 601, strength: 608, elongation: 24, grain: 0.4, youngs: 190 }],
    ['wrought', 'FCC', 42, { test: 'tension', celsius: 25, yields: 321, strength: 566, elongation: 50.5, grain: 1.58, youngs: 190 }],
    ['wrought', 'FCC', 42, { test: 'tension', celsius: 25, yields: 267, strength: 506, elongation: 62.5, grain: 2.67, youngs: 190 }],
  ]],
  ['CoNiV', [
    ['wrought', '', 3, { test: 'tension', celsius: 25, yields: 991, strength: 1359, elongation: 38, grain: 2 }],
    ['wrought', '', 3, { test: 'tension', celsius: 25, yields: 767, strength: 1224, elongation: 46, grain: 5.6 }],
    ['wrought', '', 3, { test: 'tension', celsius: 25, yields: 602, strength: 1123, elongation: 51, grain: 18.7 }],
    ['wrought', '', 3, { test: 'tension', celsius: 25, yields: 517, strength: 1049, elongation: 55, grain: 27.8 }],
    ['wrought', '', 3, { test: 'tension', celsius: 25, yields: 461, strength: 886, elongation: 58, grain: 122.2 }],
  ]],
  ['Cr0.286Mo0.476NbTa0.024Ti0.31V0.286', [
    ['powder', 'BCC+Sec.', 48, { test: 'compression', celsius: 25, yields: 2680, grain: 0.075, hardness: 741, density: 8.02 }],
  ]],
  ['Cr0.5Fe0.5NiTi0.15', [
    ['wrought', 'FCC', 169, { test: 'tension', celsius: 25, yields: 672, strength: 982, elongation: 37, grain: 90, hardness: 335 }],
    ['wrought', 'FCC', 169, { grain: 324, hardness: 204 }],
  ]],
  ['CrCuFeNiTi', [
    ['cast', 'FCC+BCC', 9],
    ['wrought', 'FCC+BCC', 9],
    ['wrought', 'FCC+BCC', 9],
    ['wrought', 'FCC+BCC', 9],
  ]],
  ['CrFeMoNbV', [
    ['cast', 'BCC+Laves', 24, { test: 'compression', celsius: 25, yields: 2663, elongation: 2.7, hardness: 826 }],
  ]],
  ['CrFeNiTi0.2', [
    ['cast', 'FCC+BCC', 202, { test: 'compression', celsius: 25, yields: 2297.94, elongation: 5.8, hardness: 362.2 }],
  ]],
  ['CrFeNiTi0.3', [
    ['cast', 'FCC+BCC', 202, { test: 'compression', celsius: 25, yields: 2364.63, hardness: 510.3 }],
  ]],
  ['CrFeNiTi0.4', [
    ['cast', 'BCC', 202, { test: 'compression', celsius: 25, yields: 2475.41, elongation: 6.5, hardness: 600.3 }],
  ]],
  ['CrFeNiTi0.5', [
    ['cast', 'BCC', 202, { test: 'compression', celsius: 25, yields: 2380.79, hardness: 709.6 }],
  ]],
  ['CrFeNiTi0.6', [
    ['cast', 'BCC', 202, { test: 'compression', celsius: 25, yields: 1923.15, hardness: 718.2 }],
  ]],
  ['CrFeNiV0.5W', [
    ['cast', 'FCC+BCC+Sec.', 15, { test: 'compression', celsius: 25, elongation: 7.3 }],
  ]],
  ['CrMo0.5NbTa0.5TiZr', [
    ['other', 'BCC+BCC+Sec.', 139, { test: 'compression', celsius: 25, yields: 1595, strength: 2046, elongation: 5, hardness: 540 }],
    ['other', 'BCC+BCC+Sec.', 139, { test: 'compression', celsius: 800, yields: 983, strength: 1100, elongation: 5.5 }],
    ['other', 'BCC+BCC+Sec.', 139, { test: 'compression', celsius: 1000, yields: 546, strength: 630, elongation: 50 }],
    ['other', 'BCC+BCC+Sec.', 139, { test: 'compression', celsius: 1200, yields: 170, strength: 190, elongation: 50 }],
    ['other', 'BCC+BCC+Laves', 44, { test: 'compression', celsius: 23, yields: 1595, density: 7.98 }],
    ['other', 'BCC+BCC+Laves', 44, { test: 'compression', celsius: 1000, yields: 546, density: 7.98 }],
    ['other', 'BCC+BCC+Laves', 44, { test: 'compression', celsius: 1200, yields: 170, density: 7.98 }],
  ]],
  ['CrMoNbTi', [
    ['annealed', 'BCC', 43, { test: 'compression', celsius: 20, yields: 1630 }],
    ['annealed', 'BCC', 43, { test: 'compression', celsius: 200, yields: 1268 }],
    ['annealed', 'BCC', 43, { test: 'compression', celsius: 400, yields: 1115 }],
    ['annealed', 'BCC', 43, { test: 'compression', celsius: 600, yields: 1062 }],
    ['annealed', 'BCC', 43, { test: 'compression', celsius: 800, yields: 1058 }],
  ]],
  ['CrMoTaTi', [
    ['annealed', 'BCC+Laves', 43, { test: 'compression', celsius: 20, yields: 1795 }],
    ['annealed', 'BCC+Laves', 43, { test: 'compression', celsius: 100, yields: 1506 }],
    ['annealed', 'BCC+Laves', 43, { test: 'compression', celsius: 200, yields: 1266 }],
    ['annealed', 'BCC+Laves', 43, { test: 'compression', celsius: 300, yields: 1183 }],
    ['annealed', 'BCC+Laves', 43, { test: 'compression', celsius: 400, yields: 1175 }],
    ['annealed', 'BCC+Laves', 43, { test: 'compression', celsius: 600, yields: 1162 }],
    ['annealed', 'BCC+Laves', 43, { test: 'compression', celsius: 800, yields: 1162 }],
    ['annealed', 'BCC+Laves', 43, { test: 'compression', celsius: 1000, yields: 1159 }],
    ['annealed', 'BCC', 123, { hardness: 555 }],
    ['cast', 'BCC', 123, { hardness: 539 }],
  ]],
  ['CrNb0.333Ti0.333Zr0.333', [
    ['other', 'BCC+Laves', 44, { test: 'compression', celsius: 23, yields: 1576, density: 6.56 }],
    ['other', 'BCC+Laves', 44, { test: 'compression', celsius: 1000, yields: 139, density: 6.56 }],
    ['other', 'BCC+Laves', 44, { test: 'compression', celsius: 1200, yields: 32, density: 6.56 }],
  ]],
  ['CrNbTaTi', [
    ['annealed', 'BCC+Sec.', 123],
    ['cast', 'BCC', 123, { hardness: 495 }],
  ]],
  ['CrNbTiZr', [
    ['other', 'BCC+Sec.', 144, { test: 'compression', celsius: 25, yields: 1260, elongation: 6, hardness: 418 }],
    ['other', 'BCC+Sec.', 144, { test: 'compression', celsius: 600, yields: 1035, elongation: 50 }],
    ['other', 'BCC+Sec.', 144, { test: 'compression', celsius: 800, yields: 300, elongation: 50 }],
    ['other', 'BCC+Sec.', 144, { test: 'compression', celsius: 1000, yields: 115, elongation: 50 }],
    ['unknown', '', 27, { test: 'compression', celsius: 25, yields: 1260, elongation: 6, hardness: 418, density: 6.67 }],
  ]],
  ['CrTaVW', [
    ['powder', 'BCC+Laves', 112, { test: 'compression', celsius: 25, yields: 2327, elongation: 1.5, hardness: 715 }],
    ['powder', 'BCC+Laves', 112, { test: 'compression', celsius: 1200, yields: 979, elongation: 1.5 }],
  ]],
  ['CuFeNiTiVZr', [
    ['cast', '', 0, { celsius: 25, hardness: 590 }],
  ]],
  ['CuMnNiSn0.053', [
    ['cast', 'FCC+Sec.', 77, { test: 'compression', celsius: 25, yields: 380, elongation: 63, hardness: 205 }],
  ]],
  ['CuMnNiSn0.111', [
    ['cast', 'FCC+Sec.', 77, { test: 'compression', celsius: 25, yields: 630, elongation: 20, hardness: 318 }],
  ]],
  ['CuMnNiZn0.25', [
    ['cast', 'FCC', 77, { test: 'compression', celsius: 25, yields: 140, elongation: 65, hardness: 109 }],
  ]],
  ['CuMnNiZn0.333', [
    ['cast', 'FCC', 77, { test: 'compression', celsius: 25, yields: 215, elongation: 60, hardness: 147 }],
  ]],
  ['FeMoNiTiVZr', [
    ['cast', 'BCC+Sec.', 0, { celsius: 25, hardness: 740 }],
  ]],
  ['Hf0.25Nb0.125TiV0.5Zr0.5', [
    ['cast', 'BCC', 23, { test: 'compression', celsius: 25, yields: 1115, elongation: 50, hardness: 332.4 }],
  ]],
  ['Hf0.25Nb0.25TiV0.5Zr0.5', [
    ['cast', 'BCC', 23, { test: 'compression', celsius: 25, yields: 1065, elongation: 50, hardness: 322.5 }],
    ['cast', 'BCC', 23, { test: 'compression', celsius: 600, yields: 718, elongation: 50, hardness: 322.5 }],
    ['cast', 'BCC', 23, { test: 'compression', celsius: 800, yields: 135, elongation: 50, hardness: 322.5 }],
  ]],
  ['Hf0.25Nb0.375TiV0.5Zr0.5', [
    ['cast', 'BCC', 23, { test: 'compression', celsius: 25, yields: 1025, elongation: 50, hardness: 318.9 }],
  ]],
  ['Hf0.25Nb0.5TiV0.5Zr0.5', [
    ['cast', 'BCC', 23, { test: 'compression', celsius: 25, yields: 980, elongation: 50, hardness: 310.4 }],
    ['cast', 'BCC', 23, { test: 'compression', celsius: 600, yields: 859, elongation: 50, hardness: 310.4 }],
    ['cast', 'BCC', 23, { test: 'compression', celsius: 800, yields: 195, elongation: 50, hardness: 310.4 }],
  ]],
  ['Hf0.26NbTaTi0.578Zr0.416', [
    ['cast', 'BCC', 191, { test: 'compression', celsius: 60, yields: 795 }],
    ['cast', 'BCC', 191, { test: 'compression', celsius: 100, yields: 765 }],
    ['cast', 'BCC', 191, { test: 'compression', celsius: 200, yields: 650 }],
    ['cast', 'BCC', 191, { test: 'compression', celsius: 300, yields: 590 }],
    ['cast', 'BCC', 191, { test: 'compression', celsius: 25, yields: 845 }],
  ]],
  ['Hf0.333Nb0.333Ta0.333TiZr0.667', [
    ['cast', 'BCC', 187, { test: 'tension', celsius: 25, yields: 903, strength: 990, elongation: 19, hardness: 301 }],
  ]],
  ['Hf0.5Mo0.5NbSi0.1TiZr', [
    ['cast', 'BCC+Sec.', 80, { test: 'compression', celsius: 25, yields: 1350, strength: 2150, hardness: 442 }],
  ]],
  ['Hf0.5Mo0.5NbSi0.3TiZr', [
    ['cast', 'BCC+Sec.', 80, { test: 'compression', celsius: 25, yields: 1370, strength: 1950, hardness: 494 }],
  ]],
  ['Hf0.5Mo0.5NbSi0.5TiZr', [
    ['cast', 'BCC+Sec.', 80, { test: 'compression', celsius: 25, yields: 1600, strength: 1900, hardness: 524 }],
  ]],
  ['Hf0.5Mo0.5NbSi0.7TiZr', [
    ['cast', 'BCC+Sec.', 80, { test: 'compression', celsius: 25, yields: 1550, strength: 1900, hardness: 580 }],
  ]],
  ['Hf0.5Mo0.5NbSi0.9TiZr', [
    ['cast', 'BCC+Sec.', 80, { test: 'compression', celsius: 25, yields: 1650, strength: 2000, hardness: 640 }],
  ]],
  ['Hf0.5Mo0.5NbTiZr', [
    ['cast', 'BCC', 56, { test: 'compression', celsius: 25, yields: 1176, strength: 1538 }],
    ['cast', 'BCC+Sec.', 80, { test: 'compression', celsius: 25, yields: 1150, strength: 1500, hardness: 400 }],
  ]],
  ['Hf0.5Nb0.667Ta0.333TiZr0.833', [
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -268.8, yields: 2250 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -268.8, yields: 2210 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -196, yields: 1880 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -196, yields: 1750 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -153, yields: 1640 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -153, yields: 1550 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -103, yields: 1380 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -103, yields: 1370 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -43, yields: 1200 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -43, yields: 1180 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: 72, yields: 1040 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: 72, yields: 1020 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: 25, yields: 1150 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: 25, yields: 1100 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -268.8, yields: 2390 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -196, yields: 1920 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -153, yields: 1370 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -103, yields: 1250 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: -43, yields: 1020 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: 72, yields: 640 }],
    ['wrought', 'BCC', 154, { test: 'compression', celsius: 25, yields: 890 }],
  ]],
  ['Hf0.787Nb0.142Ta0.142TiZr0.787', [
    ['wrought', 'BCC', 193, { test: 'tension', celsius: 25, yields: 540, strength: 995 }],
  ]],
  ['HfMo0.25NbTaTiZr', [
    ['cast', 'BCC', 127, { test: 'compression', celsius: 25, yields: 1112, elongation: 50, hardness: 395, youngs: 96 }],
  ]],
  ['HfMo0.5NbSi0.3TiV0.5', [
    ['cast', 'BCC+Sec.', 82, { test: 'compression', celsius: 1000, yields: 398, strength: 430 }],
    ['cast', 'BCC+Sec.', 82, { test: 'compression', celsius: 25, yields: 1617, strength: 2016 }],
    ['cast', 'BCC+Sec.', 82, { test: 'compression', celsius: 1200, yields: 166, strength: 187 }],
    ['cast', 'BCC+Sec.', 44, { test: 'compression', celsius: 23, yields: 1617, density: 8.46 }],
    ['cast', 'BCC+Sec.', 44, { test: 'compression', celsius: 1000, yields: 398, density: 8.46 }],
    ['cast', 'BCC+Sec.', 44, { test: 'compression', celsius: 1200, yields: 166, density: 8.46 }],
  ]],
  ['HfMo0.5NbSi0.5TiV0.5', [
    ['cast', 'BCC+Sec.', 82, { test: 'compression', celsius: 1000, yields: 614, strength: 696 }],
    ['cast', 'BCC+Sec.', 82, { test: 'compression', celsius: 25, yields: 1787, strength: 2052 }],
    ['cast', 'BCC+Sec.', 82, { test: 'compression', celsius: 1200, yields: 188, strength: 219 }],
    ['cast', 'BCC+Sec.', 44, { test: 'compression', celsius: 23, yields: 1787, density: 8.16 }],
    ['cast', 'BCC+Sec.', 44, { test: 'compression', celsius: 1000, yields: 614, density: 8.16 }],
    ['cast', 'BCC+Sec.', 44, { test: 'compression', celsius: 1200, yields: 188, density: 8.16 }],
  ]],
  ['HfMo0.5NbSi0.7TiV0.5', [
    ['cast', 'BCC+Sec.', 82, { test: 'compression', celsius: 1000, yields: 673, strength: 741 }],
    ['cast', 'BCC+Sec.', 82, { test: 'compression', celsius: 25, yields: 2134, strength: 2242 }],
    ['cast', 'BCC+Sec.', 82, { test: 'compression', celsius: 1200, yields: 235, strength: 268 }],
    ['cast', 'BCC+Sec.', 44, { test: 'compression', celsius: 23, yields: 2134, density: 7.89 }],
    ['cast', 'BCC+Sec.', 44, { test: 'compression', celsius: 1000, yields: 673, density: 7.89 }],
    ['cast', 'BCC+Sec.', 44, { test: 'compression', celsius: 1200, yields: 235, density: 7.89 }],
  ]],
  ['HfMo0.5NbTaTiZr', [
    ['cast', 'BCC', 127, { test: 'compression', celsius: 25, yields: 1317, elongation: 50, hardness: 480, youngs: 102 }],
  ]],
  ['HfMo0.75NbTaTiZr', [
    ['cast', 'BCC', 127, { test: 'compression', celsius: 25, yields: 1373, elongation: 50, hardness: 492, youngs: 109 }],
  ]],
  ['HfMoNbTaTiZr', [
    ['cast', 'BCC', 127, { test: 'compression', celsius: 25, yields: 1512, strength: 1800, elongation: 12, hardness: 505, youngs: 115 }],
    ['cast', 'BCC', 55, { test: 'compression', celsius: 25, yields: 1512, elongation: 12, hardness: 505 }],
    ['cast', 'BCC', 55, { test: 'compression', celsius: 800, yields: 1007, elongation: 23 }],
    ['cast', 'BCC', 55, { test: 'compression', celsius: 1000, yields: 814, elongation: 30 }],
    ['cast', 'BCC', 55, { test: 'compression', celsius: 1200, yields: 556, elongation: 30 }],
    ['cast', 'BCC', 44, { test: 'compression', celsius: 23, yields: 1512, density: 9.93 }],
    ['cast', 'BCC', 44, { test: 'compression', celsius: 1000, yields: 814, density: 9.93 }],
    ['cast', 'BCC', 44, { test: 'compression', celsius: 1200, yields: 556, density: 9.93 }],
    ['cast', 'BCC', 207, { test: 'compression', celsius: 25, yields: 1512, elongation: 12 }],
    ['cast', 'BCC', 207, { test: 'compression', celsius: 800, yields: 1007 }],
    ['cast', 'BCC', 207, { test: 'compression', celsius: 1000, yields: 814 }],
    ['cast', 'BCC', 207, { test: 'compression', celsius: 1200, yields: 556 }],
  ]],
  ['HfMoNbTiZr', [
    ['annealed', 'BCC', 117, { test: 'compression', celsius: 25, yields: 1575, strength: 1640, elongation: 9 }],
    ['annealed', 'BCC', 117, { test: 'compression', celsius: 800, yields: 825, strength: 1095, elongation: 50 }],
    ['annealed', 'BCC', 117, { test: 'compression', celsius: 1000, yields: 635, strength: 654, elongation: 50 }],
    ['annealed', 'BCC', 117, { test: 'compression', celsius: 1200, yields: 187, strength: 194, elongation: 50 }],
    ['cast', 'BCC', 117, { test: 'compression', celsius: 25, yields: 1719, strength: 1803, elongation: 10 }],
    ['cast', 'BCC', 44, { test: 'compression', celsius: 23, yields: 1575, density: 8.68 }],
    ['cast', 'BCC', 44, { test: 'compression', celsius: 1000, yields: 635, density: 8.68 }],
    ['cast', 'BCC', 44, { test: 'compression', celsius: 1200, yields: 187, density: 8.68 }],
    ['cast', 'BCC', 57, { test: 'compression', celsius: 25, yields: 1719, density: 8.68 }],
    ['cast', 'BCC', 207, { test: 'compression', celsius: 25, yields: 1351, elongation: 20 }],
    ['cast', 'BCC', 207, { test: 'compression', celsius: 800, yields: 829 }],
    ['cast', 'BCC', 207, { test: 'compression', celsius: 1000, yields: 721 }],
    ['cast', 'BCC', 207, { test: 'compression', celsius: 1200, yields: 301 }],
  ]],
  ['HfMoTaTiZr', [
    ['cast', 'BCC', 55, { test: 'compression', celsius: 25, yields: 1600, strength: 1743, elongation: 4, hardness: 542 }],
    ['cast', 'BCC', 55, { test: 'compression', celsius: 800, yields: 1045, strength: 1446, elongation: 19 }],
    ['cast', 'BCC', 55, { test: 'compression', celsius: 1000, yields: 855, elongation: 30 }],
    ['cast', 'BCC', 55, { test: 'compression', celsius: 1200, yields: 404, elongation: 30 }],
    ['cast', 'BCC', 44, { test: 'compression', celsius: 23, yields: 1600, density: 10.18 }],
    ['cast', 'BCC', 44, { test: 'compression', celsius: 1000, yields: 855, density: 10.18 }],
    ['cast', 'BCC', 44, { test: 'compression', celsius: 1200, yields: 404, density: 10.18 }],
    ['cast', 'BCC', 207, { test: 'compression', celsius: 25, yields: 1600, elongation: 4 }],
    ['cast', 'BCC', 207, { test: 'compression', celsius: 800, yields: 1045 }],
    ['cast', 'BCC', 207, { test: 'compression', celsius: 1000, yields: 855 }],
    ['cast', 'BCC', 207, { test: 'compression', celsius: 1200, yields: 404 }],
  ]],
  ['HfNbSi0.5TiVZr', [
    ['annealed', 'BCC+Laves+Sec.', 214, { test: 'compression', celsius: 400, yields: 1273, strength: 1335, elongation: 14.5 }],
    ['annealed', 'BCC+Laves+Sec.', 214, { test: 'compression', celsius: 600, yields: 597, strength: 651, elongation: 50 }],
    ['annealed', 'BCC+Laves+Sec.', 214, { test: 'compression', celsius: 800, yields: 102, strength: 107, elongation: 50 }],
    ['annealed', 'BCC+Laves+Sec.', 214, { test: 'compression', celsius: 25, yields: 1483, strength: 1611, elongation: 9.5 }],
    ['cast', 'BCC+Laves+Sec.', 214, { test: 'compression', celsius: 600, yields: 920, strength: 1252, elongation: 50 }],
    ['cast', 'BCC+Laves+Sec.', 214, { test: 'compression', celsius: 800, yields: 371, strength: 427, elongation: 50 }],
    ['cast', 'BCC+Laves+Sec.', 214, { test: 'compression', celsius: 25, yields: 1540, strength: 1643, elongation: 16.8 }],
  ]],
  ['HfNbTaTiWZr', [
    ['cast', 'BCC+Laves', 98, { test: 'compression', celsius: 25, yields: 1550, elongation: 26.3, grain: 29.4 }],
    ['cast', 'BCC+Laves', 98, { test: 'compression', celsius: 800, yields: 577, elongation: 35 }],
    ['cast', 'BCC+Laves', 98, { test: 'compression', celsius: 1000, yields: 409, elongation: 35 }],
    ['cast', 'BCC+Laves', 98, { test: 'compression', celsius: 1200, yields: 345, elongation: 35 }],
  ]],
  ['HfNbTaTiZr', [
    ['cast', 'BCC', 73, { test: 'compression', celsius: 25, yields: 1073, elongation: 50, grain: 120, hardness: 295, youngs: 55 }],
    ['cast', 'BCC', 127, { test: 'compression', celsius: 25, yields: 1015, elongation: 50, hardness: 335, youngs: 85 }],
    ['other', 'BCC', 6, { test: 'compression', celsius: 25, yields: 929, elongation: 50 }],
    ['other', 'BCC', 6, { test: 'compression', celsius: 400, yields: 790, elongation: 50 }],
    ['other', 'BCC', 6, { test: 'compression', celsius: 600, yields: 675, elongation: 50 }],
    ['other', 'BCC', 6, { test: 'compression', celsius: 800, yields: 535, elongation: 50 }],
    ['other', 'BCC', 6, { test: 'compression', celsius: 1000, yields: 295, elongation: 50 }],
    ['other', 'BCC', 6, { test: 'compression', celsius: 1200, yields: 92, elongation: 50 }],
    ['other', 'BCC', 36, { test: 'tension', celsius: 25, yields: 1900, elongation: 7.9, grain: 0.05, hardness: 420 }],
    ['other', 'BCC+HCP', 36, { test: 'tension', celsius: 25, yields: 1520, elongation: 1.7, grain: 0.05, hardness: 530 }],
    ['other', 'BCC+BCC+HCP', 36, { test: 'tension', celsius: 25, yields: 795, elongation: 5, grain: 0.1, hardness: 340 }],
    ['wrought', 'BCC', 36, { test: 'tension', celsius: 25, yields: 830, strength: 840, elongation: 9.2, grain: 100, hardness: 309 }],
    ['wrought', 'BCC', 76, { test: 'tension', celsius: 25, yields: 1202, strength: 1295, elongation: 4.7, hardness: 366 }],
    ['wrought', 'BCC+BCC', 76, { test: 'tension', celsius: 25, yields: 1303, strength: 1334 }],
    ['wrought', 'BCC', 76, { test: 'tension', celsius: 25, yields: 1145, strength: 1262, elongation: 9.7, hardness: 351 }],
    ['wrought', 'BCC', 128, { test: 'tension', celsius: 25, yields: 958, strength: 974 }],
    ['wrought', 'BCC', 128, { test: 'tension', celsius: 25, yields: 944, strength: 959 }],
    ['wrought', 'BCC', 128, { test: 'tension', celsius: 25, yields: 940, strength: 953 }],
    ['wrought', 'BCC', 37, { test: 'tension', celsius: 25, yields: 940, strength: 1080 }],
    ['cast', 'BCC', 146, { test: 'compression', celsius: 25, yields: 905 }],
    ['cast', 'BCC', 106, { test: 'compression', celsius: 25, yields: 890 }],
    ['cast', 'BCC', 149, { test: 'tension', celsius: 25, yields: 828, strength: 862 }],
    ['cast', 'BCC', 149, { test: 'tension', celsius: 25, yields: 827, strength: 856 }],
    ['cast', 'BCC', 149, { test: 'tension', celsius: 25, yields: 820, strength: 869 }],
    ['cast', 'BCC', 149, { test: 'tension', celsius: 25, yields: 803, strength: 810 }],
    ['wrought', 'BCC', 108],
    ['other', 'BCC', 44, { test: 'compression', celsius: 23, yields: 929, density: 9.89 }],
    ['other', 'BCC', 44, { test: 'compression', celsius: 1000, yields: 295, density: 9.89 }],
    ['other', 'BCC', 44, { test: 'compression', celsius: 1200, yields: 92, density: 9.89 }],
    ['wrought', 'BCC', 96, { test: 'tension', celsius: 25, yields: 985, strength: 1004, elongation: 15.7, grain: 40 }],
    ['wrought', 'BCC', 96, { test: 'tension', celsius: 25, yields: 972, strength: 999.5, elongation: 12.6, grain: 87 }],
    ['wrought', 'BCC', 96, { test: 'tension', celsius: 25, yields: 967, strength: 980.6, elongation: 10.8, grain: 112 }],
    ['wrought', 'BCC', 97, { celsius: 20, grain: 60, youngs: 88.9 }],
    ['wrought', 'BCC', 97, { celsius: 40, youngs: 88.6 }],
    ['wrought', 'BCC', 97, { celsius: 60, youngs: 88.4 }],
    ['wrought', 'BCC', 97, { celsius: 80, youngs: 88.1 }],
    ['wrought', 'BCC', 97, { celsius: 100, youngs: 87.9 }],
    ['wrought', 'BCC', 97, { celsius: 120, youngs: 87.7 }],
    ['wrought', 'BCC', 97, { celsius: 140, youngs: 87.5 }],
    ['wrought', 'BCC', 97, { celsius: 160, youngs: 87.3 }],
    ['wrought', 'BCC', 97, { celsius: 180, youngs: 87.1 }],
    ['wrought', 'BCC', 97, { celsius: 200, youngs: 86.9 }],
    ['wrought', 'BCC', 97, { celsius: 220, youngs: 86.7 }],
    ['wrought', 'BCC', 97, { celsius: 240, youngs: 86.5 }],
    ['wrought', 'BCC', 97, { celsius: 260, youngs: 86.3 }],
    ['wrought', 'BCC', 97, { celsius: 280, youngs: 86.1 }],
    ['wrought', 'BCC', 97, { celsius: 300, youngs: 85.8 }],
    ['wrought', 'BCC', 97, { celsius: 320, youngs: 85.5 }],
    ['wrought', 'BCC', 97, { celsius: 340, youngs: 85.2 }],
    ['wrought', 'BCC', 97, { celsius: 360, youngs: 84.9 }],
    ['wrought', 'BCC', 97, { celsius: 380, youngs: 84.5 }],
    ['wrought', 'BCC', 97, { celsius: 400, youngs: 84.2 }],
    ['wrought', 'BCC', 97, { celsius: 420, youngs: 83.8 }],
    ['wrought', 'BCC', 97, { celsius: 440, youngs: 83.5 }],
    ['wrought', 'BCC', 97, { celsius: 460, youngs: 83.1 }],
    ['wrought', 'BCC', 97, { celsius: 480, youngs: 82.7 }],
    ['wrought', 'BCC', 97, { celsius: 500, youngs: 82.3 }],
    ['wrought', 'BCC', 97, { celsius: 520, youngs: 81.9 }],
    ['wrought', 'BCC', 97, { celsius: 540, youngs: 81.6 }],
    ['wrought', 'BCC', 97, { celsius: 560, youngs: 81.3 }],
    ['wrought', 'BCC', 97, { celsius: 580, youngs: 81 }],
    ['wrought', 'BCC', 97, { celsius: 600, youngs: 80.7 }],
    ['wrought', 'BCC', 97, { celsius: 620, youngs: 80.4 }],
    ['wrought', 'BCC', 97, { celsius: 640, youngs: 80.2 }],
    ['wrought', 'BCC', 97, { celsius: 660, youngs: 80 }],
    ['wrought', 'BCC', 97, { celsius: 680, youngs: 79.8 }],
    ['wrought', 'BCC', 97, { celsius: 700, youngs: 79.6 }],
    ['wrought', 'BCC', 97, { celsius: 720, youngs: 79.3 }],
    ['wrought', 'BCC', 97, { celsius: 740, youngs: 79 }],
    ['wrought', 'BCC', 97, { celsius: 760, youngs: 78.7 }],
    ['wrought', 'BCC', 97, { celsius: 780, youngs: 78.4 }],
    ['wrought', 'BCC', 97, { celsius: 800, youngs: 78.1 }],
    ['wrought', 'BCC', 97, { celsius: 820, youngs: 77.7 }],
    ['wrought', 'BCC', 97, { celsius: 840, youngs: 77.4 }],
    ['cast', 'BCC', 208, { test: 'tension', celsius: 25, yields: 1155, strength: 1212, elongation: 12.3, grain: 500, hardness: 359, youngs: 59 }],
    ['other', 'BCC', 13, { test: 'tension', celsius: 25, yields: 1438, youngs: 91.5 }],
    ['other', 'BCC', 13, { test: 'tension', celsius: 25, yields: 1159, youngs: 99.2 }],
    ['other', 'BCC', 13, { test: 'tension', celsius: 25, yields: 1134, youngs: 109.1 }],
    ['other', 'BCC', 13, { test: 'tension', celsius: 25, yields: 1094, youngs: 105.3 }],
    ['other', 'BCC', 13, { test: 'tension', celsius: 25, yields: 1071, youngs: 91.6 }],
    ['other', 'BCC', 13, { test: 'tension', celsius: 25, yields: 1107, grain: 24.4, youngs: 92.6 }],
    ['other', 'BCC', 13, { test: 'tension', celsius: 25, yields: 1115, grain: 31.3, youngs: 92.6 }],
    ['other', 'BCC', 13, { test: 'tension', celsius: 25, yields: 1114, grain: 38.4, youngs: 101.3 }],
    ['other', 'BCC', 13, { grain: 50.1 }],
    ['other', 'BCC', 13, { grain: 21.9 }],
    ['other', 'BCC', 13, { grain: 75.5 }],
  ]],
  ['HfNbTiVZr', [
    ['annealed', 'BCC+Laves', 47, { test: 'compression', celsius: 25, yields: 1157, strength: 1468 }],
    ['annealed', 'BCC', 47, { test: 'compression', celsius: 25, yields: 1253, strength: 1393 }],
    ['annealed', 'BCC', 47, { test: 'compression', celsius: 25, yields: 1140, strength: 1463 }],
    ['annealed', 'BCC', 47, { test: 'compression', celsius: 25, yields: 1120, strength: 1376, elongation: 30 }],
    ['cast', 'BCC+Laves', 47, { test: 'compression', celsius: 25, yields: 1170, strength: 1463, elongation: 29.6 }],
  ]],
  ['HfNbTiZr', [
    ['cast', 'BCC', 125, { test: 'tension', celsius: 25, yields: 879, strength: 969 }],
    ['wrought', 'BCC', 60, { youngs: 69.7 }],
    ['cast', 'BCC', 22, { test: 'compression', celsius: 25, yields: 1000, elongation: 52, hardness: 351 }],
    ['annealed', 'BCC', 22, { grain: 50 }],
    ['cast', 'BCC', 22, { test: 'compression', celsius: 800, yields: 303, elongation: 51 }],
    ['cast', 'BCC', 22, { test: 'compression', celsius: 1000, yields: 154, elongation: 51 }],
  ]],
  ['HfTa0.4TiZr', [
    ['cast', 'BCC+HCP', 2, { test: 'tension', celsius: 25, yields: 400, strength: 1100 }],
  ]],
  ['HfTa0.5TiZr', [
    ['cast', 'BCC+HCP', 2, { test: 'tension', celsius: 25, yields: 700, strength: 1100 }],
  ]],
  ['HfTa0.6TiZr', [
    ['cast', 'BCC+HCP', 2, { test: 'tension', celsius: 25, yields: 800, strength: 1100 }],
  ]],
  ['HfTaTiZr', [
    ['cast', 'BCC', 2, { test: 'tension', celsius: 25, yields: 1500, strength: 1500 }],
  ]],
  ['HfTiZr', [
    ['cast', 'Other', 4, { test: 'compression', celsius: 25, yields: 773, elongation: 17, hardness: 211 }],
  ]],
  ['MoNbRe0.5W', [
    ['cast', 'BCC', 91, { test: 'compression', celsius: 25, yields: 896, elongation: 10.4, hardness: 473 }],
  ]],
  ['MoNbTaTi0.25W', [
    ['cast', 'BCC', 155, { test: 'compression', celsius: 25, yields: 1109, strength: 1197, hardness: 478.3 }],
  ]],
  ['MoNbTaTi0.5W', [
    ['cast', 'BCC', 155, { test: 'compression', celsius: 25, yields: 1211, strength: 1578, hardness: 481.2 }],
  ]],
  ['MoNbTaTi0.75W', [
    ['cast', 'BCC', 155, { test: 'compression', celsius: 25, yields: 1304, strength: 1593, hardness: 495.6 }],
  ]],
  ['MoNbTaTiV', [
    ['cast', 'BCC', 83, { test: 'compression', celsius: 25, yields: 1400, strength: 2450 }],
  ]],
  ['MoNbTaTiW', [
    ['cast', 'BCC', 155, { test: 'compression', celsius: 25, yields: 1455, strength: 1910, hardness: 507.5 }],
    ['cast', 'BCC', 59, { test: 'compression', celsius: 600, yields: 689, strength: 1681 }],
    ['cast', 'BCC', 59, { test: 'compression', celsius: 800, yields: 674, strength: 1618 }],
    ['cast', 'BCC', 59, { test: 'compression', celsius: 1000, yields: 620, strength: 1426 }],
    ['cast', 'BCC', 59, { test: 'compression', celsius: 1200, yields: 586, strength: 814 }],
    ['cast', 'BCC', 59, { test: 'compression', celsius: 25, yields: 1343, strength: 2005 }],
    ['cast', 'BCC', 44, { test: 'compression', celsius: 23, yields: 1343, density: 11.72 }],
    ['cast', 'BCC', 44, { test: 'compression', celsius: 1000, yields: 620, density: 11.72 }],
    ['cast', 'BCC', 44, { test: 'compression', celsius: 1200, yields: 586, density: 11.72 }],
    ['annealed', 'BCC', 123, { hardness: 482 }],
    ['cast', 'BCC', 123, { hardness: 446 }],
  ]],
  ['MoNbTaW', [
    ['cast', 'BCC', 50, { test: 'compression', celsius: 25, yields: 1058, strength: 1211, elongation: 2, grain: 200, hardness: 454 }],
    ['cast', 'BCC', 50, { test: 'compression', celsius: 600, yields: 561, elongation: 40 }],
    ['cast', 'BCC', 50, { test: 'compression', celsius: 800, yields: 552, elongation: 40 }],
    ['cast', 'BCC', 50, { test: 'compression', celsius: 1000, yields: 548, elongation: 40 }],
    ['cast', 'BCC', 50, { test: 'compression', celsius: 1200, yields: 506, elongation: 40 }],
    ['cast', 'BCC', 50, { test: 'compression', celsius: 1400, yields: 421, elongation: 40 }],
    ['cast', 'BCC', 50, { test: 'compression', celsius: 1600, yields: 405, elongation: 40 }],
    ['cast', 'BCC', 155, { test: 'compression', celsius: 25, yields: 996, strength: 1148 }],
    ['other', 'BCC', 44, { test: 'compression', celsius: 23, yields: 996, density: 13.6 }],
    ['other', 'BCC', 44, { test: 'compression', celsius: 1000, yields: 548, density: 13.6 }],
    ['other', 'BCC', 44, { test: 'compression', celsius: 1200, yields: 506, density: 13.6 }],
    ['powder', 'BCC', 8, { test: 'compression', celsius: 25, yields: 1217, elongation: 7.5, hardness: 504.5 }],
    ['powder', 'BCC', 8, { celsius: 200, hardness: 420 }],
    ['powder', 'BCC', 8, { celsius: 400, hardness: 425 }],
    ['powder', 'BCC', 8, { celsius: 600, hardness: 340 }],
    ['powder', 'BCC', 8, { celsius: 800, hardness: 335.5 }],
  ]],
  ['MoNbTi', [
    ['other', 'BCC', 44, { test: 'compression', celsius: 23, yields: 1100, density: 7.67 }],
    ['other', 'BCC', 44, { test: 'compression', celsius: 1000, yields: 504, density: 7.67 }],
    ['other', 'BCC', 44, { test: 'compression', celsius: 1200, yields: 324, density: 7.67 }],
  ]],
  ['MoTaTiV', [
    ['cast', 'BCC', 215, { test: 'compression', celsius: 25, yields: 1221, strength: 1454 }],
  ]],
  ['Nb0.333Ta0.667Ti0.667Zr', [
    ['cast', 'BCC+Sec.', 208, { test: 'tension', celsius: 25, strength: 843, elongation: 0, grain: 500, hardness: 489, youngs: 93 }],
  ]],
  ['Nb0.5Ti0.5VZr0.5', [
    ['other', 'BCC', 144, { test: 'compression', celsius: 25, yields: 918, elongation: 50, grain: 550, hardness: 304 }],
    ['other', 'BCC', 144, { test: 'compression', celsius: 600, yields: 571, elongation: 50 }],
    ['other', 'BCC', 144, { test: 'compression', celsius: 800, yields: 240, elongation: 50 }],
    ['other', 'BCC', 144, { test: 'compression', celsius: 1000, yields: 72, elongation: 50 }],
  ]],
  ['NbRe0.3TiZr', [
    ['other', 'BCC+Laves', 44, { test: 'compression', celsius: 23, yields: 1244, density: 7.81 }],
    ['other', 'BCC+Laves', 44, { test: 'compression', celsius: 1000, yields: 323, density: 7.81 }],
    ['other', 'BCC+Laves', 44, { test: 'compression', celsius: 1200, yields: 89, density: 7.81 }],
  ]],
  ['NbTa0.3TiZr', [
    ['other', 'BCC', 44, { test: 'compression', celsius: 23, yields: 882, density: 7.81 }],
    ['other', 'BCC', 44, { test: 'compression', celsius: 1000, yields: 274, density: 7.81 }],
    ['other', 'BCC', 44, { test: 'compression', celsius: 1200, yields: 102, density: 7.81 }],
  ]],
  ['NbTa0.667Ti0.667Zr0.333', [
    ['cast', 'BCC+Sec.', 208, { test: 'tension', celsius: 25, yields: 822, strength: 852, elongation: 0.33, grain: 500, hardness: 294, youngs: 127 }],
  ]],
  ['NbTaTi', [
    ['wrought', 'BCC', 43, { test: 'compression', celsius: 20, yields: 573 }],
    ['wrought', 'BCC', 43, { test: 'compression', celsius: 100, yields: 486 }],
    ['wrought', 'BCC', 43, { test: 'compression', celsius: 200, yields: 378 }],
    ['wrought', 'BCC', 43, { test: 'compression', celsius: 300, yields: 314 }],
    ['wrought', 'BCC', 43, { test: 'compression', celsius: 400, yields: 232 }],
    ['wrought', 'BCC', 43, { test: 'compression', celsius: 600, yields: 222 }],
    ['wrought', 'BCC', 43, { test: 'compression', celsius: 800, yields: 210 }],
    ['wrought', 'BCC', 43, { test: 'compression', celsius: 1000, yields: 160 }],
    ['cast', 'BCC', 208, { test: 'tension', celsius: 25, yields: 620, strength: 683, elongation: 18.5, grain: 500, hardness: 246, youngs: 143 }],
  ]],
  ['NbTaTiV', [
    ['cast', 'BCC', 170, { test: 'compression', celsius: 25, yields: 1092 }],
    ['cast', 'BCC', 150, { test: 'compression', celsius: 25, yields: 965 }],
    ['powder', 'BCC', 90, { test: 'compression', celsius: 25, yields: 1108, elongation: 28.3, grain: 24, hardness: 427.9 }],
    ['powder', 'BCC', 90, { test: 'compression', celsius: 25, yields: 1308, elongation: 27.9, grain: 30, hardness: 444.3 }],
    ['powder', 'BCC', 90, { test: 'compression', celsius: 25, yields: 1373, elongation: 29.5, grain: 38, hardness: 510.9 }],
  ]],
  ['NbTaTiVW', [
    ['cast', 'BCC', 150, { test: 'compression', celsius: 25, yields: 1420, strength: 1800, elongation: 20 }],
  ]],
  ['NbTaTiVZr', [
    ['other', 'BCC+BCC', 44, { test: 'compression', celsius: 23, yields: 1395, density: 8.43 }],
    ['other', 'BCC+BCC', 44, { test: 'compression', celsius: 1000, yields: 190, density: 8.43 }],
    ['other', 'BCC+BCC', 44, { test: 'compression', celsius: 1200, yields: 78, density: 8.43 }],
  ]],
  ['NbTaTiZr', [
    ['cast', 'BCC', 208, { test: 'tension', celsius: 25, yields: 1144, strength: 1205, elongation: 6.4, grain: 500, hardness: 358, youngs: 98 }],
  ]],
  ['NbTiV0.3Zr', [
    ['annealed', 'BCC', 118, { test: 'compression', celsius: 25, yields: 866 }],
  ]],
  ['NbTiVZr', [
    ['other', 'BCC', 144, { test: 'compression', celsius: 25, yields: 1105, elongation: 50, grain: 550, hardness: 335 }],
    ['other', 'BCC', 144, { test: 'compression', celsius: 600, yields: 834, elongation: 50 }],
    ['other', 'BCC', 144, { test: 'compression', celsius: 800, yields: 187, elongation: 50 }],
    ['other', 'BCC', 144, { test: 'compression', celsius: 1000, yields: 58, elongation: 50 }],
    ['annealed', 'BCC', 118, { test: 'compression', celsius: 25, yields: 1104 }],
    ['unknown', '', 27, { test: 'compression', celsius: 25, yields: 1105, elongation: 50, hardness: 335, density: 6.52 }],
  ]],
  ['TaTiZr', [
    ['cast', 'BCC+Sec.', 208, { test: 'tension', celsius: 25, strength: 284, elongation: 0, grain: 500, hardness: 485, youngs: 157 }],
  ]],
];
