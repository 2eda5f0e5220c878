import { elementOf, generalCaution, hazardSources } from '@tiegel/elements';
import type { ElementView } from '../server/types.ts';

interface CandidateHazardsProps {
  composition: Record<string, number>;
  elements: readonly ElementView[];
}

/** What handling the elements of a composition asks for. */
export function CandidateHazards({ composition, elements }: CandidateHazardsProps) {
  const concerned = elements.filter(({ symbol, hazards }) => symbol in composition && hazards.length > 0);
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
                : {text} <span className="quiet small">({hazardSources[source]})</span>
              </dd>
            ))}
          </div>
        ))}
      </dl>
      <p className="note note-warning">{generalCaution}</p>
    </section>
  );
}
