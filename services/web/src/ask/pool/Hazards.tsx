import { type Hazard, hazardSources } from '@tiegel/elements';

/** What handling an element asks for, with the source at hand. */
export function Hazards({ hazards }: { hazards: readonly Hazard[] }) {
  if (hazards.length === 0) return <span className="quiet">nothing noted</span>;
  return (
    <details className="hazards">
      <summary>
        <span aria-hidden="true" className="hazard-sign">
          ⚠{' '}
        </span>
        {[...new Set(hazards.map(({ kind }) => kind))].join(', ')}
      </summary>
      <ul>
        {hazards.map(({ kind, text, source }) => (
          <li key={kind + text}>
            {text} <span className="quiet">({hazardSources[source]})</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
