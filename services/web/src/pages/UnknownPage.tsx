import { Link } from 'wouter';
import { useTitle } from '../frame/useTitle.ts';

/** What an address that leads nowhere shows. */
export function UnknownPage() {
  useTitle('No such page');
  return (
    <div className="column">
      <h1>There is no such page</h1>
      <p className="read">
        The address leads nowhere. <Link href="/searches">All searches</Link> or{' '}
        <Link href="/ask">ask a new one</Link>.
      </p>
    </div>
  );
}
