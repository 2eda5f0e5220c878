import { Fragment } from 'react';
import { WideContent } from '../frame/WideContent.tsx';
import { AlloyHead, CellText, type CompareProps, differenceInWords, RowName } from './CompareParts.tsx';

/** Alloys as columns, what is compared as lines; what differs is marked by words and signs. */
export function CompareTable({ alloys, groups, ...rest }: CompareProps) {
  return (
    <WideContent label="Side by side">
      <table className="plain-table compare-table" style={{ ['--alloys' as string]: alloys.length }}>
        <thead>
          <tr>
            <th scope="col">What</th>
            {alloys.map((alloy) => (
              <th key={alloy.text} scope="col" className="compare-alloy">
                <AlloyHead alloy={alloy} {...rest} />
              </th>
            ))}
            <th scope="col">Differs</th>
          </tr>
        </thead>
        <tbody>
          {groups.map(({ head, rows }) => (
            <Fragment key={head}>
              <tr className="compare-group">
                <th scope="rowgroup" colSpan={alloys.length + 2}>
                  {head}
                </th>
              </tr>
              {rows.map((row) => (
                <tr key={row.id} className={`differs-${row.difference ?? 'unknown'}`}>
                  <th scope="row" className="plain">
                    <RowName row={row} />
                  </th>
                  {alloys.map(({ letter }, at) => (
                    <td key={letter} className={row.numeric ? 'number' : undefined}>
                      <CellText row={row} at={at} />
                    </td>
                  ))}
                  <td className="compare-differs">{differenceInWords(row)}</td>
                </tr>
              ))}
            </Fragment>
          ))}
        </tbody>
      </table>
    </WideContent>
  );
}
