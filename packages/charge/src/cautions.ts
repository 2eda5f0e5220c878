import {
  type Hazard,
  hazardsOf,
  type OwnPair,
  ownPairOf,
  ownPairOrigin,
  pairEnthalpyWith,
} from '@tiegel/elements';
import type { Caution } from './caution.ts';
import type { ChargeSheet } from './sheet.ts';
import { vapourPressure } from './vapourPressure.ts';

/** Stands with every caution. */
const follow =
  'Follow the safety data sheet of the material as bought and your local codes; leave hazardous work to those trained and licensed for it.';

/** From here on a melt loses an element visibly within minutes under argon. Common practice, no source. */
const MARKED_PA = 2000;
/** kJ/mol, of the equimolar pair; from here on mixing heats a charge by hundreds of kelvin. Common practice, no source. */
const VIOLENT_PAIR = -18;
/** at.%, of both elements of such a pair */
const ENOUGH_OF_BOTH = 5;

type Charged = Pick<ChargeSheet, 'composition' | 'window' | 'loss'>;

/** What kills or causes cancer stands before what burns, what burns before what spoils the melt. */
const gravest: readonly Hazard['kind'][] = [
  'carcinogenic dust or fume',
  'toxic',
  'toxic dust or fume',
  'toxic or volatile oxide',
  'harms reproduction',
  'pyrophoric powder',
  'reacts with water or air',
  'volatile when molten',
  'attacks metals',
  'flammable powder',
];
/** Dust of these is worse than its fire. */
const harmfulDust: readonly Hazard['kind'][] = ['carcinogenic dust or fume', 'toxic dust or fume'];

/**
 * What is fatal if inhaled first, then cautions of the process, then the others on record for the elements,
 * the gravest kind first.
 * @param pairs mixing enthalpies of one's own, in the place of those of the project
 */
export function cautionsFor(sheet: Charged, pairs: readonly OwnPair[] = []): Caution[] {
  const symbols = Object.keys(sheet.composition);
  return [
    ...onRecord(symbols, isFatal),
    ...boilingFirst(sheet),
    ...evaporation(sheet),
    ...heatOfMixing(sheet, pairs),
    ...powders(symbols),
    ...onRecord(symbols, (hazard) => !isFatal(hazard)),
  ];
}

function boilingFirst({ window: { gap, lowestBoiling, highestMelting } }: Charged): Caution[] {
  if (gap === null || highestMelting === null || gap >= 0) return [];
  return [
    {
      about: [lowestBoiling.element, highestMelting.element],
      kind: 'boils before all is molten',
      text: `${lowestBoiling.element} boils at ${kelvin(lowestBoiling.temperature)}, before ${highestMelting.element} melts at ${kelvin(highestMelting.temperature)}: charged together it is lost, and may be thrown out. A master alloy that melts lower is a way around it.${inAClosedVessel(lowestBoiling.element, highestMelting.temperature)}`,
      source: 'boiling',
      follow,
    },
  ];
}

function inAClosedVessel(symbol: string, temperature: number): string {
  const pressure = vapourPressure(symbol, temperature);
  const estimate = pressure === null ? '' : ` (estimated, pure: ${inWords(pressure)})`;
  return ` Never melt it in a closed crucible or ampoule: its vapour would burst it${estimate}; pressure vessels are for those licensed for them.`;
}

function evaporation({ composition, window: { highestMelting }, loss }: Charged): Caution[] {
  if (highestMelting === null) return [];
  const { temperature, element } = highestMelting;
  const volatile = Object.keys(composition)
    .flatMap((symbol) => {
      const pressure = symbol === element ? null : vapourPressure(symbol, temperature);
      return pressure === null || pressure < MARKED_PA ? [] : [{ symbol, pressure }];
    })
    .sort((a, b) => b.pressure - a.pressure);
  if (volatile.length === 0) return [];
  const about = volatile.map(({ symbol }) => symbol);
  const pressures = volatile.map(({ symbol, pressure }) => `${symbol} ${inWords(pressure)}`).join(', ');
  return [
    {
      about,
      kind: 'evaporates',
      text: `Vapour pressures where ${element} melts (${kelvin(temperature)}), of the pure elements, estimated from their boiling points (for the usual metals, tables give between about a third and three times as much): ${pressures}. ${madeUpFor(about, loss)} Charge them last or under the others, melt under argon rather than vacuum, and weigh the ingot.`,
      source: 'estimate',
      follow,
    },
  ];
}

