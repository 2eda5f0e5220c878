import type { ChangeDraft } from '../draft/useDraft.ts';
import { FaultText } from '../faults/FaultText.tsx';
import { useFaultsAt } from '../faults/faultsContext.ts';

/** What the search is called in lists and exports. */
export function NameField({ name, change }: { name: string; change: ChangeDraft }) {
  const { id, described } = useFaultsAt('/name');
  return (
    <div className="ask-line ask-name">
      <label htmlFor={id}>Name of the search</label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        value={name}
        placeholder="optional"
        onChange={(event) => change({ name: event.target.value })}
        {...described}
      />
      <FaultText pointer="/name" />
    </div>
  );
}
