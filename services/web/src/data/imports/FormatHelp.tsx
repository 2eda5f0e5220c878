import type { KindInWords } from './importKinds.ts';

/** How the rows of a kind are written, with an example to begin from. */
export function FormatHelp({ kind, onExample }: { kind: KindInWords; onExample: () => void }) {
  return (
    <details>
      <summary>How the rows are written</summary>
      <p className="read-small">
        A CSV text, or cells copied from a spreadsheet: a first row with the names of the columns, then a row
        for each entry. Commas part the fields, numbers have a decimal point, a field that holds a comma
        stands in double quotes; where semicolons or tabs part them, decimals may have a comma.
      </p>
      <dl className="data-sources import-columns">
        {kind.columns.map(([name, holds]) => (
          <div key={name}>
            <dt>
              <code>{name}</code>
            </dt>
            <dd>{holds}</dd>
          </div>
        ))}
      </dl>
      <pre className="import-example">{kind.example}</pre>
      <p className="row">
        <button type="button" onClick={onExample}>
          Begin with this example
        </button>
        <span className="quiet">Its values are invented.</span>
      </p>
    </details>
  );
}
