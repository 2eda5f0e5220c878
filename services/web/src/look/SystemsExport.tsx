import { useMutation } from '@tanstack/react-query';
import type { SystemsPage, SystemView } from '@tiegel/contract';
import { FaultList } from '../frame/FaultList.tsx';
import { saveFile } from '../plot/figureExport.ts';
import type { ShownQuantity } from '../server/types.ts';
import { systemsPage } from './lookQueries.ts';
import { fileNameOf, type LookProps } from './lookView.ts';
import { systemsAsCsv } from './systemsAsCsv.ts';

type SystemsExportProps = Pick<LookProps, 'search' | 'view'> & {
  quantities: readonly ShownQuantity[];
  count: number;
};

/** Saves the systems that are shown, and those that would follow, as one file. */
export function SystemsExport({ search, view, quantities, count }: SystemsExportProps) {
  const unexplored = view.show === 'unexplored';
  const saving = useMutation({
    mutationFn: async () => {
      const items: SystemView[] = [];
      for (let at: number | null = 0; at !== null; ) {
        const page: SystemsPage = await systemsPage(
          search.id,
          view.filters,
          unexplored ? 'no' : undefined,
          at,
        );
        items.push(...page.items);
        at = page.next;
      }
      const csv = systemsAsCsv(items, quantities);
      saveFile(new Blob([csv], { type: 'text/csv' }), `${fileNameOf(search, view.show)}.csv`);
    },
  });
  return (
    <>
      <p className="row">
        Export {count === 1 ? 'the system' : 'these systems'} as
        <button
          type="button"
          className="button-plain"
          aria-disabled={saving.isPending}
          onClick={() => saving.isPending || saving.mutate()}
        >
          {saving.isPending ? 'Gathering …' : 'CSV'}
        </button>
      </p>
      <FaultList error={saving.error} what="Nothing was saved; what is shown stays." />
    </>
  );
}
