import type { Element } from '@tiegel/elements';
import { memo } from 'react';
import type { Mark } from '../ask/draft/draft.ts';
import { familyTints } from './families.ts';
import { markSigns } from './marks.ts';

interface ElementCardProps {
  element: Element;
  available: boolean;
  mark: Mark | undefined;
  /** the property that all cards show, in words for those who listen */
  property: string;
  /** its number, as printed */
  value: string;
  unit: string;
  /** what the search needs of it and nobody knows, in words; '' for nothing */
  lacks: string;
  /** the one card that Tab reaches */
  reachable: boolean;
}

/** One element: number, symbol, the property chosen, and how it is marked by border, sign and word. */
export const ElementCard = memo(function ElementCard(props: ElementCardProps) {
  const { element, available, mark, property, value, unit, lacks, reachable } = props;
  const { symbol, atomicNumber, name, family } = element;
  return (
    <button
      type="button"
      className={`card card-${available ? (mark ?? 'free') : 'lacking'} tint-${familyTints[family]}`}
      data-symbol={symbol}
      title={lacks ? `${name} ${lacks}` : undefined}
      aria-pressed={available ? mark !== undefined : undefined}
      aria-disabled={available ? undefined : true}
      tabIndex={reachable ? 0 : -1}
    >
      <span className="unseen">{name}, </span>
      <span className="card-head">
        <span className="card-number">{atomicNumber} </span>
        <span className="card-symbol">{symbol}</span>
        {lacks ? (
          <span className="card-lacks">
            <span aria-hidden="true">!</span>
            <span className="unseen">, {lacks}</span>
          </span>
        ) : null}
      </span>
      {available ? (
        <span className="card-value">
          <span className="unseen">, {property} </span>
          {value}
          <span className="unseen"> {unit}</span>
        </span>
      ) : (
        <span className="card-value">
          <span className="unseen">, cannot be chosen: </span>no data
        </span>
      )}
      {mark ? (
        <span className="card-mark">
          <span className="unseen">, </span>
          <b>{markSigns[mark].sign}</b> {markSigns[mark].word}
          <span className="unseen">: {markSigns[mark].meaning}</span>
        </span>
      ) : null}
    </button>
  );
});
