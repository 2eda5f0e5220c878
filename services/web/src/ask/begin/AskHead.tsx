import { Failed } from '../../frame/Failed.tsx';
import { type Draft, emptyDraft, marked } from '../draft/draft.ts';
import type { ChangeDraft } from '../draft/useDraft.ts';
import { NameField } from '../fields/NameField.tsx';
import { BeginSection } from './BeginSection.tsx';
import { DemonstrationButton } from './DemonstrationButton.tsx';

interface AskHeadProps {
  draft: Draft;
  change: ChangeDraft;
  replace: (draft: Draft) => void;
  fillings: number;
  /** null where nothing was replaced */
  bringBack: (() => void) | null;
  /** why the search or alloy that the address begins with is not here */
  startError: unknown;
}

/** Title and name of the form, and the ways to fill or empty it. */
export function AskHead({ draft, change, replace, fillings, bringBack, startError }: AskHeadProps) {
  const blank = marked(draft, 'pool', 'require').length === 0;
  return (
    <div className="ask-head">
      <div className="row">
        <h1>Describe a search</h1>
        <DemonstrationButton onLoad={replace} />
        {blank ? null : (
          <button type="button" className="button-plain" onClick={() => replace(emptyDraft)}>
            Empty the form
          </button>
        )}
      </div>
      {startError ? <Failed error={startError} what="What this address begins with" /> : null}
      {bringBack ? (
        <p className="note row" role="status">
          The form was filled anew.
          <button type="button" onClick={bringBack}>
            Bring back what stood there
          </button>
        </p>
      ) : null}
      <BeginSection draft={draft} blank={blank} fillings={fillings} replace={replace} />
      <NameField name={draft.name} change={change} />
    </div>
  );
}
