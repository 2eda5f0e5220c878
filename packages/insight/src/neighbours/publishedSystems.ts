import { type PublishedAlloy, publishedAlloys } from '@tiegel/elements/publishedAlloys';

/** What is published of one set of elements, all of them present. */
export interface PublishedSystem {
  /** alphabetical */
  symbols: string[];
  /** Compositions. */
  alloys: number;
  /** Publications, added up over the compositions: one that describes several counts for each. */
  references: number;
  /** Labels as the compositions have them ('FCC', 'BCC+B2'), the most frequent first; null where none was reported. */
  phases: { phases: string | null; alloys: number }[];
}

/** Holds for everything that is said to be published or not. */
export const exploredTrust =
  'The table of published alloys here is a part of what is published, mostly alloys of three and more ' +
  'elements in about equal shares. That it has no alloy of a system does not prove that nobody has melted ' +
  'one: look in the literature before melting.';

let known: ReadonlyMap<string, PublishedSystem> | undefined;

/** Every set of elements that has a published alloy, by its symbols with spaces between ('Co Cr Fe Mn Ni'). */
export function publishedSystems(): ReadonlyMap<string, PublishedSystem> {
  known ??= new Map(
    [...Map.groupBy(publishedAlloys(), ({ system }) => system.replaceAll('-', ' '))].map(
      ([system, alloys]) => [
        system,
        {
          symbols: system.split(' '),
          alloys: alloys.length,
          references: alloys.reduce((sum, { references }) => sum + references, 0),
          phases: phasesOf(alloys),
        },
      ],
    ),
  );
  return known;
}

/**
 * The published sets of elements that a question is about, alphabetical: taken from a pool, with
 * all required elements, of at least `min` and at most `max` elements.
 */
export function publishedWithin(
  pool: readonly string[],
  { require = [], min, max }: { require?: readonly string[]; min: number; max: number },
): PublishedSystem[] {
  return [...publishedSystems().values()]
    .filter(
      ({ symbols }) =>
        symbols.length >= min &&
        symbols.length <= max &&
        symbols.every((symbol) => pool.includes(symbol)) &&
        require.every((symbol) => symbols.includes(symbol)),
    )
    .sort((a, b) => (a.symbols.join(' ') < b.symbols.join(' ') ? -1 : 1));
}

function phasesOf(alloys: readonly PublishedAlloy[]): PublishedSystem['phases'] {
  return [...Map.groupBy(alloys, ({ phases }) => phases)]
    .map(([phases, { length }]) => ({ phases, alloys: length }))
    .sort((a, b) => b.alloys - a.alloys || ((a.phases ?? '~') < (b.phases ?? '~') ? -1 : 1));
}
