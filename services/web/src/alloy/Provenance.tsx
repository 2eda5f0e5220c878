import type { SearchView } from '@tiegel/contract';
import { formatInstant } from '../numbers/formatInstant.ts';
import { conditionsInWords } from './conditionsInWords.ts';

/** What the numbers of the page depend on; on paper also when and from where it was printed. */
export function Provenance({ search }: { search: SearchView }) {
  const { dataVersion, engineVersion, prices } = search;
  return (
    <footer className="provenance small quiet">
      <p>Computed for: {conditionsInWords()}.</p>
      <p>
        Data version {dataVersion}, engine version {engineVersion}, prices{' '}
        {prices ? `of ${prices.date}${prices.invented ? ' (invented)' : ''}` : 'none'}.
      </p>
      <p className="print-only">
        Printed {formatInstant(new Date())} from {window.location.href}
      </p>
    </footer>
  );
}
