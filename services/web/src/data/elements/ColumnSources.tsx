import type { OwnColumnView } from '@tiegel/contract';
import { columns, dataSets, sources } from '@tiegel/elements';
import { Link } from 'wouter';
import { inLocale } from '../../numbers/inLocale.ts';

const ways = { mole: 'by atoms', mass: 'by mass', volume: 'by volume' } as const;

/** What each column holds and where its values come from. */
export function ColumnSources({ own }: { own: readonly OwnColumnView[] }) {
  return (
    <details>
      <summary>What the columns hold, and their sources</summary>
      <p className="read-small">
        A value marked ° has another source than its column; the page of its element names it.
      </p>
      <dl className="data-sources">
        {columns.map(({ id, name, meaning, source }) => (
          <div key={id}>
            <dt>{name}</dt>
            <dd>
              {meaning} <SourceText code={source} />
            </dd>
          </div>
        ))}
        {own.map(({ id, name, mixing }) => (
          <div key={id}>
            <dt>{name} (yours)</dt>
            <dd>
              A column of your own, averaged {ways[mixing]}; its name in expressions is <code>{id}</code>.{' '}
              <Link href="/data/imports">Where it came from</Link>
            </dd>
          </div>
        ))}
      </dl>
    </details>
  );
}

/** A source in words, with the data set that carried it. */
export function SourceText({ code }: { code: keyof typeof sources }) {
  const { text, dataSet } = sources[code];
  return (
    <span className="quiet">
      {inLocale(text)}
      {dataSet === null ? '' : ` Read from ${dataSets[dataSet].name}, ${dataSets[dataSet].version}.`}
    </span>
  );
}
