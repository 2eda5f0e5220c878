import { elementOf, generalCaution, hazardSources } from '@tiegel/elements';
import type { ElementView } from '../server/types.ts';

interface HazardsProps {
  composition: Record<string, number>;
  elements: readonly ElementView[];
}

/** What handling the elements of a composition asks for. */
export function Hazards({ composition, elements }: HazardsProps) {
  const concerned = elements
    .filter(({ symbol, hazards }) => symbol in composition && hazards.length > 0)
    .sort((a, b) => (a.symbol < b.symbol ? -1 : 1));
  const used = [...new Set(concerned.flatMap(({ hazards }) => hazards.map(({ source }) => source)))];
  return (
    <section aria-labelledby="hazards-head">
      <h2 id="hazards-head">In handling</h2>
      <dl className="hazard-list">
        {concerned.map(({ symbol, hazards }) => (
          <div key={symbol}>
            <dt>
              {symbol} <span className="quiet plain">{elementOf(symbol)?.name.toLowerCase()}</span>
            </dt>
            {hazards.map(({ kind, text, source }) => (
              <dd key={kind + text}>
                <b>
                  <span aria-hidden="true">⚠ </span>
                  {kind}
                </b>
                : {text} <span className="quiet small">({source})</span>
              </dd>
            ))}
          </div>
        ))}
      </dl>
      <p className="small quiet read-small">
        {used.map((source) => `${source}: ${hazardSources[source]}.`).join(' ')}
      </p>
      <p className="note note-warning">{generalCaution}</p>
    </section>
  );
}
