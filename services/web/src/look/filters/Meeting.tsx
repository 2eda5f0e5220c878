import { useQuery } from '@tanstack/react-query';
import { formatCount } from '../../numbers/formatNumber.ts';
import { valuesQuery } from '../lookQueries.ts';
import { countFilters, type Filters } from './filters.ts';

/** How many of the kept candidates the filters leave. */
export function Meeting({ id, filters, kept }: { id: string; filters: Filters; kept: number }) {
  const { data, error, isPlaceholderData } = useQuery(valuesQuery(id, filters, [], 1));
  return (
    <p role="status" className="small">
      {error ? 'How many meet the filters could not be counted. ' : null}
      {data && !isPlaceholderData
        ? `${formatCount(data.meeting)} of the ${formatCount(kept)} kept meet ${countFilters(filters) === 1 ? 'the filter' : 'all filters'}.`
        : null}
    </p>
  );
}
