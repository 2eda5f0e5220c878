import type { ComparisonRow } from '@tiegel/contract/terms';
import { AlloyHead, CellText, type CompareProps, differenceInWords, RowName } from './CompareParts.tsx';

/**
 * The comparison on a small screen: first the alloys with their letters, then what is compared, one below
 * the other, each with what it is for each letter.
 */
export function CompareCards({ alloys, groups, ...rest }: CompareProps) {
  return (
    <section className="compare-cards" aria-label="Side by side">
      <ol className="compare-alloys">
        {alloys.map((alloy) => (
          <li key={alloy.text} className="compare-alloy">
            <AlloyHead alloy={alloy} {...rest} />
          </li>
        ))}
      </ol>
      {groups.map(({ head, rows }) => (
        <section key={head} aria-label={head}>
          <h3>{head}</h3>
          <ul>
            {rows.map((row) => (
              <li key={row.id} className={`compare-card differs-${row.difference ?? 'unknown'}`}>
                <p className="compare-card-head">
                  <span>
                    <RowName row={row} />
                  </span>
                  <span className="compare-differs">{differenceInWords(row)}</span>
                </p>
                {row.difference === 'none' ? (
                  <p>
                    <span className="quiet">All:</span> <CellText row={row} at={0} />
                  </p>
                ) : (
                  <CardCells row={row} letters={alloys.map(({ letter }) => letter)} />
                )}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </section>
  );
}

/** What a line says of each alloy: short values in rows of three, words below each other. */
function CardCells({ row, letters }: { row: ComparisonRow; letters: readonly string[] }) {
  const words = row.cells.some(({ text }) => text.length > 10);
  return (
    <ul className={words ? 'compare-words' : 'compare-values'}>
      {letters.map((letter, at) => (
        <li key={letter}>
          <b className="compare-of">{letter}</b>
          <span>
            <CellText row={row} at={at} />
          </span>
        </li>
      ))}
    </ul>
  );
}
