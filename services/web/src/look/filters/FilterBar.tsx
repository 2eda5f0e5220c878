import { Link } from 'wouter';
import { useNarrow } from '../../frame/useNarrow.ts';
import { lookupIn } from '../../server/lookup.ts';
import type { ShownQuantity } from '../../server/types.ts';
import { limitAsSentence } from '../../words/limitAsSentence.ts';
import { AddFilter } from './AddFilter.tsx';
import { type Filters, isFiltered, noFilters, writeFilters } from './filters.ts';

interface FilterBarProps {
  searchId: string;
  filters: Filters;
  pool: readonly string[];
  quantities: readonly ShownQuantity[];
  currency: string | undefined;
  /** 'among the 1000 kept of 108,283 that passed' */
  among: string;
  onChange: (filters: Filters) => void;
}

/** The filters as sentences, each with its way out and its way into a new search, and a line to add one. */
export function FilterBar({
  searchId,
  filters,
  pool,
  quantities,
  currency,
  among,
  onChange,
}: FilterBarProps) {
  const sentences = sentencesOf(filters, quantities, currency);
  const narrow = useNarrow();
  const form = (
    <AddFilter
      filters={filters}
      pool={pool}
      quantities={quantities}
      currency={currency}
      among={among}
      onChange={onChange}
    />
  );
  return (
    <div className="filters">
      {isFiltered(filters) ? (
        <>
          <ul className="filter-list" aria-label="Filters">
            {sentences.map(({ words, only, rest }) => (
              <li key={words} className="filter">
                <span>{words}</span>
                <button
                  type="button"
                  className="button-plain"
                  aria-label={`Drop the filter ${words}`}
                  onClick={() => onChange(rest)}
                >
                  ×
                </button>
                {only ? (
                  <Link href={askWith(searchId, only)} className="filter-ask">
                    Search with this as a limit
                  </Link>
                ) : null}
              </li>
            ))}
          </ul>
          {sentences.length > 1 ? (
            <p className="row">
              <Link href={askWith(searchId, filters)}>Search with all of them as limits</Link>
              <button type="button" className="button-plain" onClick={() => onChange(noFilters)}>
                Drop all
              </button>
            </p>
          ) : null}
        </>
      ) : null}
      {narrow ? (
        <details className="filter-more">
          <summary>Filter the candidates</summary>
          {form}
        </details>
      ) : (
        form
      )}
    </div>
  );
}

/** The form of a new search, filled with this one and the filters as limits. */
function askWith(searchId: string, { front: _, ...filters }: Filters): string {
  return `/ask?${writeFilters(new URLSearchParams({ from: searchId }), filters).toString()}`;
}

interface Sentence {
  words: string;
  /** this filter alone, where a search can have it as a limit; and all others */
  only: Filters | null;
  rest: Filters;
}

function sentencesOf(
  filters: Filters,
  quantities: readonly ShownQuantity[],
  currency: string | undefined,
): Sentence[] {
  const lookup = lookupIn(quantities, currency);
  const ranges = filters.ranges.map((range) => ({
    words: limitAsSentence(range, lookup),
    only: { ...noFilters, ranges: [range] },
    rest: { ...filters, ranges: filters.ranges.filter((one) => one !== range) },
  }));
  const symbols = (['has', 'without'] as const).flatMap((key) =>
    filters[key].map((symbol) => ({
      words: `${key === 'has' ? 'With' : 'Without'} ${symbol}`,
      only: { ...noFilters, [key]: [symbol] },
      rest: { ...filters, [key]: filters[key].filter((one) => one !== symbol) },
    })),
  );
  const { front, ...others } = filters;
  const onFront = front ? [{ words: 'On the Pareto front of the search', only: null, rest: others }] : [];
  return [...ranges, ...symbols, ...onFront];
}
