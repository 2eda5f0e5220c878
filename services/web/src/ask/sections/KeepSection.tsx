import type { Draft } from '../draft/draft.ts';
import type { ChangeDraft } from '../draft/useDraft.ts';
import { NumberField } from '../fields/NumberField.tsx';

/** How many of the compositions that pass are kept to be looked at. */
export function KeepSection({ draft, change }: { draft: Draft; change: ChangeDraft }) {
  return (
    <section aria-labelledby="keep-head" className="ask-section">
      <h2 id="keep-head">What is kept</h2>
      <p className="quiet read-small">
        Every grid point is tested and counted; these are stored to be looked at.
      </p>
      <div className="ask-line">
        <NumberField
          pointer="/keep"
          label="The best of all"
          value={draft.keep}
          placeholder="1000"
          onChange={(keep) => change({ keep })}
        />
        <NumberField
          pointer="/keepPerSystem"
          label="and the best of each system"
          value={draft.keepPerSystem}
          placeholder="0"
          onChange={(keepPerSystem) => change({ keepPerSystem })}
        />
      </div>
      <p className="quiet">A system is a set of elements, such as Al–Cr–Fe–Ni–Ti.</p>
    </section>
  );
}
