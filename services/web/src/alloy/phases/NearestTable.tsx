import type { Neighbour } from '@tiegel/contract';
import { isSame, reportsInWords } from '@tiegel/contract/terms';
import { formatComposition } from '@tiegel/elements';
import { Link } from 'wouter';
import { WideContent } from '../../frame/WideContent.tsx';
import { formatPercent } from '../../numbers/formatNumber.ts';
import { Prose } from '../../words/Prose.tsx';

/** DOIs that stand in the table; the rest is counted. */
const mostDois = 3;

/** The known alloys nearest in composition, published, brought in or melted, with what was reported and where. */
export function NearestTable({ nearest }: { nearest: readonly Neighbour[] }) {
  return (
    <div className="column">
      <h3 id="nearest">Nearest known alloys</h3>
      <WideContent labelledBy="nearest">
        <table className="plain-table cards nearest-table">
          <thead>
            <tr>
              <th scope="col">Alloy</th>
              <th scope="col" className="number">
                Atoms that differ
              </th>
              <th scope="col">Phases as reported</th>
              <th scope="col">Where</th>
            </tr>
          </thead>
          <tbody>
            {nearest.map((one) => (
              <tr key={`${one.formula} ${formatComposition(one.composition)} ${one.import} ${one.melt}`}>
                <th scope="row" className="plain">
                  <Link href={`/alloys/${formatComposition(one.composition)}`}>
                    <Prose text={one.formula} />
                  </Link>
                </th>
                <td className="number" data-label="Atoms that differ">
                  {isSame(one) ? 'the same' : formatPercent(one.distance, 1)}
                </td>
                <td data-label="Phases as reported">
                  <Prose text={reportsInWords(one)} />
                </td>
                <td data-label="Where" className="cards-wide">
                  {one.melt === null ? null : (
                    <Link href={`/melts/${one.melt}`}>● your melt, as weighed</Link>
                  )}
                  {one.import === null ? null : <Link href={`/data/imports/${one.import}`}>● yours</Link>}{' '}
                  {one.doi.slice(0, mostDois).map((doi) => (
                    <span key={doi} className="doi">
                      <a href={`https://doi.org/${doi}`} rel="noreferrer">
                        {doi}
                      </a>
                    </span>
                  ))}
                  {one.doi.length > mostDois ? `and ${one.doi.length - mostDois} more` : ''}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </WideContent>
      <p className="small quiet read-small">
        The <Link href="/data/alloys">list of published alloys</Link> is a selection: that nothing is near
        does not make an alloy new. Phases depend on processing, annealing and method, and publications
        disagree.
      </p>
    </div>
  );
}
