import type { CSSProperties } from 'react';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { niceTicks } from '../../plot/niceTicks.ts';
import type { DragRange } from './dragRange.ts';

/** Round values below a distribution. */
export function RangeTicks({ range: { from, to }, unit }: { range: DragRange; unit: string }) {
  const { values, decimals } = niceTicks(from, to, 6);
  return (
    <div
      className={unit.length > 8 ? 'sample-ticks sample-ticks-long small quiet' : 'sample-ticks small quiet'}
      aria-hidden="true"
    >
      {values.map((value, index) => (
        <span key={value} style={{ '--at': (value - from) / (to - from) } as CSSProperties}>
          {formatNumber(value, decimals)}
          {index === values.length - 1 && unit ? ` ${unit}` : ''}
        </span>
      ))}
    </div>
  );
}
