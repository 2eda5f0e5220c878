import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useKept } from '../../frame/useKept.ts';
import { demonstrationQuery } from '../../server/queries.ts';
import { type Draft, marked } from '../draft/draft.ts';
import { type AcceptedSpecification, draftOf } from '../draft/draftOf.ts';
import './pool.css';
import { type SavedPool, useSavedPools } from './useSavedPools.ts';

interface PoolChoiceProps {
  draft: Draft;
  /** puts another pool in place of the one there; that can be brought back */
  onTake: (pool: Pick<Draft, 'marks' | 'each'>) => void;
}

const asDemonstration = 'demonstration';

/** Takes a saved pool, or that of the demonstration; saves the one there under a name. */
export function PoolChoice({ draft, onTake }: PoolChoiceProps) {
  const { pools, fault, save, forget } = useSavedPools();
  const [chosen, setChosen] = useState(asDemonstration);
  const [name, setName] = useKept('ask.pool-name', '');
  const [said, setSaid] = useState('');
  const [forgotten, setForgotten] = useState<SavedPool | null>(null);
  const { data: demonstration, refetch } = useQuery({ ...demonstrationQuery, enabled: false });
  const saved = pools.find((pool) => `saved ${pool.name}` === chosen);
  const replaces = pools.some((pool) => pool.name === name.trim());

  const take = async () => {
    setSaid('');
    if (saved) return onTake(saved);
    const found = demonstration ?? (await refetch()).data;
    if (!found)
      return setSaid('The server does not answer: the pool of the demonstration is not here. Try again.');
    onTake(draftOf(found.specification as AcceptedSpecification));
  };
  const onSave = () => {
    if (name.trim() === '') return setSaid('Write a name for the pool first.');
    if (marked(draft, 'pool', 'require', 'forbid').length === 0)
      return setSaid('Mark elements first: the pool is empty.');
    save({ name: name.trim(), marks: draft.marks, each: draft.each });
    setSaid(`Saved in this browser as “${name.trim()}”.`);
    setName('');
  };
  const onForget = () => {
    if (!saved) return;
    forget(saved.name);
    setForgotten(saved);
    setChosen(asDemonstration);
    setSaid(`“${saved.name}” is forgotten.`);
  };

  return (
    <div className="pool-choice">
      <span className="row">
        <label className="row">
          A pool
          <select value={chosen} onChange={(event) => setChosen(event.target.value)}>
            <option value={asDemonstration}>as the demonstration</option>
            {pools.map((pool) => (
              <option key={pool.name} value={`saved ${pool.name}`}>
                {pool.name}
              </option>
            ))}
          </select>
        </label>
        <button type="button" onClick={take}>
          Take it
        </button>
        {saved ? (
          <button type="button" className="button-plain" onClick={onForget}>
            Forget it
          </button>
        ) : null}
      </span>
      <span className="row">
        <label className="row">
          This pool as
          <input
            type="text"
            autoComplete="off"
            maxLength={60}
            size={18}
            value={name}
            placeholder="name"
            onChange={(event) => setName(event.target.value)}
          />
        </label>
        <button type="button" onClick={onSave}>
          {replaces ? 'Replace the saved one' : 'Save'}
        </button>
      </span>
      <span role="status" className="row small">
        {fault ?? said}
        {forgotten ? (
          <button
            type="button"
            onClick={() => {
              save(forgotten);
              setForgotten(null);
              setSaid(`“${forgotten.name}” is there again.`);
            }}
          >
            Bring it back
          </button>
        ) : null}
      </span>
    </div>
  );
}
