import { outsideSpace } from '@tiegel/contract/terms';
import { asSentence } from '../../words/asSentence.ts';
import type { AlloyState } from '../state/alloyState.ts';

/** Whether the search looks at such an alloy at all, and what speaks against it: no limit tells that an element is forbidden. */
export function SpaceOfSearch({ alloy: { composition, space } }: { alloy: AlloyState }) {
  if (space === null) return null;
  const broken = outsideSpace(composition, space);
  return (
    <section aria-labelledby="space-head">
      <h2 id="space-head">Space of the search</h2>
      {broken.length === 0 ? (
        <p>
          <span className="met">✓</span> Elements, their number and their shares are as asked.
        </p>
      ) : (
        <ul aria-label="What the search does not allow">
          {broken.map((reason) => (
            <li key={reason}>
              <b className="unmet">
                ×<span className="unseen"> not allowed:</span>
              </b>{' '}
              {asSentence(reason)}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
