import { hazardsOf, type OwnPair, ownPairOf, ownPairOrigin, pairEnthalpyWith } from '@tiegel/elements';
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

/**
 * Cautions of the process first, then those on record for the elements, the same kind together.
 * @param pairs mixing enthalpies of one's own, in the place of those of the project
 */
export function cautionsFor(sheet: Charged, pairs: readonly OwnPair[] = []): Caution[] {
  const symbols = Object.keys(sheet.composition);
  return [
    ...boilingFirst(sheet),
    ...evaporation(sheet),
    ...heatOfMixing(sheet, pairs),
    ...powders(symbols),
    ...onRecord(symbols),
  ];
}

function boilingFirst({ window: { gap, lowestBoiling, highestMelting } }: Charged): Caution[] {
  if (gap === null || highestMelting === null || gap >= 0) return [];
  return [
    {
      about: [lowestBoiling.element, highestMelting.element],
      kind: 'boils before all is molten',
      text: `${lowestBoiling.element} boils at ${kelvin(lowestBoiling.temperature)}, before ${highestMelting.element} melts at ${kelvin(highestMelting.temperature)}: charged together it is lost, and may be thrown out. A master alloy that melts lower, a closed vessel or powder metallurgy are ways around it.`,
      source: 'boiling',
      follow,
    },
  ];
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
      text: `Vapour pressures where ${element} melts (${kelvin(temperature)}), of the pure elements, estimated from their boiling points within some factor of three: ${pressures}. ${madeUpFor(about, loss)} Charge them last or under the others, melt under argon rather than vacuum, and weigh the ingot.`,
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
  const concerned = symbols.filter((symbol) =>
    hazardsOf(symbol).some(({ kind }) => kind === 'pyrophoric powder' || kind === 'flammable powder'),
  );
  if (concerned.length === 0) return [];
  return [
    {
      about: concerned,
      kind: 'powder',
      text: `Charge lumps, shot or sheet rather than powder: as powder, chips or grinding dust ${concerned.join(', ')} can burn, fine powder may ignite by itself, and it brings its oxide and moisture into the melt.`,
      source: 'practice',
      follow,
    },
  ];
}

/** Those on record; the powder of an element is told by one caution for all. */
function onRecord(symbols: readonly string[]): Caution[] {
  const told = symbols.flatMap((symbol) => hazardsOf(symbol).map((hazard) => ({ symbol, ...hazard })));
  return told
    .filter(({ kind }) => kind !== 'flammable powder')
    .map(({ symbol, kind, text, source }) => ({
      about: [symbol],
      kind,
      text: `${symbol}: ${text}`,
      source,
      follow,
    }))
    .sort((a, b) => (a.kind === b.kind ? 0 : a.kind < b.kind ? -1 : 1));
}

const kelvin = (temperature: number): string => `${Math.round(temperature)} K`;

function inWords(pressure: number): string {
  const kilopascal = Number((pressure / 1000).toPrecision(1));
  return kilopascal >= 100 ? 'an atmosphere or more' : `${kilopascal} kPa`;
}
