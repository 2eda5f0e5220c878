import type { Amounts } from '@tiegel/contract';
import { atomicToWeightPercent } from '@tiegel/elements';
import { useMemo } from 'react';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { entryText } from '../../numbers/parseNumber.ts';
import type { AlloyState } from '../state/alloyState.ts';
import { AddElement } from './AddElement.tsx';
import { EditorRow } from './EditorRow.tsx';
import { type Editor, editorOf, nearlyWhole, normalised, readEditor, stepped } from './editorState.ts';
import './editor.css';
import { useKeptEditor } from './useKeptEditor.ts';

interface CompositionEditorProps {
  alloy: AlloyState;
  onChange: (composition: Amounts) => void;
  onReplace: (symbol: string) => void;
}

/** The shares by atoms, to be changed in place, and by mass. Everything on the page follows. */
export function CompositionEditor({ alloy, onChange, onReplace }: CompositionEditorProps) {
  const [{ start, editor }, setTyped] = useKeptEditor(alloy.composition);
  const read = useMemo(() => readEditor(editor), [editor]);
  const weights = read.composition ? atomicToWeightPercent(read.composition) : {};
  const symbols = editor.rows.map(({ symbol }) => symbol);
  const whole = Math.abs(read.total - 100) < nearlyWhole;
  const changed = JSON.stringify(alloy.composition) !== JSON.stringify(start);

  const take = (next: Editor) => {
    const { composition } = readEditor(next);
    setTyped(next, composition ?? alloy.composition);
    if (composition !== null) onChange(composition);
  };
  const write = (symbol: string, text: string) =>
    take({ ...editor, rows: editor.rows.map((row) => (row.symbol === symbol ? { symbol, text } : row)) });
  const step = (symbol: string, direction: 1 | -1, times: number) =>
    write(symbol, entryText(stepped(read.amounts[symbol] ?? null, times * alloy.step, direction)));
  const remove = (symbol: string) =>
    take({
      rows: editor.rows.filter((row) => row.symbol !== symbol),
      balance: editor.balance === symbol ? null : editor.balance,
    });
  const add = (symbol: string) =>
    take({
      ...editor,
      rows: [...editor.rows, { symbol, text: entryText(alloy.step) }].sort((a, b) =>
        a.symbol < b.symbol ? -1 : 1,
      ),
    });
  const balance = (symbol: string) =>
    take({ rows: rowsAsRead(editor, read.amounts), balance: symbol === '' ? null : symbol });

  return (
    <section aria-labelledby="editor-head" className="editor">
      <h2 id="editor-head">Composition</h2>
      <table className="plain-table editor-table">
        <thead>
          <tr>
            <th scope="col">Element</th>
            <th scope="col" className="number">
              at.%
            </th>
            <th scope="col" className="number">
              wt.%
            </th>
            <th scope="col" className="screen-only">
              <span className="unseen">Change</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {editor.rows.map(({ symbol, text }) => (
            <EditorRow
              key={symbol}
              symbol={symbol}
              text={symbol === editor.balance ? balanceText(read.amounts[symbol]) : text}
              amount={read.amounts[symbol] ?? null}
              weight={weights[symbol]}
              step={alloy.step}
              fault={read.faults[symbol]}
              isBalance={symbol === editor.balance}
              isLast={symbols.length === 1}
              onWrite={(typed) => write(symbol, typed)}
              onStep={(direction, times) => step(symbol, direction, times)}
              onRemove={() => remove(symbol)}
              onReplace={() => onReplace(symbol)}
            />
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" className="plain">
              Sum
            </th>
            <td className="number" aria-live="polite">
              {formatNumber(read.total, whole ? alloy.decimals : 2)}
            </td>
            <td className="number quiet">{read.composition ? formatNumber(100, 2) : ''}</td>
            <td className="screen-only" />
          </tr>
        </tfoot>
      </table>
      <div className="screen-only editor-tools">
        {whole ? null : (
          <p className="note row" role="status">
            The amounts make {formatNumber(read.total, 2)}; the page shows them as shares of it.
            <button type="button" onClick={() => take(normalised(editor, entryText))}>
              Make it 100
            </button>
          </p>
        )}
        <AddElement elements={alloy.elements} present={symbols} step={alloy.step} onAdd={add} />
        <label className="editor-balance">
          What the others leave of 100 goes to{' '}
          <select value={editor.balance ?? ''} onChange={(event) => balance(event.target.value)}>
            <option value="">none of them</option>
            {symbols.map((symbol) => (
              <option key={symbol} value={symbol}>
                {symbol}
              </option>
            ))}
          </select>
        </label>
        {changed ? (
          <button type="button" onClick={() => take(editorOf(start, entryText))}>
            Undo all changes
          </button>
        ) : null}
      </div>
    </section>
  );
}

const balanceText = (amount: number | null | undefined) => (amount == null ? '' : entryText(amount));

/** What the balance held becomes text that can be changed. */
function rowsAsRead({ rows, balance }: Editor, amounts: Record<string, number | null>): Editor['rows'] {
  return rows.map((row) =>
    row.symbol === balance ? { ...row, text: balanceText(amounts[row.symbol]) } : row,
  );
}
