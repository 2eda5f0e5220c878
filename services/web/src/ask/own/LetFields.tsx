import type { Fault, QuantityView } from '@tiegel/contract';
import { useRef } from 'react';
import { unitText } from '../../server/lookup.ts';
import type { ElementView } from '../../server/types.ts';
import { asSentence } from '../../words/asSentence.ts';
import type { LetRow } from '../draft/draft.ts';
import { useFaultsAt } from '../faults/faultsContext.ts';
import { remedyHere } from '../faults/remedyHere.ts';
import { InsertQuantity } from './InsertQuantity.tsx';
import { OwnValue } from './OwnValue.tsx';
import { placeInFormula } from './placeInFormula.ts';
import type { ReadExpression } from './readExpressions.ts';
import type { OwnQuantities } from './useOwnQuantities.ts';

interface LetFieldsProps {
  row: LetRow;
  index: number;
  read: ReadExpression | undefined;
  reader: OwnQuantities['reader'];
  /** quantities that it may name */
  offered: readonly QuantityView[];
  elements: readonly ElementView[];
  conditions: Readonly<Record<string, string>>;
  currency: string | undefined;
  onName: (name: string) => void;
  onText: (text: string) => void;
  onRemove: () => void;
}

/** One expression: name, formula, what is wrong at which character, its unit and its value for an alloy. */
export function LetFields(props: LetFieldsProps) {
  const { row, index, read, reader, offered, elements, conditions, currency, onName, onText, onRemove } =
    props;
  const field = useRef<HTMLInputElement>(null);
  const text = useFaultsAt(`/lets/${index}`);
  const name = useFaultsAt(`/lets/${index}/name`);
  const words = (fault: Fault) => asSentence(`${fault.detail} ${remedyHere(fault)}`);
  const nameFaults = [...(read?.nameFaults.map(words) ?? []), ...name.faults];
  // The formula is read here while it is typed; what the server says of it besides (values that lack) follows.
  const textFaults =
    read && row.text !== '' && read.textFaults.length > 0
      ? read.textFaults.map(words)
      : nameFaults.length > 0
        ? []
        : text.faults;
  const wrongAt = read?.textFaults.map(placeInFormula).find((place) => place !== null) ?? null;

  return (
    <div className="own">
      <div className="ask-line own-line">
        <label htmlFor={name.id} className="unseen">
          Name of expression {index + 1}
        </label>
        <input
          id={name.id}
          className="mono own-name"
          autoComplete="off"
          spellCheck={false}
          maxLength={64}
          value={row.name}
          onChange={(event) => onName(event.target.value)}
          {...described(name.id, nameFaults)}
        />
        <span aria-hidden="true">=</span>
        <label htmlFor={text.id} className="unseen">
          Formula of {row.name || `expression ${index + 1}`}
        </label>
        <input
          ref={field}
          id={text.id}
          className="mono own-text"
          autoComplete="off"
          spellCheck={false}
          maxLength={1000}
          placeholder="youngsModulus / density"
          value={row.text}
          onChange={(event) => onText(event.target.value)}
          {...described(text.id, textFaults)}
        />
        <button
          type="button"
          className="button-plain"
          aria-label={`Take out the expression ${row.name}`}
          onClick={onRemove}
        >
          ×
        </button>
      </div>
      <Faults id={name.id} faults={nameFaults} />
      {wrongAt !== null && textFaults.length > 0 ? <MarkedPlace text={row.text} at={wrongAt} /> : null}
      <Faults id={text.id} faults={textFaults} />
      <div className="row small">
        <InsertQuantity field={field} text={row.text} offered={offered} onText={onText} />
        {read?.unit != null ? (
          <span>
            Unit: <b>{read.unit === '' ? 'a plain number' : unitText(read.unit, currency)}</b>
          </span>
        ) : null}
        {read?.quantity && reader ? (
          <OwnValue
            quantity={read.quantity}
            evaluate={reader.valueOf}
            elements={elements}
            conditions={conditions}
            unit={unitText(read.unit ?? '', currency)}
          />
        ) : null}
      </div>
    </div>
  );
}

function described(id: string, faults: readonly string[]) {
  return faults.length > 0 ? { 'aria-invalid': true as const, 'aria-describedby': `${id}-fault` } : {};
}

function Faults({ id, faults }: { id: string; faults: readonly string[] }) {
  if (faults.length === 0) return null;
  return (
    <span className="fault" id={`${id}-fault`}>
      {faults.join(' ')}
    </span>
  );
}

/** The formula once more, with the character marked at which it is wrong. */
function MarkedPlace({ text, at }: { text: string; at: number }) {
  return (
    <p className="mono small own-place" aria-hidden="true">
      {text.slice(0, at)}
      <mark>{text.slice(at, at + 1) || ' '}</mark>
      {text.slice(at + 1)}
    </p>
  );
}
