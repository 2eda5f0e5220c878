import { emptyRow, type MeltDraft, type WeighedRow } from './meltDraft.ts';

/** A place of a form that two people changed, each to something else. */
export interface Clash {
  /** 'hardness', or a row of what was weighed: 'weighed Ni' */
  place: string;
  /** undefined: the row is not there */
  mine: unknown;
  theirs: unknown;
}

/** Whose value stands at a place that both changed. */
export type Whose = 'mine' | 'theirs';

type Parts = ReadonlyMap<string, unknown>;

const rowPrefix = 'weighed ';
type Anneal = Pick<MeltDraft, 'annealed' | 'annealTemperature' | 'annealHours' | 'cooling'>;

/**
 * What somebody changed in the form of one version (`before` to `mine`), put over that of a newer one. Where
 * both changed the same place to different values, `chosen` says whose stands; those that it does not name are
 * `clashes`, and theirs stands meanwhile. Each row of what was weighed is a place of its own, and an anneal is
 * one place: half of two different ones would be a third that nobody meant.
 */
export function changesOnto(
  newest: MeltDraft,
  mine: MeltDraft,
  before: MeltDraft,
  chosen: Readonly<Record<string, Whose>> = {},
): { draft: MeltDraft; clashes: Clash[] } {
  const [theirParts, myParts, oldParts] = [newest, mine, before].map(partsOf) as [Parts, Parts, Parts];
  const places = new Set([...theirParts.keys(), ...myParts.keys()]);
  const clashes: Clash[] = [];
  const merged = new Map<string, unknown>();
  for (const place of places) {
    const [theirValue, myValue, oldValue] = [theirParts, myParts, oldParts].map((parts) => parts.get(place));
    const mineChanged = !same(myValue, oldValue);
    const clash = mineChanged && !same(theirValue, oldValue) && !same(myValue, theirValue);
    if (clash && chosen[place] === undefined) clashes.push({ place, mine: myValue, theirs: theirValue });
    const takeMine = clash ? chosen[place] === 'mine' : mineChanged;
    merged.set(place, takeMine ? myValue : theirValue);
  }
  return { draft: draftOfParts(merged), clashes };
}

/** The row that a place is, null where it is no row. */
export const rowAt = (place: string): string | null =>
  place.startsWith(rowPrefix) ? place.slice(rowPrefix.length) : null;

/** A form in places that are changed one by one. */
function partsOf({ weighed, ...draft }: MeltDraft): Parts {
  const { annealed, annealTemperature, annealHours, cooling, ...others } = draft;
  // Fields of an anneal that is switched off mean nothing.
  const anneal = annealed ? { annealed, annealTemperature, annealHours, cooling } : { annealed };
  const written = weighed.filter(({ material, mass }) => material.trim() !== '' || mass.trim() !== '');
  const seen = new Map<string, number>();
  const rows = written.map((row): [string, WeighedRow] => {
    const material = row.material.trim();
    const count = (seen.get(material) ?? 0) + 1;
    seen.set(material, count);
    return [rowPrefix + (count === 1 ? material : `${material}, row ${count}`), row];
  });
  return new Map<string, unknown>([...Object.entries(others), ['anneal', anneal], ...rows]);
}

function draftOfParts(parts: Parts): MeltDraft {
  const weighed = [...parts].flatMap(([place, row]) =>
    rowAt(place) === null || row === undefined ? [] : [row as WeighedRow],
  );
  const { anneal, ...others } = Object.fromEntries([...parts].filter(([place]) => rowAt(place) === null));
  const off = { annealed: false, annealTemperature: '', annealHours: '', cooling: 'furnace' };
  return {
    ...others,
    ...{ ...off, ...(anneal as Partial<Anneal>) },
    weighed: weighed.length > 0 ? weighed : [emptyRow],
  } as MeltDraft;
}

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);
