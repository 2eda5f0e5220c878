import { useState } from 'react';
import type { Draft } from '../draft/draft.ts';

/** A pool kept in this browser under a name: marks of elements and their own bounds. */
export interface SavedPool extends Pick<Draft, 'marks' | 'each'> {
  name: string;
}

const place = 'tiegel.pools.1';

function stored(): SavedPool[] {
  try {
    return JSON.parse(localStorage.getItem(place) ?? '[]') as SavedPool[];
  } catch {
    return [];
  }
}

/** The saved pools by name, and how to change them. `fault` says why the last change was not kept. */
export function useSavedPools() {
  const [pools, setPools] = useState(stored);
  const [fault, setFault] = useState<string | null>(null);
  const put = (next: SavedPool[]) => {
    const sorted = next.toSorted((a, b) => a.name.localeCompare(b.name));
    setPools(sorted);
    try {
      localStorage.setItem(place, JSON.stringify(sorted));
      setFault(null);
    } catch {
      setFault(
        'The browser keeps nothing for this page: the pool is gone after a reload. Download the specification instead.',
      );
    }
  };
  return {
    pools,
    fault,
    save: (pool: SavedPool) => put([...pools.filter(({ name }) => name !== pool.name), pool]),
    forget: (name: string) => put(pools.filter((pool) => pool.name !== name)),
  };
}
