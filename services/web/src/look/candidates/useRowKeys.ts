import {
  type ClipboardEvent,
  type KeyboardEvent,
  type MouseEvent,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';

interface RowKeysOptions<Row> {
  /** what was walked and selected in one selection of rows holds for no other */
  selection: string;
  rows: readonly Row[];
  /** what copying the selected rows gives */
  asCsv: (rows: readonly Row[]) => string;
  /** what Space does with the selected rows, or the one it is pressed on */
  onSpace?: (rows: readonly Row[]) => void;
  /** the first row that is drawn: Tab reaches it where the row walked to is out of sight */
  firstDrawn: number;
  scrollTo: (index: number) => void;
}

const pageOfRows = 12;

/** Walking, selecting and copying the rows of a table by keys; a click selects too, with Shift a range. */
export function useRowKeys<Row>(options: RowKeysOptions<Row>) {
  const { selection, rows, asCsv, onSpace, firstDrawn, scrollTo } = options;
  const [latest, setWalked] = useState<{ selection: string; at: number; from: number } | null>(null);
  const [copied, setCopied] = useState(false);
  const walked = latest?.selection === selection ? latest : null;
  const toFocus = useRef<number | null>(null);
  const container = useRef<HTMLElement | null>(null);

  useLayoutEffect(() => {
    // The row may be drawn only after the table has scrolled to it: tried at each drawing.
    if (toFocus.current === null) return;
    const link = container.current?.querySelector<HTMLElement>(`a[data-row="${toFocus.current}"]`);
    if (!link) return;
    link.focus({ preventScroll: true });
    toFocus.current = null;
  });

  const [low, high] = walked ? [Math.min(walked.at, walked.from), Math.max(walked.at, walked.from)] : [0, -1];
  const selected = rows.slice(low, high + 1);
  const go = (to: number, extend: boolean) => {
    const at = Math.max(0, Math.min(rows.length - 1, to));
    setWalked({ selection, at, from: extend && walked ? walked.from : at });
    setCopied(false);
    toFocus.current = at;
    scrollTo(at);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const pressed = event.target as HTMLElement;
    const { row } = pressed.dataset;
    if (row === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    container.current = event.currentTarget;
    const at = Number(row);
    const target = {
      ArrowDown: at + 1,
      ArrowUp: at - 1,
      PageDown: at + pageOfRows,
      PageUp: at - pageOfRows,
      Home: 0,
      End: rows.length - 1,
    }[event.key];
    if (target !== undefined) go(target, event.shiftKey);
    else if (event.key === ' ' && onSpace && pressed.tagName === 'A')
      onSpace(at >= low && at <= high ? selected : [rows[at]!]);
    else if (event.key === 'Escape') setWalked({ selection, at, from: at });
    else return;
    event.preventDefault();
  };
  const onClick = (event: MouseEvent<HTMLElement>) => {
    const row = (event.target as HTMLElement).closest<HTMLElement>('tr[data-index]')?.dataset.index;
    if (row === undefined || (event.target as HTMLElement).closest('a, label')) return;
    container.current = event.currentTarget;
    go(Number(row), event.shiftKey);
  };
  const onCopy = (event: ClipboardEvent) => {
    if (high < low || !window.getSelection()?.isCollapsed) return;
    event.clipboardData.setData('text/plain', asCsv(selected));
    event.preventDefault();
    setCopied(true);
  };
  const copy = async () => {
    await navigator.clipboard.writeText(asCsv(selected));
    setCopied(true);
  };

  const isDrawn = walked && walked.at >= firstDrawn && walked.at < rows.length;
  return {
    handlers: { onKeyDown, onClick, onCopy },
    reachable: isDrawn ? walked.at : firstDrawn,
    isSelected: (index: number) => index >= low && index <= high,
    selected,
    selectedCount: high - low + 1,
    copied,
    copy,
  };
}
