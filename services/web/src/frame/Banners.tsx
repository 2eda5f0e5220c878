import { useQuery } from '@tanstack/react-query';
import { healthQuery } from '../server/queries.ts';

/** Warnings that concern every page: the server is open to a network, or does not answer. */
export function Banners() {
  const { data, error, dataUpdatedAt } = useQuery(healthQuery);
  return (
    <div className="banners" role="status">
      {error ? (
        <p className="note note-danger">
          <b>The server does not answer</b>
          {dataUpdatedAt > 0 ? ` since ${new Date(dataUpdatedAt).toTimeString().slice(0, 5)}` : ''}. What is
          shown may be out of date; what you entered is kept in this browser tab. Asking again by itself.
        </p>
      ) : null}
      {data?.openNetwork ? (
        <p className="note note-warning">
          <b>Open to the network.</b> Anyone who reaches this address may see, start and stop every search
          (OPEN_NETWORK=yes).
        </p>
      ) : null}
    </div>
  );
}
