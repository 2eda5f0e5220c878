import type { SearchView } from '@tiegel/contract';

/** Something that two searches have differently; null where one has it not. */
export interface Difference {
  what: string;
  before: string | null;
  after: string | null;
}

/** What another search asked, or was computed from, differently: specification, data, engine, prices. */
export function differences(before: SearchView, after: SearchView): Difference[] {
  const [first, second] = [flat(before.specification), flat(after.specification)];
  const places = [...new Set([...first.keys(), ...second.keys()])].filter((place) => place !== 'name');
  const rest = [
    ['Data version', before.dataVersion, after.dataVersion],
    ['Engine version', before.engineVersion, after.engineVersion],
    ['Prices', pricesInWords(before), pricesInWords(after)],
  ] as const;
  return [
    ...places.map((what) => ({ what, before: first.get(what) ?? null, after: second.get(what) ?? null })),
    ...rest.map(([what, one, other]) => ({ what, before: one, after: other })),
  ].filter((one) => one.before !== one.after);
}

/**
 * A specification as places and what stands there. Limits and wishes are named by their quantity,
 * so that one more does not seem to change all behind it.
 */
function flat(value: unknown, place = ''): Map<string, string> {
  if (Array.isArray(value) && value.every((one) => typeof one !== 'object')) {
    return new Map([[place, value.toSorted().join(' ')]]);
  }
  if (Array.isArray(value)) {
    return new Map(
      value.flatMap((one: { quantity: string }) => {
        const { quantity, ...rest } = one;
        return [[`${place} ${quantity}`, JSON.stringify(rest)] as const];
      }),
    );
  }
  if (typeof value !== 'object' || value === null) return new Map([[place, String(value)]]);
  return new Map(
    Object.entries(value).flatMap(([key, inner]) => [...flat(inner, place === '' ? key : `${place} ${key}`)]),
  );
}

function pricesInWords({ prices }: SearchView): string {
  return prices === null
    ? 'none'
    : `${prices.date}, ${prices.currency}${prices.invented ? ', invented' : ''}`;
}
