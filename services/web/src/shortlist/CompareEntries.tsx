import type { ShortlistEntry } from '@tiegel/contract';
import { Link } from 'wouter';
import { compareAddress } from '../compare/compareAddress.ts';
import { mostCompared } from '../compare/compareList.ts';

/** The way to what stands on a list side by side: all but what was set aside, in the light of their search where it is one. */
export function CompareEntries({ entries }: { entries: readonly ShortlistEntry[] }) {
  const open = entries.filter(({ status }) => status.value !== 'set aside');
  const others = open.length < entries.length ? ' that are not set aside' : '';
  if (open.length < 2) return null;
  if (open.length > mostCompared) {
    return (
      <span className="quiet">
        {mostCompared} are as many as can be compared: set {open.length - mostCompared} aside to compare the
        others.
      </span>
    );
  }
  const searches = new Set(open.map(({ search }) => search));
  const search = searches.size === 1 ? open[0]!.search : null;
  return (
    <Link
      href={compareAddress(
        open.map(({ entry }) => entry),
        {},
        search,
      )}
    >
      Compare the {open.length}
      {others}
    </Link>
  );
}
