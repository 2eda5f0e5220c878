import { type FormEvent, useState } from 'react';
import { useKeptText } from '../../frame/useKeptText.ts';
import type { ElementView } from '../../server/types.ts';

interface AddElementProps {
  elements: readonly ElementView[];
  /** symbols that are there already */
  present: readonly string[];
  /** what it begins with, at.% */
  step: number;
  onAdd: (symbol: string) => void;
}

/** A field for the symbol or the name of an element to come into the alloy. */
export function AddElement({ elements, present, step, onAdd }: AddElementProps) {
  const [text, setText] = useKeptText('add-element');
  const [fault, setFault] = useState<string | null>(null);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const wanted = text.trim().toLowerCase();
    if (wanted === '') return;
    const found = elements.find(
      ({ symbol, name }) => symbol.toLowerCase() === wanted || name.toLowerCase() === wanted,
    );
    if (found && !present.includes(found.symbol)) {
      onAdd(found.symbol);
      setText('');
      setFault(null);
      return;
    }
    setFault(
      found
        ? `${found.name} is in the alloy already.`
        : `There are no data of “${text.trim()}”. Write a symbol or a name of the list, such as Nb or niobium.`,
    );
  };
  return (
    <form className="editor-add" onSubmit={submit}>
      <label htmlFor="add-element">Add an element</label>
      <input
        id="add-element"
        list="add-element-list"
        size={8}
        autoComplete="off"
        value={text}
        aria-invalid={fault !== null}
        aria-describedby="add-element-fault"
        onChange={(event) => {
          setText(event.target.value);
          setFault(null);
        }}
      />
      <datalist id="add-element-list">
        {elements
          .filter(({ symbol }) => !present.includes(symbol))
          .map(({ symbol, name }) => (
            <option key={symbol} value={symbol}>
              {name}
            </option>
          ))}
      </datalist>
      <button type="submit">Add {step} at.%</button>
      <span id="add-element-fault" className="fault" role="alert">
        {fault}
      </span>
    </form>
  );
}
