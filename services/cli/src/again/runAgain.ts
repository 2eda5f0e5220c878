import type { Counts, SearchView } from '@tiegel/contract';
import { problem } from '@tiegel/contract/terms';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';
import { openSearching, type SearchingOptions } from '../searching/openSearching.ts';
import { candidatesOf, everyCandidate, runSearch } from '../searching/runSearch.ts';
import { type Comparison, compareRows } from './compareRows.ts';
import { type ExportedHead, openExport } from './openExport.ts';

/** What running an export's specification anew has shown. */
interface Again extends Comparison {
  counts: { was: unknown; is: Counts; same: boolean };
  dataVersion: { was: string; is: string };
  engineVersion: { was: string; is: string };
}

/**
 * `search --again FILE`: whether the same rows come out. Where they do not, the versions say why:
 * other data or another engine (a wrong request), or neither, which must not be (a fault).
 * @throws ProblemError export/other-versions, export/not-reproduced, and those of the search
 */
export async function runAgain(file: string, options: SearchingOptions & { json?: true }): Promise<void> {
  const { head, rows } = await openExport(file);
  const { searches, close } = await openSearching(options);
  try {
    const view = await runSearch(searches, withNameOnOneLine(head.specification), options.database);
    const query = { ...everyCandidate, ...head.selection };
    const comparison = await compareRows(rows, candidatesOf(searches, view.id, query));
    const again = resultOf(head, view, comparison);
    await standardOutput(options.json ? jsonText(again) : inWords(again));
    refuseDifference(again);
  } finally {
    await close();
  }
}

/** Names were once let through with separators of lines; the rows do not depend on a name, so such an export still runs. */
function withNameOnOneLine(specification: unknown): unknown {
  const { name } = Object(specification) as { name?: unknown };
  if (typeof name !== 'string') return specification;
  return { ...Object(specification), name: name.replaceAll(/[\p{Zl}\p{Zp}]/gu, ' ') };
}

function resultOf(head: ExportedHead, view: SearchView, comparison: Comparison): Again {
  const countsSame = JSON.stringify(head.counts) === JSON.stringify(view.counts);
  return {
    ...comparison,
    same: comparison.same && countsSame,
    counts: { was: head.counts, is: view.counts, same: countsSame },
    dataVersion: { was: head.dataVersion, is: view.dataVersion },
    engineVersion: { was: head.engineVersion, is: view.engineVersion },
  };
}

function* inWords({ same, rows, differing, differences, counts }: Again): Generator<string> {
  if (same) yield `The same ${rows} rows and counts.\n`;
  else yield `${differing} of ${rows} rows differ; the counts are ${counts.same ? 'the same' : 'others'}.\n`;
  for (const { row, column, was, is } of differences) yield `  row ${row}, ${column}: was ${was}, is ${is}\n`;
}

function refuseDifference({ same, dataVersion, engineVersion }: Again): void {
  if (same) return;
  const others = [
    ...(dataVersion.was === dataVersion.is ? [] : ['the data (elements, pairs or prices)']),
    ...(engineVersion.was === engineVersion.is ? [] : ['the engine']),
  ];
  if (others.length > 0) throw problem('export/other-versions', { what: others.join(' and ') });
  throw problem('export/not-reproduced');
}
