import { elementNumber, type PriceList } from '@tiegel/elements';

/** What is weighed: an element as it is sold, or a master alloy. */
export interface Material {
  /** As the lab calls it; begins with a symbol: 'Mn flakes', 'FeNb66'. */
  name: string;
  /** wt.% of the metal in it, by symbol, 100 in all: its impurities are not part of this. */
  contains: Readonly<Record<string, number>>;
  /** wt.% that is this metal; the rest is of unknown composition and counts as inert. */
  purity: number;
  /** currency per kg of the material as it is weighed; null: unknown */
  price: number | null;
  /** K; null: the mean of its elements stands for it */
  meltingTemperature: number | null;
}

/** Materials and the one currency of their prices; null where none has a price. */
export interface Materials {
  materials: Material[];
  currency: string | null;
}

/**
 * Each element pure, at the price of the list: what a charge is made of where nothing else is said.
 * @param purity wt.% by symbol, 100 where not named; named as in 'Mn 99.7 %'
 */
export function pureMaterials(
  symbols: readonly string[],
  prices: PriceList | null,
  purity: Readonly<Record<string, number>> = {},
): Materials {
  const materials = [...symbols].sort().map((symbol): Material => {
    const pure = purity[symbol] ?? 100;
    return {
      name: pure === 100 ? symbol : `${symbol} ${pure} %`,
      contains: { [symbol]: 100 },
      purity: pure,
      price: prices?.prices[symbol]?.pricePerKilogram ?? null,
      meltingTemperature: null,
    };
  });
  return { materials, currency: prices?.currency ?? null };
}

/** The only element of a material, null for a master alloy. */
export function elementOnlyIn({ contains }: Material): string | null {
  const [first, ...others] = Object.keys(contains);
  return first !== undefined && others.length === 0 ? first : null;
}

/** Mass fraction of an element in the material as it is weighed. */
export function fractionOf({ contains, purity }: Material, symbol: string): number {
  return ((contains[symbol] ?? 0) / 100) * (purity / 100);
}

/**
 * The melting temperature (K) by which a material is put in order: its own where it was given, else
 * that of its element, for a master alloy the mean of its elements by mass. Carbon has none and stands
 * at its sublimation temperature.
 */
export function meltingOf(material: Material): { temperature: number; estimated: boolean } {
  if (material.meltingTemperature !== null) {
    return { temperature: material.meltingTemperature, estimated: false };
  }
  const shares = Object.entries(material.contains);
  const temperature = shares.reduce((sum, [symbol, share]) => sum + (share / 100) * solidUpTo(symbol), 0);
  return { temperature, estimated: shares.length > 1 };
}

function solidUpTo(symbol: string): number {
  return (
    elementNumber(symbol, 'meltingTemperature') ??
    elementNumber(symbol, 'boilingTemperature') ??
    Number.POSITIVE_INFINITY
  );
}
