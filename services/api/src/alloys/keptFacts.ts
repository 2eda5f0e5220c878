import { type Facts, factsFor, type PairValue, type PriceList } from '@tiegel/elements';

/** So many systems are looked at side by side by the people of a lab. */
const most = 24;

const kept = new Map<string, Facts>();

/** What facts are made of beside the data of the program; the searches tell it. */
interface DataInForce {
  prices: () => PriceList | null;
  pairs: () => readonly PairValue[];
}

/**
 * The facts of these elements, the same object for the same data: formulas are bound to facts once
 * (some 0.3 s), so that whoever changes the amounts of an alloy is answered in some 20 ms. The
 * systems that were asked for last are kept.
 * @throws ProblemError as factsFor does
 */
export function keptFacts(symbols: readonly string[], inForce: DataInForce): Facts {
  const [prices, pairs] = [inForce.prices(), inForce.pairs()];
  const ordered = [...new Set(symbols)].sort();
  const priced = prices && ordered.map((symbol) => prices.prices[symbol]?.pricePerKilogram ?? null);
  const read = pairs.filter(({ a, b }) => ordered.includes(a) && ordered.includes(b));
  const values = read.map(({ a, b, mixingEnthalpy }) => [a, b, mixingEnthalpy]);
  const key = JSON.stringify([ordered, priced, values]);
  const facts = kept.get(key) ?? factsFor(ordered, { prices, pairs: read });
  // The order of a Map is that of its insertions: what is asked for again moves to the end.
  kept.delete(key);
  kept.set(key, facts);
  if (kept.size > most) kept.delete(kept.keys().next().value!);
  return facts;
}
