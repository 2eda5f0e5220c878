import { useNarrow } from '../../frame/useNarrow.ts';
import { columnsOf } from '../columns.ts';
import type { LookProps } from '../lookView.ts';
import { Marked } from '../marks/Marked.tsx';
import { useMarks } from '../marks/useMarks.ts';
import { Candidates } from './Candidates.tsx';
import { ColumnChoice } from './ColumnChoice.tsx';
import { ExportLinks } from './ExportLinks.tsx';
import { OrderChoice } from './OrderChoice.tsx';
import { RowChoice } from './RowChoice.tsx';

/** The candidates row by row: order, columns, files, and what is marked, which stays so whatever the rows show. */
export function TableView(props: LookProps) {
  const { search, quantities, view, change } = props;
  const narrow = useNarrow();
  const marks = useMarks(search.id);
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
      <Marked search={search} marks={marks} each="row" />
      <Candidates {...props} marks={marks} />
    </>
  );
}
