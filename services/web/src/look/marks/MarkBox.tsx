import type { Amounts } from '@tiegel/contract';
import { formatComposition, spacedComposition } from '@tiegel/elements';
import type { ReactNode } from 'react';

interface MarkBoxProps {
  composition: Amounts;
  marked: boolean;
  onMark: (texts: readonly string[]) => void;
  /** in a table: the row that arrow keys go on from */
  row?: number;
  tabIndex?: number;
  /** beside the box, where no column says what it is for */
  children?: ReactNode;
}

/** The box that marks a candidate; what is around it takes the finger too. */
export function MarkBox({ composition, marked, onMark, row, tabIndex, children }: MarkBoxProps) {
  return (
    <label className="mark-box">
      <input
        type="checkbox"
        aria-label={`Mark ${spacedComposition(composition)}`}
        checked={marked}
        data-row={row}
        tabIndex={tabIndex}
        onChange={() => onMark([formatComposition(composition)])}
      />
      {children}
    </label>
  );
}
