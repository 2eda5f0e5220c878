import type { Element } from '@tiegel/elements';
import { memo } from 'react';
import type { Mark } from '../ask/draft.ts';
import { familyTints } from './families.ts';
import { markSigns } from './marks.ts';

interface ElementCardProps {
  element: Element;
  available: boolean;
  mark: Mark | undefined;
  /** the number that all cards show, as printed */
  value: string;
  /** the same with its name and unit, to be read aloud */
  valueInWords: string;
  /** the one card that Tab reaches */
  reachable: boolean;
}

/** One element: number, symbol, the property chosen, and how it is marked by border, sign and word. */
export const ElementCard = memo(function ElementCard(props: ElementCardProps) {
  const { element, available, mark, value, valueInWords, reachable } = props;
  const { symbol, atomicNumber, name } = element;
  const state = available ? (mark ? markSigns[mark].meaning : 'not chosen') : 'cannot be chosen: no data';
  return (
    <button
      type="button"
      className={`card card-${available ? (mark ?? 'free') : 'lacking'} tint-${familyTints[element.family]}`}
      data-symbol={symbol}
      aria-pressed={available ? mark !== undefined : undefined}
      aria-disabled={available ? undefined : true}
      aria-label={`${name}, ${symbol}, ${atomicNumber}, ${state}${available ? `, ${valueInWords}` : ''}`}
      tabIndex={reachable ? 0 : -1}
    >
      <span className="card-head">
        <span className="card-number">{atomicNumber}</span>
        <span className="card-symbol">{symbol}</span>
      </span>
      <span className="card-value">{available ? value : 'no data'}</span>
      {mark ? (
        <span className="card-mark">
          <b>{markSigns[mark].sign}</b> {markSigns[mark].word}
        </span>
      ) : null}
    </button>
  );
});
