import { Link, useLocation } from 'wouter';
import { resultViews } from './scatter/plotState.ts';
import { type ViewState, writeView } from './viewState.ts';

/** The ways to look at a result, as links: each keeps filters, axes and order. */
export function ViewLinks({ view }: { view: ViewState }) {
  const [path] = useLocation();
  return (
    <nav className="view-links" aria-label="Views of the result">
      {resultViews.map(({ id, name }) => {
        const written = writeView({ ...view, show: id });
        return (
          <Link
            key={id}
            href={written === '' ? path : `${path}?${written}`}
            aria-current={view.show === id ? 'page' : undefined}
          >
            {name}
          </Link>
        );
      })}
    </nav>
  );
}
