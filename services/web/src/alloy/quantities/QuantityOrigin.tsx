import type { QuantityView } from '@tiegel/contract';
import { columns, ownPairOf, pairColumns, priceColumn } from '@tiegel/elements';
import { quantities as known, sensitivities } from '@tiegel/screening';
import { useMemo } from 'react';
import { WideContent } from '../../frame/WideContent.tsx';
import { formatNumber, noValue } from '../../numbers/formatNumber.ts';
import { unitText } from '../../server/lookup.ts';
import { Notation } from '../../words/Notation.tsx';
import type { AlloyState } from '../state/alloyState.ts';
import { changeInWords } from './changeInWords.ts';

interface QuantityOriginProps {
  alloy: AlloyState;
  quantity: QuantityView;
}

const describedColumns = [...columns, priceColumn];

/** What a formula read of each element and pair, with sources, and what one at.% more of each element does. */
export function QuantityOrigin({ alloy, quantity }: QuantityOriginProps) {
  const { composition, symbols, facts, conditions, elements, prices, decimals } = alloy;
  const { id, needs, name } = quantity;
  const rates = useMemo(
    () => (known.some((one) => one.id === id) ? sensitivities(id, composition, facts, conditions) : null),
    [id, composition, facts, conditions],
  );
  const unit = unitText(quantity.unit, prices?.currency);
  const read = needs.elements.flatMap((column) => describedColumns.find((one) => one.id === column) ?? []);
  return (
    <>
      <WideContent label={`${name}: what went in`}>
        <table className="plain-table origin">
          <caption className="unseen">{name}: what went in, and what one at.% more does</caption>
          <thead>
            <tr>
              <th scope="col">Element</th>
              <th scope="col" className="number">
                at.%
              </th>
              {read.map((column) => (
                <th key={column.id} scope="col" className="number">
                  <Notation text={column.symbol || column.name} />
                  {column.unit === '' ? '' : `, ${unitText(column.unit, prices?.currency)}`}
                </th>
              ))}
              <th scope="col" className="number">
                +1 at.% makes{unit === '' ? '' : `, ${unit}`}
              </th>
            </tr>
          </thead>
          <tbody>
            {symbols.map((symbol) => {
              const record = elements.find((one) => one.symbol === symbol);
              return (
                <tr key={symbol}>
                  <th scope="row">{symbol}</th>
                  <td className="number">{formatNumber(composition[symbol], decimals)}</td>
                  {read.map(({ id: column }) => {
                    const value = record?.[column as keyof typeof record];
                    const source = record?.sources[column as keyof typeof record.sources];
                    return (
                      <td key={column} className="number">
                        {typeof value === 'number'
                          ? inputText(value)
                          : typeof value === 'string'
                            ? value
                            : noValue}{' '}
                        {source ? <span className="quiet small">{source}</span> : null}
                      </td>
                    );
                  })}
                  <td className="number">{changeInWords(rates?.[symbol], quantity.decimals)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </WideContent>
      {needs.pairs.map((column) => (
        <PairInputs key={column} alloy={alloy} column={column} />
      ))}
      <p className="quiet small">
        One at.% more comes at the expense of the others, in proportion; it is the slope here. Letters name
        the source of a value, see the data.
      </p>
    </>
  );
}

/** The values of every pair, in one line. */
function PairInputs({ alloy: { symbols, facts, ownPairs }, column }: { alloy: AlloyState; column: string }) {
  const described = pairColumns.find(({ id }) => id === column);
  const matrix = facts.pairs[column];
  if (!described || !matrix) return null;
  const ownOf = ownPairOf(ownPairs);
  const pairs = symbols.flatMap((a, i) =>
    symbols.slice(i + 1).map((b) => {
      const value = matrix[facts.symbols.indexOf(a)]?.[facts.symbols.indexOf(b)] ?? null;
      return `${a}–${b} ${value === null ? noValue : inputText(value)}${ownOf(a, b) ? ' (own)' : ''}`;
    }),
  );
  if (pairs.length === 0) return null;
  return (
    <p>
      {described.name} <Notation text={described.symbol} />, {described.unit}: {pairs.join(', ')}.
    </p>
  );
}

/** A datum as it stands in the data: up to six significant digits. */
function inputText(value: number): string {
  const digits = String(Number(value.toPrecision(6)));
  return formatNumber(Number(digits), digits.split('.')[1]?.length ?? 0);
}
