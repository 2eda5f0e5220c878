import { elementOf } from '@tiegel/elements';
import type { KeyboardEvent } from 'react';
import { toneOf } from '../../composition/ShareBar.tsx';
import { formatNumber } from '../../numbers/formatNumber.ts';

interface EditorRowProps {
  symbol: string;
  text: string;
  amount: number | null;
  weight: number | undefined;
  step: number;
  fault: string | undefined;
  isBalance: boolean;
  isLast: boolean;
  onWrite: (text: string) => void;
  /** so many steps up or down */
  onStep: (direction: 1 | -1, times: number) => void;
  onRemove: () => void;
  onReplace: () => void;
}

/** One element of an alloy: its share, to be typed or stepped, and what can be done with it. */
export function EditorRow(props: EditorRowProps) {
  const { symbol, text, amount, weight, step, fault, isBalance, isLast, onWrite, onStep } = props;
  const name = elementOf(symbol)?.name ?? symbol;
  const id = `share-${symbol}`;
  const onKeyDown = (event: KeyboardEvent) => {
    const move = { ArrowUp: [1, 1], ArrowDown: [-1, 1], PageUp: [1, 10], PageDown: [-1, 10] } as const;
    const found = move[event.key as keyof typeof move];
    if (found === undefined || isBalance) return;
    event.preventDefault();
    onStep(found[0], found[1]);
  };
  return (
    <tr>
      <th scope="row">
        <span className="swatch" aria-hidden="true" style={{ ['--tone' as string]: toneOf(symbol) }} />
        {symbol} <span className="quiet plain editor-name">{name.toLowerCase()}</span>
      </th>
      <td className="number">
        <span className="editor-share">
          <button
            type="button"
            className="button-plain editor-step"
            tabIndex={-1}
            aria-label={`${name}, ${step} at.% less`}
            disabled={isBalance || !amount}
            onClick={() => onStep(-1, 1)}
          >
            −
          </button>
          <input
            id={id}
            type="text"
            role="spinbutton"
            inputMode="decimal"
            autoComplete="off"
            size={7}
            value={text}
            readOnly={isBalance}
            aria-label={`${name}, at.%${isBalance ? ', what the others leave' : ''}`}
            aria-valuenow={amount ?? 0}
            aria-valuemin={0}
            aria-invalid={fault !== undefined}
            aria-describedby={fault === undefined ? undefined : `${id}-fault`}
            onChange={(event) => onWrite(event.target.value)}
            onKeyDown={onKeyDown}
          />
          <button
            type="button"
            className="button-plain editor-step"
            tabIndex={-1}
            aria-label={`${name}, ${step} at.% more`}
            disabled={isBalance}
            onClick={() => onStep(1, 1)}
          >
            +
          </button>
        </span>
        {fault === undefined ? null : (
          <span id={`${id}-fault`} className="fault editor-fault">
            {fault}
          </span>
        )}
      </td>
      <td className="number">{formatNumber(weight, 2)}</td>
      <td className="number screen-only editor-acts">
        <button
          type="button"
          className="button-plain"
          aria-label={`Replace ${name}`}
          onClick={props.onReplace}
        >
          Replace
        </button>
        <button
          type="button"
          className="button-plain"
          aria-label={`Remove ${name}`}
          disabled={isLast}
          onClick={props.onRemove}
        >
          ×
        </button>
      </td>
    </tr>
  );
}
