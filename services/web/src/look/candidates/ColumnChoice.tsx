import type { SearchSpecification } from '@tiegel/contract';
import { quantityGroups } from '@tiegel/screening';
import type { ShownQuantity } from '../../server/types.ts';
import { Notation } from '../../words/Notation.tsx';
import { askedFirst } from '../columns.ts';

interface ColumnChoiceProps {
  specification: SearchSpecification;
  quantities: readonly ShownQuantity[];
  shown: readonly ShownQuantity[];
  /** null: the usual ones */
  onChange: (columns: string[] | null) => void;
}

/** Which quantities the table shows, by group, one by one or a group at once; the choice is kept for later results. */
export function ColumnChoice({ specification, quantities, shown, onChange }: ColumnChoiceProps) {
  const ids = shown.map(({ id }) => id);
  return (
    <details className="column-choice">
      <summary>
        Columns ({shown.length} of {quantities.length})
      </summary>
      <p className="row">
        <button type="button" onClick={() => onChange(null)}>
          The usual ones
        </button>
        <button type="button" onClick={() => onChange(quantities.map(({ id }) => id))}>
          All
        </button>
        <span className="small quiet">Columns stand in the order in which they are chosen.</span>
      </p>
      <div className="column-groups">
        {groupsOf(specification, quantities).map(({ name, members }) => (
          <Group key={name} name={name} members={members} ids={ids} onChange={onChange} />
        ))}
      </div>
    </details>
  );
}

interface GroupProps {
  name: string;
  members: readonly ShownQuantity[];
  ids: readonly string[];
  onChange: (columns: string[]) => void;
}

function Group({ name, members, ids, onChange }: GroupProps) {
  const chosen = members.filter(({ id }) => ids.includes(id));
  const others = ids.filter((id) => members.every((member) => member.id !== id));
  const all = chosen.length === members.length;
  return (
    <fieldset className="column-group">
      <legend>
        <label className="choice">
          <input
            type="checkbox"
            checked={all}
            ref={(box) => {
              if (box) box.indeterminate = !all && chosen.length > 0;
            }}
            onChange={() => onChange(all ? others : [...others, ...members.map(({ id }) => id)])}
          />
          <b>{name}</b>
        </label>
      </legend>
      {members.map(({ id, name: called, symbol }) => (
        <label key={id} className="choice">
          <input
            type="checkbox"
            checked={ids.includes(id)}
            onChange={(event) =>
              onChange(event.target.checked ? [...ids, id] : ids.filter((one) => one !== id))
            }
          />
          <span>
            {called}{' '}
            <span className="quiet">
              <Notation text={symbol} />
            </span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}

/** What the search asks for, then the groups of all others; what is in no group is somebody's own or late. */
function groupsOf(specification: SearchSpecification, quantities: readonly ShownQuantity[]) {
  const { asked, others } = askedFirst(specification, quantities);
  const grouped = quantityGroups.map(({ name, ids }) => ({
    name,
    members: others.filter(({ id }) => ids.includes(id)),
  }));
  const known = new Set(quantityGroups.flatMap(({ ids }) => ids));
  return [
    { name: 'Ranked and limited here', members: asked },
    ...grouped,
    { name: 'More', members: others.filter(({ id }) => !known.has(id)) },
  ].filter(({ members }) => members.length > 0);
}
