import { formatComposition, type OwnAlloy, sources } from '@tiegel/elements';
import { publishedAlloys, publishedSource } from '@tiegel/elements/publishedAlloys';
import type { Brought } from './imports.ts';

/** An alloy that somebody has made, as far as the data know: published ones, and those that were brought in. */
export interface KnownAlloy {
  /** at.% */
  composition: Record<string, number>;
  name: string;
  /** as in 'FCC+B2'; of published ones what most publications report; null: not reported */
  phases: string | null;
  process: string | null;
  /** where it is from, in words; null: nobody said */
  source: string | null;
  doi: string[];
  /** whether it was brought in */
  own: boolean;
  /** number of the import that brought it */
  import: number | null;
}

/** Which of them: all that are left out let everything through. */
export interface AlloyFilter {
  /** in name, process, source, doi or composition, whatever the case of its letters and their normal form */
  text?: string | undefined;
  has?: readonly string[];
  without?: readonly string[];
  /** one of the phases that were observed, as in 'B2' */
  phase?: string | undefined;
  own?: boolean | undefined;
}

let published: readonly KnownAlloy[] | undefined;

function publishedOnes(): readonly KnownAlloy[] {
  published ??= publishedAlloys().map(({ formula, composition, phases, processing, doi }) => ({
    ...{ composition, phases, name: formula, doi: [...doi], own: false, import: null },
    process: processing.length === 0 ? null : processing.join(', '),
    source: sources[publishedSource].text,
  }));
  return published;
}

/** Those that were brought in, the newest import first, then the published ones by name, as far as they meet the filter. */
export function knownAlloys(own: readonly Brought<OwnAlloy>[], filter: AlloyFilter = {}): KnownAlloy[] {
  const brought = own
    .map(({ note, doi, ...alloy }) => ({
      ...alloy,
      ...{ source: note || null, doi: doi === null ? [] : [doi], own: true },
    }))
    .sort((a, b) => b.import - a.import);
  return [...brought, ...publishedOnes()].filter((alloy) => meets(alloy, filter));
}

function meets(alloy: KnownAlloy, { text = '', has = [], without = [], phase, own }: AlloyFilter): boolean {
  const there = (symbol: string) => symbol in alloy.composition;
  if (own !== undefined && alloy.own !== own) return false;
  if (phase !== undefined && !(alloy.phases ?? '').toLowerCase().split('+').includes(phase.toLowerCase())) {
    return false;
  }
  if (!has.every(there) || without.some(there)) return false;
  const wanted = plain(text.trim());
  if (wanted === '') return true;
  const { name, process, source, doi, composition } = alloy;
  // What a published alloy is called for is its own name: the one source of all of them says nothing of it.
  const said = [name, process, alloy.own ? source : null, ...doi, formatComposition(composition)];
  return said.some((one) => plain(one ?? '').includes(wanted));
}

/** An ü that is one sign and one that is two look alike, and are. */
const plain = (text: string): string => text.normalize('NFC').toLowerCase();
