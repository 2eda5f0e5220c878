import { type Element, unavailable, elements as withData } from '@tiegel/elements';
import { type CSSProperties, type KeyboardEvent, type MouseEvent, useMemo, useRef, useState } from 'react';
import type { Mark } from '../ask/draft.ts';
import { formatNumber } from '../numbers/formatNumber.ts';
import type { ElementView } from '../server/types.ts';
import { ElementCard } from './ElementCard.tsx';
import { ElementReadout } from './ElementReadout.tsx';
import { type ElementProperty, propertyOf } from './elementProperties.ts';
import './periodicTable.css';
import { type Direction, walk } from './walk.ts';

const all: readonly Element[] = [...withData, ...unavailable].sort((a, b) => a.atomicNumber - b.atomicNumber);
const indexBySymbol = new Map(all.map(({ symbol }, index) => [symbol, index]));
/** Letters further apart than this (ms) begin another symbol. */
const symbolPause = 900;
const nothingTyped = { text: '', time: 0 };

/** Lanthanides and actinides are drawn apart; these stand in their place. */
const apart = [
  { numbers: '57–71', period: 6 },
  { numbers: '89–103', period: 7 },
];

/** Period and column for the style sheet; elements drawn apart count their columns from 1. */
function placeOf({ period, group, atomicNumber }: Element): CSSProperties {
  return styleOf(period, group ?? atomicNumber - (period === 6 ? 56 : 88));
}

function styleOf(period: number, column: number): CSSProperties {
  return { '--period': period, '--column': column } as CSSProperties;
}

interface PeriodicTableProps {
  elements: readonly ElementView[];
  marks: Readonly<Record<string, Mark>>;
  /** shown on the cards */
  property: ElementProperty | undefined;
  /** as printed, with the currency of the price list */
  unit: string;
  /** what a click on a card does */
  clickMark: Mark;
  onMark: (symbol: string, mark: Mark | null) => void;
  /** legend and controls, drawn in the gap above the transition metals */
  children: React.ReactNode;
}

/**
 * The whole periodic table. A click gives the mark chosen beside it, or takes it away; arrows
 * walk, letters jump to a symbol, Enter picks, + requires, − forbids, Delete clears.
 */
export function PeriodicTable(props: PeriodicTableProps) {
  const { elements, marks, property, unit, clickMark, onMark, children } = props;
  const byName = useMemo(() => new Map(elements.map((element) => [element.symbol, element])), [elements]);
  const [at, setAt] = useState('Fe');
  const [pointed, setPointed] = useState<string | null>(null);
  const table = useRef<HTMLFieldSetElement>(null);
  const typed = useRef(nothingTyped);

  const cards = () => [...(table.current?.querySelectorAll<HTMLElement>('.card') ?? [])];
  const focus = (index: number) => {
    const card = cards()[index];
    if (!card) return;
    setAt(card.dataset.symbol!);
    card.focus();
  };
  const toggle = (symbol: string, mark: Mark) => {
    if (byName.has(symbol)) onMark(symbol, marks[symbol] === mark ? null : mark);
  };

  const onKeyDown = (event: KeyboardEvent) => {
    const symbol = (event.target as HTMLElement).dataset.symbol;
    if (symbol === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    const index = indexBySymbol.get(symbol)!;
    const { key } = event;
    const isLetter = /^[a-z]$/i.test(key);
    if (!isLetter) typed.current = nothingTyped;
    if (key.startsWith('Arrow')) {
      focus(
        walk(
          cards().map((card) => card.getBoundingClientRect()),
          index,
          key as Direction,
        ),
      );
    } else if (key === 'Home' || key === 'End') focus(key === 'Home' ? 0 : all.length - 1);
    else if (key === '+') toggle(symbol, 'require');
    else if (key === '-' || key === '−') toggle(symbol, 'forbid');
    else if (key === 'Delete' || key === 'Backspace') onMark(symbol, null);
    else if (isLetter) jump(key);
    else if (key === 'Enter' || key === ' ') toggle(symbol, 'pool');
    else return;
    event.preventDefault();
  };
  /** Letters typed within a moment are a symbol, or its beginning. */
  const jump = (letter: string) => {
    const now = performance.now();
    const before = now - typed.current.time < symbolPause ? typed.current.text : '';
    const find = (text: string) =>
      all.findIndex(({ symbol }) => symbol.toLowerCase() === text) >= 0
        ? all.findIndex(({ symbol }) => symbol.toLowerCase() === text)
        : all.findIndex(({ symbol }) => symbol.toLowerCase().startsWith(text));
    const text =
      find(before + letter.toLowerCase()) >= 0 ? before + letter.toLowerCase() : letter.toLowerCase();
    typed.current = { text, time: now };
    focus(find(text));
  };
  const symbolUnder = (event: { target: EventTarget }) =>
    (event.target as HTMLElement).closest<HTMLElement>('.card')?.dataset.symbol ?? null;
  const onClick = (event: MouseEvent) => {
    const symbol = symbolUnder(event);
    if (symbol === null) return;
    setAt(symbol);
    toggle(symbol, clickMark);
  };
  const shown = pointed ?? at;

  return (
    <div className="periodic">
      {/* Keys and pointer are taken from the cards inside, which are buttons. */}
      <fieldset
        ref={table}
        className="periodic-table"
        onKeyDown={onKeyDown}
        onClick={onClick}
        onFocus={(event) => setAt(symbolUnder(event) ?? at)}
        onPointerOver={(event) => setPointed(symbolUnder(event))}
        onPointerLeave={() => setPointed(null)}
      >
        <legend className="unseen">Periodic table</legend>
        <div className="periodic-gap">{children}</div>
        {apart.map(({ numbers, period }) => (
          <span key={period} className="place place-range" style={styleOf(period, 3)}>
            {numbers}
          </span>
        ))}
        {all.map((element) => {
          const facts = byName.get(element.symbol);
          const value = formatNumber(
            facts && property ? propertyOf(facts, property.id) : null,
            property?.decimals ?? 0,
          );
          return (
            <div
              key={element.symbol}
              className={element.group === null ? 'place place-apart' : 'place'}
              style={placeOf(element)}
            >
              <ElementCard
                element={element}
                available={facts !== undefined}
                mark={marks[element.symbol]}
                property={property?.name.toLowerCase() ?? ''}
                value={value}
                unit={unit}
                reachable={element.symbol === at}
              />
            </div>
          );
        })}
      </fieldset>
      <ElementReadout element={all[indexBySymbol.get(shown)!]!} facts={byName.get(shown)} />
    </div>
  );
}
