import { shortlistMost } from '@tiegel/contract/terms';
import { useId } from 'react';
import { usePerson } from './person.ts';

/** Who sits here: stands by every change that is made. */
export function PersonField() {
  const [name, setName] = usePerson();
  const id = useId();
  if (setName === null)
    return (
      <p>
        Your name, <b>{name}</b>, stands by what you change.
      </p>
    );
  return (
    <p className="row">
      <label htmlFor={id}>Your name</label>
      <input
        id={id}
        value={name}
        maxLength={shortlistMost.by}
        autoComplete="name"
        aria-describedby={`${id}-why`}
        onChange={(event) => setName(event.target.value)}
      />
      <span id={`${id}-why`} className="quiet small">
        {name.trim() === ''
          ? 'Write it before you change anything: it stands by each change.'
          : 'Stands by what you change.'}
      </span>
    </p>
  );
}
