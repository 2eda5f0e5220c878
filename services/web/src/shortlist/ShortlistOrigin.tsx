import { useQuery } from '@tanstack/react-query';
import { useAlloyData } from '../alloy/state/useAlloyData.ts';
import { dataVersionsQuery } from '../data/dataQueries.ts';
import { Printed } from '../frame/Printed.tsx';

/** What the numbers of a shortlist depend on; on paper also when and from where it was printed. */
export function ShortlistOrigin() {
  const { data } = useAlloyData();
  const version = useQuery(dataVersionsQuery).data?.items.find(({ current }) => current);
  if (data === null || version === undefined) return <Printed />;
  const { prices } = data;
  return (
    <footer className="small quiet">
      <p>
        Data version in force now {version.dataVersion}. Prices{' '}
        {prices ? `of ${prices.date}${prices.invented ? ' (invented)' : ''}` : 'none'}.
      </p>
      <Printed />
    </footer>
  );
}
