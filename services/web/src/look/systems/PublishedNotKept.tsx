import type { SystemsPage } from '@tiegel/contract';
import { WideContent } from '../../frame/WideContent.tsx';
import { formatCount } from '../../numbers/formatNumber.ts';
import { Prose } from '../../words/Prose.tsx';
import { phasesInWords } from './phasesInWords.ts';

/** Systems of the pool that are published, but of which nothing was kept. */
export function PublishedNotKept({ explored }: { explored: SystemsPage['explored'] }) {
  const { publishedNotKept, published } = explored;
  if (publishedNotKept.length === 0) return null;
  return (
    <details>
      <summary>
        {formatCount(publishedNotKept.length)} of the {formatCount(published)} published systems of this pool
        have no candidate here
      </summary>
      <WideContent label="Published systems without a candidate">
        <table className="plain-table">
          <caption className="unseen">Published systems without a candidate</caption>
          <thead>
            <tr>
              <th scope="col">System</th>
              <th scope="col">Published</th>
            </tr>
          </thead>
          <tbody>
            {publishedNotKept.map(({ system, published: found }) => (
              <tr key={system}>
                <th scope="row">{system}</th>
                <td>
                  <Prose text={phasesInWords(found)} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </WideContent>
    </details>
  );
}
