import { type Tally, tallies } from '@tiegel/contract';
import type { Draft } from '../draft/draft.ts';
import type { ChangeDraft } from '../draft/useDraft.ts';
import { FaultText } from '../faults/FaultText.tsx';
import { fieldId } from '../faults/faultsContext.ts';

const words: Record<Tally, { name: string; costs: string }> = {
  each: {
    name: 'What every limit leaves',
    costs:
      'Counts the compositions that meet each limit, those that meet all, and those without a value. Every composition is looked at: this takes longest.',
  },
  all: {
    name: 'What all limits leave together',
    costs:
      'Counts only those that meet all limits. Parts of the space in which a limit cannot be met are passed over: often much quicker.',
  },
  none: {
    name: 'Nothing',
    costs:
      'Finds the best alone. Whatever cannot be among them is passed over, too: the quickest, most of all in large spaces. How many pass is then not known.',
  },
};

/** What is counted beside the best, and what that costs. Systems and grid points are exact in any case. */
export function TallyFields({ draft, change }: { draft: Draft; change: ChangeDraft }) {
  return (
    <fieldset className="tally" id={fieldId('/tally')} tabIndex={-1}>
      <legend className="unseen">What is counted</legend>
      <FaultText pointer="/tally" />
      {tallies.map((tally) => (
        <div key={tally}>
          <label className="choice">
            <input
              type="radio"
              name="tally"
              checked={draft.tally === tally}
              aria-describedby={`tally-${tally}`}
              onChange={() => change({ tally })}
            />
            {words[tally].name}
          </label>
          <p id={`tally-${tally}`} className="small quiet read-small">
            {words[tally].costs}
          </p>
        </div>
      ))}
      <p className="small quiet">The best are the same in every case, and so are systems and grid points.</p>
    </fieldset>
  );
}
