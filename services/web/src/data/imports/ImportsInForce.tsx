import { useQuery } from '@tanstack/react-query';
import type { ImportKind } from '@tiegel/contract';
import { Link } from 'wouter';
import { importsQuery } from '../dataQueries.ts';
import { importName } from './ImportLine.tsx';

/** Which imports of a kind hold now, and the way to bring in another. */
export function ImportsInForce({ kind }: { kind: ImportKind }) {
  const { data } = useQuery(importsQuery);
  const ofKind = data?.filter((one) => one.kind === kind) ?? [];
  const inForce = ofKind.filter((one) => one.inForce);
  return (
    <p className="row">
      {inForce.length > 0 ? (
        <span>
          In force:{' '}
          {inForce.map((one, at) => (
            <span key={one.number}>
              {at > 0 ? ', ' : ''}
              <Link href={`/data/imports/${one.number}`}>{importName(one)}</Link>
            </span>
          ))}
          .
        </span>
      ) : null}
      <Link href={`/data/imports/new?kind=${kind}`} className="button">
        Bring in your own
      </Link>
      {ofKind.length > 0 ? <Link href={`/data/imports?kind=${kind}`}>All that were brought in</Link> : null}
    </p>
  );
}
