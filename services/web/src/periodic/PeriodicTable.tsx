import type { Element } from '@tiegel/elements';
import {
  type CSSProperties,
  type KeyboardEvent,
  type MouseEvent,
  memo,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { Mark } from '../ask/draft/draft.ts';
import { type Lack, lackInWords } from '../ask/pool/lackingFor.ts';
import { formatNumber } from '../numbers/formatNumber.ts';
import type { ElementView } from '../server/types.ts';
import { allElements, elementBySymbol } from './allElements.ts';
import { ElementCard } from './ElementCard.tsx';
import { ElementReadout } from './ElementReadout.tsx';
import { type ElementProperty, propertyOf } from './elementProperties.ts';
import { GroupHead } from './GroupHead.tsx';
import './periodicTable.css';
import { useTypedSymbol } from './useTypedSymbol.ts';
import { type Direction, walk } from './walk.ts';

const groups = Array.from({ length: 18 }, (_, index) => index + 1);

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
  /** the same in a word: 'picks' */
  clickWord: string;
  /** values that the search needs and elements lack */
  lacking: ReadonlyMap<string, readonly Lack[]>;
  onMark: (symbol: string, mark: Mark | null) => void;
  /** marks many at once, or takes the mark from them */
  onMarkTogether: (symbols: readonly string[], mark: Mark) => void;
  /** legend and controls, drawn in the gap above the transition metals */
  children: React.ReactNode;
}

/**
 * The whole periodic table. A click gives the mark chosen beside it, or takes it away; arrows
 * walk, letters jump to a symbol, Enter picks, + requires, − forbids, Delete clears. The numbers of
 * the groups are walked like cards and mark a whole group.
 */
export const PeriodicTable = memo(function PeriodicTable(props: PeriodicTableProps) {
  const { elements, marks, property, unit, clickMark, clickWord, lacking, onMark, onMarkTogether, children } =
    props;
  const byName = useMemo(() => new Map(elements.map((element) => [element.symbol, element])), [elements]);
  /** symbol of a card or number of a group: the one that Tab reaches */
  const [at, setAt] = useState('Fe');
  const [pointed, setPointed] = useState<string | null>(null);
  const table = useRef<HTMLFieldSetElement>(null);
  const typed = useTypedSymbol();

  const places = () => [...(table.current?.querySelectorAll<HTMLElement>('.card, .group-head') ?? [])];
  const focus = (place: HTMLElement | undefined) => {
    if (!place) return;
    setAt(nameOf(place)!);
    place.focus();
  };
  const symbolsOf = (name: string) =>
    elementBySymbol.has(name)
      ? [name]
      : allElements
          .filter(({ group, symbol }) => group === Number(name) && byName.has(symbol))
          .map(({ symbol }) => symbol);
  const toggle = (name: string, mark: Mark) => {
    const symbols = symbolsOf(name);
    if (!elementBySymbol.has(name)) onMarkTogether(symbols, mark);
    else if (byName.has(name)) onMark(name, marks[name] === mark ? null : mark);
  };

  const onKeyDown = (event: KeyboardEvent) => {
    const name = nameOf(event.target as HTMLElement);
    if (name === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    const { key } = event;
    const isLetter = /^[a-z]$/i.test(key);
    if (!isLetter) typed(null);
    if (key.startsWith('Arrow')) {
      const cards = places();
      const boxes = cards.map((place) => place.getBoundingClientRect());
      focus(cards[walk(boxes, cards.indexOf(event.target as HTMLElement), key as Direction)]);
    } else if (key === 'Home') focus(places().find((place) => place.dataset.symbol));
    else if (key === 'End') focus(places().at(-1));
    else if (key === '+') toggle(name, 'require');
    else if (key === '-' || key === '−') toggle(name, 'forbid');
    else if (key === 'Delete' || key === 'Backspace')
      for (const symbol of symbolsOf(name)) onMark(symbol, null);
    else if (isLetter) {
      const symbol = typed(key);
      focus(places().find((place) => place.dataset.symbol === symbol));
    } else if (key === 'Enter' || key === ' ') toggle(name, elementBySymbol.has(name) ? 'pool' : clickMark);
    else return;
    event.preventDefault();
  };
  const onClick = (event: MouseEvent) => {
    const name = nameOf(event.target as HTMLElement);
    if (name === undefined) return;
    setAt(name);
    toggle(name, clickMark);
  };
  const shown = elementBySymbol.get(pointed ?? at) ?? elementBySymbol.get('Fe')!;

  return (
    <div className="periodic">
      {/* Keys and pointer are taken from the cards inside, which are buttons. */}
      <fieldset
        ref={table}
        className="periodic-table"
        onKeyDown={onKeyDown}
        onClick={onClick}
        onFocus={(event) => setAt(nameOf(event.target as HTMLElement) ?? at)}
        onPointerOver={(event) => setPointed(nameOf(event.target as HTMLElement) ?? null)}
        onPointerLeave={() => setPointed(null)}
      >
        <legend className="unseen">Periodic table</legend>
        <div className="periodic-gap">{children}</div>
        {groups.map((group) => (
          <GroupHead
            key={group}
            group={group}
            symbols={symbolsOf(String(group))}
            does={clickWord}
            reachable={String(group) === at}
          />
        ))}
        {apart.map(({ numbers, period }) => (
          <span key={period} className="place place-range" style={styleOf(period, 3)}>
            {numbers}
          </span>
        ))}
        {allElements.map((element) => {
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
                lacks={lackOf(element.symbol)}
                reachable={element.symbol === at}
              />
            </div>
          );
        })}
      </fieldset>
      <ElementReadout element={shown} facts={byName.get(shown.symbol)} lacks={lackOf(shown.symbol)} />
    </div>
  );

  function lackOf(symbol: string): string {
    const lacks = lacking.get(symbol);
    return lacks ? lackInWords(lacks) : '';
  }
});

/** The symbol of the card, or the number of the group head, that something lies in. */
function nameOf(target: HTMLElement): string | undefined {
  const { symbol, group } = target.closest<HTMLElement>('.card, .group-head')?.dataset ?? {};
  return symbol ?? group;
}
