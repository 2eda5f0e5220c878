import type { SearchView } from '@tiegel/contract';
import { effectivePool } from '@tiegel/contract/terms';
import { exploredTrust, publishedSystems, publishedWithin } from '@tiegel/insight';
import type { KeptSystem } from './systemsOf.ts';

/** What is published of a system; null: nothing in the table of published alloys. */
type PublishedOfSystem = {
  alloys: number;
  /** publications, added up over the compositions */
  references: number;
  phases: { phases: string | null; alloys: number }[];
} | null;

/** A system with kept candidates, and what is known of it. */
export interface SystemKnown extends KeptSystem {
  published: PublishedOfSystem;
  /** melts recorded here of exactly these elements */
  melts: number;
  /** alloys that were brought in of exactly these elements */
  own: number;
}

/** How much of the systems of a search is explored. */
export interface Explored {
  /** of the search */
  systems: number;
  /** of the pool, in its numbers of elements, with published alloys */
  published: number;
  /** with kept candidates that meet the filters */
  kept: number;
  keptPublished: number;
  /** with published alloys, alloys that were brought in, or melts recorded here */
  keptExplored: number;
  publishedNotKept: { system: string; published: PublishedOfSystem }[];
  trust: string;
}

export type Alloys = readonly { composition: Readonly<Record<string, number>> }[];

/**
 * What is known of each system that has kept candidates, in their order, and how much of them all is explored.
 * @param melts recorded here  @param own alloys that were brought in
 */
export function systemsExplored(
  { specification, counts }: SearchView,
  systems: readonly KeptSystem[],
  { melts, own }: { melts: Alloys; own: Alloys },
): { systems: SystemKnown[]; explored: Explored } {
  const [melted, brought] = [countsOfSystems(melts), countsOfSystems(own)];
  const known = systems.map((one) => ({
    ...one,
    published: publishedOf(one.system),
    melts: melted.get(one.system) ?? 0,
    own: brought.get(one.system) ?? 0,
  }));
  const { elements, components } = specification;
  const within = publishedWithin(effectivePool(elements), { require: elements.require, ...components });
  const names = within.map(({ symbols }) => symbols.join(' '));
  const kept = new Set(systems.map(({ system }) => system));
  return {
    systems: known,
    explored: {
      systems: counts.systems,
      published: names.length,
      kept: kept.size,
      keptPublished: names.filter((name) => kept.has(name)).length,
      keptExplored: known.filter(isExplored).length,
      publishedNotKept: names
        .filter((name) => !kept.has(name))
        .map((system) => ({ system, published: publishedOf(system) })),
      trust: exploredTrust,
    },
  };
}

/** Whether anybody is known to have made an alloy of exactly these elements. */
export function isExplored({ published, melts, own }: Omit<SystemKnown, keyof KeptSystem>): boolean {
  return published !== null || melts > 0 || own > 0;
}

/** How many alloys there are of each system, by its symbols with spaces between. */
function countsOfSystems(all: Alloys): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { composition } of all) {
    const system = Object.keys(composition).sort().join(' ');
    counts.set(system, (counts.get(system) ?? 0) + 1);
  }
  return counts;
}

function publishedOf(system: string): PublishedOfSystem {
  const found = publishedSystems().get(system);
  if (found === undefined) return null;
  const { alloys, references, phases } = found;
  return { alloys, references, phases };
}
