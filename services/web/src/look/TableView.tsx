import { useNarrow } from '../frame/useNarrow.ts';
import { Candidates } from './Candidates.tsx';
import { ColumnChoice } from './ColumnChoice.tsx';
import { columnsOf } from './columns.ts';
import { ExportLinks } from './ExportLinks.tsx';
import type { LookProps } from './lookView.ts';
import { OrderChoice } from './OrderChoice.tsx';
import { RowChoice } from './RowChoice.tsx';

/** The candidates row by row: order, columns, files. */
export function TableView(props: LookProps) {
  const { search, quantities, view, change } = props;
  const narrow = useNarrow();
  return (
    <>
      <div className="look-tools">
        {narrow ? <OrderChoice view={view} quantities={quantities} onChange={change} /> : null}
        <RowChoice at={view.at} kept={search.kept} onChange={(at) => change({ at })} />
        <ExportLinks search={search} view={view} />
        <ColumnChoice
          specification={search.specification}
          quantities={quantities}
          shown={columnsOf(view.columns, search.specification, quantities)}
          onChange={(chosen) => change({ columns: chosen })}
        />
      </div>
      <Candidates {...props} />
    </>
  );
}
