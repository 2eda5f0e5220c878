import type { PairView } from '@tiegel/contract';
import { type KeyboardEvent, memo, useLayoutEffect, useMemo, useRef } from 'react';
import { Link, useLocation } from 'wouter';
import '../../alloy/competes/competes.css';
import { noValue } from '../../numbers/formatNumber.ts';
import { elementBySymbol } from '../../periodic/allElements.ts';
import { useAddress } from '../useAddress.ts';
import { enthalpyText } from './enthalpyText.ts';
import { toneOf } from './pairChoice.ts';

interface PairMatrixProps {
  pairs: readonly PairView[];
  /** by atomic number */
  symbols: readonly string[];
}

const rowsOfAPage = 10;
const keyOf = (a: string, b: string) => (a < b ? `${a}-${b}` : `${b}-${a}`);
const alloyOf = (a: string, b: string) =>
  `/alloys/${[a, b]
    .sort()
    .map((symbol) => `${symbol}50`)
    .join('')}`;

/** Every pair as a cell that arrow keys walk; the number stands in the cell, its tint says how strong it is. */
export function PairMatrix({ pairs, symbols }: PairMatrixProps) {
  const [address, change] = useAddress();
  const [, navigate] = useLocation();
  const grid = useRef<HTMLTableElement>(null);
  const toFocus = useRef(false);
  const byKey = useMemo(() => new Map(pairs.map((pair) => [keyOf(pair.a, pair.b), pair])), [pairs]);
  const [rowSymbol, columnSymbol] = (address.get('at') ?? '').split('-');
  const at = {
    row: Math.max(0, symbols.indexOf(rowSymbol ?? '')),
    column: columnSymbol && symbols.includes(columnSymbol) ? symbols.indexOf(columnSymbol) : 1,
  };
  const chosen = [symbols[at.row]!, symbols[at.column]!] as const;

  useLayoutEffect(() => {
    if (!toFocus.current) return;
    grid.current?.querySelector<HTMLElement>('td[tabindex="0"]')?.focus();
    toFocus.current = false;
  });

  // A pair that the address names is shown in the middle when the page opens.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only once, walking keeps its own place
  useLayoutEffect(() => {
    const cell = grid.current?.querySelector<HTMLElement>('td[tabindex="0"]');
    const box = grid.current?.parentElement;
    if (!cell || !box || !address.has('at')) return;
    box.scrollLeft = cell.offsetLeft - box.clientWidth / 2;
    box.scrollTop = cell.offsetTop - box.clientHeight / 2;
  }, []);

  const go = (row: number, column: number) => {
    const within = (place: number) => Math.max(0, Math.min(symbols.length - 1, place));
    toFocus.current = true;
    change({ at: `${symbols[within(row)]}-${symbols[within(column)]}` });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const { row, column } = at;
    const target = {
      ArrowDown: [row + 1, column],
      ArrowUp: [row - 1, column],
      ArrowRight: [row, column + 1],
      ArrowLeft: [row, column - 1],
      PageDown: [row + rowsOfAPage, column],
      PageUp: [row - rowsOfAPage, column],
      Home: [row, 0],
      End: [row, symbols.length - 1],
    }[event.key];
    if (target) go(target[0]!, target[1]!);
    else if (event.key === 'Enter' && chosen[0] !== chosen[1]) navigate(alloyOf(...chosen));
    else return;
    event.preventDefault();
  };

  return (
    <>
      <Readout one={chosen[0]} other={chosen[1]} pair={byKey.get(keyOf(...chosen))} />
      <div className="table-scroll matrix-scroll">
        {/* The table is a grid: its cells are walked, one of them is in the order of Tab. */}
        {/* biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: arrow keys walk its cells */}
        <table ref={grid} role="grid" className="pair-matrix" aria-label="Pairs" onKeyDown={onKeyDown}>
          <thead>
            <tr>
              <td />
              {symbols.map((symbol, column) => (
                <th key={symbol} scope="col" className={column === at.column ? 'matrix-at' : undefined}>
                  {symbol}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {symbols.map((symbol, row) => (
              <MatrixRow
                key={symbol}
                symbol={symbol}
                symbols={symbols}
                byKey={byKey}
                at={row === at.row ? at.column : null}
                onChoose={change}
              />
            ))}
          </tbody>
        </table>
      </div>
      <p className="row small quiet matrix-legend">
        {[-40, -20, -5, 0, 5, 20, 40].map((value) => (
          <span key={value} className="row">
            <span className={`matrix-key pair-${toneOf(value)}`} />
            {legend[toneOf(value)]}
          </span>
        ))}
      </p>
    </>
  );
}

const legend: Record<string, string> = {
  'seek-3': '−30 or less: strong attraction',
  'seek-2': 'to −10',
  'seek-1': 'to −2',
  chance: 'about 0',
  'avoid-1': 'from 2',
  'avoid-2': 'from 10',
  'avoid-3': '30 or more: strong repulsion, kJ/mol',
};

interface MatrixRowProps {
  symbol: string;
  symbols: readonly string[];
  byKey: ReadonlyMap<string, PairView>;
  /** the column of the chosen cell; null in every other row */
  at: number | null;
  onChoose: (part: Record<string, string>) => void;
}

const MatrixRow = memo(function MatrixRow({ symbol, symbols, byKey, at, onChoose }: MatrixRowProps) {
  return (
    <tr>
      <th scope="row" className={at === null ? undefined : 'matrix-at'}>
        {symbol}
      </th>
      {symbols.map((other, column) => {
        const pair = byKey.get(keyOf(symbol, other));
        return (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the grid listens to the keys
          <td
            key={other}
            // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a cell of a grid
            role="gridcell"
            tabIndex={column === at ? 0 : -1}
            className={pair ? `pair-${toneOf(pair.mixingEnthalpy)}` : 'matrix-none'}
            onClick={() => onChoose({ at: `${symbol}-${other}` })}
          >
            {pair ? enthalpyText(pair.mixingEnthalpy) : symbol === other ? '' : noValue}
            {pair?.import == null ? '' : '*'}
          </td>
        );
      })}
    </tr>
  );
});

/** The chosen pair in words. */
function Readout({ one, other, pair }: { one: string; other: string; pair: PairView | undefined }) {
  const name = (symbol: string) => elementBySymbol.get(symbol)?.name.toLowerCase() ?? symbol;
  return (
    <p className="matrix-readout" role="status">
      <b>
        {one}–{other}
      </b>{' '}
      <span className="quiet">
        {name(one)} and {name(other)}
      </span>{' '}
      {one === other ? (
        'An element with itself has none.'
      ) : pair ? (
        <>
          <b>{enthalpyText(pair.mixingEnthalpy)} kJ/mol</b>
          {pair.import === null ? '' : ` * from your import ${pair.import}`}{' '}
          <Link href={alloyOf(one, other)}>The equimolar alloy</Link>
        </>
      ) : (
        'no value is known'
      )}
    </p>
  );
}
