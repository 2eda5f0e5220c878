import { Prose } from '../words/Prose.tsx';
import { Dimmed } from './Dimmed.tsx';
import type { AlloyState } from './state/alloyState.ts';

/** The alloy's story in paragraphs, as the server tells it, each with its trust and sources. */
export function WordsSection({ alloy }: { alloy: AlloyState }) {
  const { explanation } = alloy;
  if (!explanation) return null;
  return (
    <section aria-labelledby="words" className="screen-only">
      <h2 id="words">In words</h2>
      <Dimmed alloy={alloy}>
        <div className="words">
          {explanation.paragraphs.map(({ subject, heading, text, trust, sources }) => (
            <div key={subject} className="words-part">
              <h3 id={`words-${subject}`}>{heading}</h3>
              <p className="read">
                <Prose text={text} />
              </p>
              {trust ? (
                <p className="small quiet read-small">
                  <Prose text={trust} />
                </p>
              ) : null}
              {sources.length > 0 ? (
                <details className="small">
                  <summary>Sources</summary>
                  <ul>
                    {sources.map((source) => (
                      <li key={source}>{source}</li>
                    ))}
                  </ul>
                </details>
              ) : null}
            </div>
          ))}
        </div>
      </Dimmed>
    </section>
  );
}
