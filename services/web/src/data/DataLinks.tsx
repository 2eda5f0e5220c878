import { Link } from 'wouter';
import { dataParts } from './dataParts.ts';

/** The parts of the data as links. */
export function DataLinks({ part }: { part: string }) {
  return (
    <nav className="view-links" aria-label="Parts of the data">
      {dataParts.map(({ id, name }) => (
        <Link
          key={id}
          href={id === '' ? '/data' : `/data/${id}`}
          aria-current={part === id ? 'page' : undefined}
        >
          {name}
        </Link>
      ))}
    </nav>
  );
}