function madeUpFor(symbols: readonly string[], loss: Readonly<Record<string, number>>): string {
  const made = symbols.filter((symbol) => (loss[symbol] ?? 0) > 0);
  const not = symbols.filter((symbol) => !made.includes(symbol));
  const told = made.map((symbol) => `${loss[symbol]} % of ${symbol}`).join(', ');
  return [
    made.length > 0 ? `Made up for here: ${told}.` : '',
    not.length > 0 ? `No loss of ${not.join(', ')} is made up for here.` : '',
  ]
    .filter((one) => one !== '')
    .join(' ');
}

function heatOfMixing({ composition }: Charged, own: readonly OwnPair[]): Caution[] {
  const enthalpyOf = pairEnthalpyWith(own);
  const symbols = Object.keys(composition).filter((symbol) => composition[symbol]! >= ENOUGH_OF_BOTH);
  const pairs = symbols.flatMap((a, at) =>
    symbols.slice(at + 1).flatMap((b) => {
      const enthalpy = enthalpyOf(a, b);
      return enthalpy !== null && enthalpy <= VIOLENT_PAIR ? [{ a, b, enthalpy }] : [];
    }),
  );
  if (pairs.length === 0) return [];
  const strongest = pairs.toSorted((one, other) => one.enthalpy - other.enthalpy);
  const ownOf = ownPairOf(own);
  const named = strongest.slice(0, 3).map(({ a, b, enthalpy }) => {
    const pair = ownOf(a, b);
    return `${a}–${b} −${-enthalpy}${pair ? ` (${ownPairOrigin(pair)})` : ''}`;
  });
  return [
    {
      about: [...new Set(pairs.flatMap(({ a, b }) => [a, b]))].sort(),
      kind: 'heat of mixing',
      text: `Mixing frees heat (kJ per mole of the equimolar liquid: ${named.join(', ')}${strongest.length > 3 ? ' and more' : ''}): the charge can heat up by itself by hundreds of kelvin as it melts together and spit. Raise the power slowly and add such elements in small pieces.`,
      source: 'pair enthalpies',
      follow,
    },
  ];
}

function powders(symbols: readonly string[]): Caution[] {
  const having = (kinds: readonly Hazard['kind'][]) =>
    symbols.filter((symbol) => hazardsOf(symbol).some(({ kind }) => kinds.includes(kind)));
  const burning = having(['pyrophoric powder', 'flammable powder']);
  const harmful = having(harmfulDust);
  const about = symbols.filter((symbol) => burning.includes(symbol) || harmful.includes(symbol));
  if (about.length === 0) return [];
  const reasons = [
    burning.length > 0 &&
      `as powder, chips or grinding dust ${burning.join(', ')} can burn, fine powder may ignite by itself`,
    harmful.length > 0 && `dust of ${harmful.join(', ')} harms whoever breathes it (see there)`,
    'powder brings its oxide and moisture into the melt',
  ].filter((reason) => reason !== false);
  return [
    {
      about,
      kind: 'powder',
      text: `Charge lumps, shot or sheet rather than powder: ${reasons.join('; ')}.`,
      source: 'practice',
      follow,
    },
  ];
}

/** Those on record; the powder of an element is told by one caution for all. */
function onRecord(symbols: readonly string[], are: (hazard: Hazard) => boolean): Caution[] {
  const told = symbols.flatMap((symbol) => hazardsOf(symbol).map((hazard) => ({ symbol, ...hazard })));
  return told
    .filter((hazard) => hazard.kind !== 'flammable powder' && are(hazard))
    .sort((a, b) => gravest.indexOf(a.kind) - gravest.indexOf(b.kind))
    .map(({ symbol, kind, text, source }) => ({
      about: [symbol],
      kind,
      text: `${symbol}: ${text}`,
      source,
      follow,
    }));
}

/** By its hazard statement. */
const isFatal = ({ text }: Hazard): boolean => /\bH330\b/.test(text);

const kelvin = (temperature: number): string => `${Math.round(temperature)} K`;

function inWords(pressure: number): string {
  const kilopascal = Number((pressure / 1000).toPrecision(1));
  return kilopascal > 100
    ? `some ${Number((pressure / 101_325).toPrecision(1))} atmospheres`
    : `${kilopascal} kPa`;
}
