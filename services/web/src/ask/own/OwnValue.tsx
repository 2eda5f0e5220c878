import { useQuery } from '@tanstack/react-query';
import type { Quantity } from '@tiegel/screening';
import { useId } from 'react';
import { useKept } from '../../frame/useKept.ts';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { parseNumber } from '../../numbers/parseNumber.ts';
import { pairsQuery } from '../../server/queries.ts';
import type { ElementView } from '../../server/types.ts';
import { significantDecimals } from './significantDecimals.ts';
import type { valueOfOwn } from './valueOfOwn.ts';

/** An alloy to try an expression on, invented like the demonstration. */
const alloyToBeginWith = 'Al10Cr20Fe35Mn10Ni25';

interface OwnValueProps {
  quantity: Quantity;
  evaluate: typeof valueOfOwn;
  elements: readonly ElementView[];
  conditions: Readonly<Record<string, string>>;
  unit: string;
}

/** The value of an expression for an alloy that can be typed, recomputed at once. */
export function OwnValue({ quantity, evaluate, elements, conditions, unit }: OwnValueProps) {
  const [alloy, setAlloy] = useKept('ask.tried-alloy', alloyToBeginWith);
  const { data: pairs } = useQuery(pairsQuery);
  const id = useId();
  const found = pairs && evaluate(quantity, alloy, elements, pairs, numbersOf(conditions));
  return (
    <span className="row own-value">
      <label htmlFor={id}>Of</label>
      <input
        id={id}
        className="mono"
        size={24}
        autoComplete="off"
        spellCheck={false}
        value={alloy}
        onChange={(event) => setAlloy(event.target.value)}
        aria-invalid={found && 'fault' in found ? true : undefined}
        aria-describedby={`${id}-value`}
      />
      <output id={`${id}-value`}>
        {!found ? null : 'fault' in found ? (
          <span className="fault">{found.fault}</span>
        ) : found.value === null ? (
          'it has no value.'
        ) : (
          <>
            it is{' '}
            <b>
              {formatNumber(found.value, significantDecimals(found.value))} {unit}
            </b>
          </>
        )}
      </output>
    </span>
  );
}

function numbersOf(conditions: Readonly<Record<string, string>>): Record<string, number> {
  return Object.fromEntries(
    Object.entries(conditions).flatMap(([name, text]) => {
      const parsed = parseNumber(text);
      return 'value' in parsed && parsed.value !== null ? [[name, parsed.value]] : [];
    }),
  );
}
