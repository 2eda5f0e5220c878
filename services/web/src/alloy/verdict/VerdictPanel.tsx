import type { Explanation } from '@tiegel/contract';
import { isSame, likelyInWords } from '@tiegel/contract/terms';
import { Failed } from '../../frame/Failed.tsx';
import { Waiting } from '../../frame/Waiting.tsx';
import { Dimmed } from '../Dimmed.tsx';
import type { AlloyState } from '../state/alloyState.ts';
import { type Argument, argumentsOf } from './argumentsOf.ts';
import { KeyNumbers } from './KeyNumbers.tsx';
import { knownInWords, latticeWords } from './knownInWords.ts';
import { publishedInWords } from './publishedInWords.ts';
import { surenessInWords } from './surenessInWords.ts';
import './verdict.css';
import { Prose } from '../../words/Prose.tsx';

const groups: readonly { sign: Argument['sign']; mark: string; head: string }[] = [
  { sign: 'for', mark: '+', head: 'Speaks for one uniform phase' },
  { sign: 'against', mark: '−', head: 'Speaks against it' },
  { sign: 'open', mark: '?', head: 'Open' },
  { sign: 'mind', mark: '!', head: 'To mind in making and use' },
];

/** What is likely of the alloy, how sure that is, and what speaks against it, for a reader who knows no thermodynamics. */
export function VerdictPanel({ alloy }: { alloy: AlloyState }) {
  const { explanation, evidence, error, retry } = alloy;
  const known = explanation?.nearest.some((one) => isSame(one) && one.reports.length > 0);
  return (
    <section aria-labelledby="verdict-head" className="verdict">
      <h2 id="verdict-head">In short</h2>
      {explanation === null && error ? (
        <Failed error={error} what="What is likely of the alloy" onRetry={retry} />
      ) : null}
      {explanation === null && !error ? <Waiting what="Asking what is likely" /> : null}
      {explanation ? (
        <Dimmed alloy={alloy}>
          <Headline explanation={explanation} />
          {alloy.symbols.length > 1 ? (
            <p className="read-small">
              <Prose text={surenessInWords(explanation.phase, evidence)} />
            </p>
          ) : null}
          {known ? null : (
            <p className="read-small">
              <Prose text={publishedInWords(explanation.nearest)} />
            </p>
          )}
          <Arguments found={argumentsOf(alloy)} />
          {(['fcc', 'bcc'] as const)
            .filter((lattice) => explanation.phase.likely?.includes(lattice))
            .map((lattice) => (
              <p key={lattice} className="small quiet">
                {latticeWords[lattice]}
              </p>
            ))}
        </Dimmed>
      ) : null}
      <KeyNumbers alloy={alloy} />
    </section>
  );
}

/** What is known where publications agree on this very alloy, or, where there are none, one's own record of it; else what is likely. */
function Headline({ explanation: { nearest, phase, composition } }: { explanation: Explanation }) {
  if (Object.keys(composition).length === 1) {
    return <p className="verdict-line">A pure element: one phase, and no alloy.</p>;
  }
  const same = nearest.filter((one) => isSame(one) && one.reports.length > 0);
  // What publications agree on goes before what was seen once.
  const first = same.find(({ own }) => !own) ?? same[0];
  const known = first ? knownInWords(first) : null;
  return (
    <>
      <p className="verdict-line">
        <Prose text={known ?? likelyInWords(phase)} />
      </p>
      {known ? (
        <p className="read-small">From its formula alone: {lowerFirst(likelyInWords(phase))}</p>
      ) : null}
    </>
  );
}

const lowerFirst = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);

function Arguments({ found }: { found: readonly Argument[] }) {
  return (
    <dl className="arguments">
      {groups.map(({ sign, mark, head }) => {
        const members = found.filter((one) => one.sign === sign);
        if (members.length === 0) return null;
        return (
          <div key={sign} className={`arguments-${sign}`}>
            <dt>
              <span aria-hidden="true" className="arguments-mark">
                {mark}
              </span>{' '}
              {head}
            </dt>
            {members.map(({ words, at }) => (
              <dd key={words}>
                <Prose text={words} />{' '}
                <a href={`#${at}`} className="screen-only small" aria-label={`More on: ${words}`}>
                  more
                </a>
              </dd>
            ))}
          </div>
        );
      })}
    </dl>
  );
}
