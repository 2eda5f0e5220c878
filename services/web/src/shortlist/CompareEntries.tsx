import { useQuery } from '@tanstack/react-query';
import type { ShortlistEntry } from '@tiegel/contract';
import { mostCompared } from '@tiegel/contract/terms';
import { CompareLink } from '../compare/CompareLink.tsx';
import { searchQuery } from '../server/queries.ts';

/** The way to what stands on a list side by side: all but what was set aside, in the light and under the conditions of their search where it is one. */
export function CompareEntries({ entries }: { entries: readonly ShortlistEntry[] }) {
  const open = entries.filter(({ status }) => status.value !== 'set aside');
  const others = open.length < entries.length ? ' that are not set aside' : '';
  const searches = new Set(open.map(({ search }) => search));
  const id = searches.size === 1 ? open[0]!.search : null;
  const asked = useQuery({ ...searchQuery(id ?? ''), enabled: id !== null && open.length > 1 });
  if (open.length < 2) return null;
  if (open.length > mostCompared) {
    return (
      <span className="quiet">
        {mostCompared} are as many as can be compared: set {open.length - mostCompared} aside to compare the
        others.
      </span>
    );
  }
  const words = `Compare the ${open.length}${others}`;
  if (asked.isLoading) return <span className="quiet">{words}</span>;
  // A search that cannot be had is none: its alloys can be compared all the same.
  const search = asked.data ?? null;
  const texts = open.map(({ entry }) => entry);
  return (
    <CompareLink alloys={texts} conditions={search?.specification.conditions} search={search?.id ?? null}>
      {words}
    </CompareLink>
  );
}
