import { chosenElements } from '../pairs/pairChoice.ts';

/** What is asked of the published alloys, as it stands in the address. */
export interface AlloyFilters {
  text: string;
  has: string;
  without: string;
  phase: string;
  own: string;
}

const keys = ['text', 'has', 'without', 'phase', 'own'] as const;

export function readAlloyFilters(address: URLSearchParams): AlloyFilters {
  return Object.fromEntries(keys.map((key) => [key, address.get(key) ?? ''])) as unknown as AlloyFilters;
}

/** The filters as the API takes them: elements as symbols parted by commas, what says nothing left out. */
export function askedOf(filters: AlloyFilters, known: readonly string[]): URLSearchParams {
  const asked = new URLSearchParams();
  for (const key of keys) {
    const text = filters[key].trim();
    const written = key === 'has' || key === 'without' ? chosenElements(known, text).chosen.join(',') : text;
    if (written !== '') asked.set(key, written);
  }
  return asked;
}

/** Words among the elements that are no element. */
export function strangeWords({ has, without }: AlloyFilters, known: readonly string[]): string[] {
  return [has, without].flatMap((text) => chosenElements(known, text).strange);
}
