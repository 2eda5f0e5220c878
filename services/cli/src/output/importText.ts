import type { DataVersions, FateCounts, ImportPreview, ImportVersion } from '@tiegel/contract';
import { fates } from '@tiegel/contract';
import { spacedComposition } from '@tiegel/elements';
import type { KnownAlloy } from '@tiegel/search';
import { fittedTable } from './fittedTable.ts';

const inWords = (counts: FateCounts): string => fates.map((fate) => `${counts[fate]} ${fate}`).join(', ');

/** The same without what did not happen, each number tied to its word: in a narrow column a line ends between them. */
const happened = (counts: FateCounts): string =>
  fates
    .filter((fate) => counts[fate] > 0)
    .map((fate) => `${counts[fate]}\u00a0${fate}`)
    .join(', ');

/** The fate of every row, what is wrong with it, and whether the file can be stored. */
export function* previewLines({ rows, counts, faults, lost, storable }: ImportPreview): Generator<string> {
  for (const { detail, remedy } of faults) yield `${detail} ${remedy}\n`;
  for (const { line, text, fate, before, faults: wrong } of rows) {
    yield `${String(line).padStart(4)}  ${fate.padEnd(7)}  ${text}\n`;
    if (fate === 'changed') yield `      before   ${before}\n`;
    for (const { detail, remedy } of wrong) yield `      ${detail} ${remedy}\n`;
  }
  for (const one of lost) yield `      lost     ${one}\n`;
  yield `${inWords(counts)}. ${storable ? 'It can be stored; nothing is yet.' : 'It cannot be stored like that.'}\n`;
}

/** Imports, a line each. */
export function* versionLines(versions: readonly ImportVersion[]): Generator<string> {
  if (versions.length === 0) {
    yield 'Nothing was brought in.\n';
    return;
  }
  const rows = versions.map(({ number, kind, name, at, rows, counts, inForce, withdrawnAt, searches }) => [
    ...[String(number), kind, at.slice(0, 16).replace('T', ' '), String(rows), happened(counts)],
    inForce ? 'in force' : withdrawnAt === null ? 'newer rows hold' : 'withdrawn',
    ...[String(searches), name],
  ]);
  const left = (head: string) => ({ head, align: 'left' as const });
  const columns = [
    ...[{ head: 'no.' }, left('kind'), left('stored (UTC)'), { head: 'rows' }, left('became')],
    ...[left('now'), { head: 'searches' }, left('name')],
  ];
  yield `${fittedTable(columns, rows).join('\n')}\n`;
}

/** Versions of the data with their searches below them. */
export function* versionsLines({ items }: DataVersions): Generator<string> {
  for (const { dataVersion, current, searches, with: imports } of items) {
    const own = imports.map(({ number, kind, name }) => `${number} ${kind}${name === '' ? '' : ` ${name}`}`);
    yield `${dataVersion}${current ? ', in force' : ''}, ${own.length === 0 ? 'the program’s own data' : `with ${own.join('; ')}`}\n`;
    for (const { id, name, createdAt } of searches)
      yield `  ${id}  ${createdAt.slice(0, 16).replace('T', ' ')} UTC  ${name}\n`;
    if (searches.length === 0) yield '  no search yet\n';
  }
}

/** Known alloys, a line each; those that were brought in have the number of their import. */
export function* alloyLines(alloys: readonly KnownAlloy[]): Generator<string> {
  for (const { composition, name, phases, process, doi, import: from } of alloys) {
    const said = [phases ?? 'no phases told', process, ...doi].filter((one) => one !== null);
    yield `${spacedComposition(composition)}  ${said.join(', ')}  ${from === null ? name : `${name} (own, import ${from})`}\n`;
  }
  yield `${alloys.length} ${alloys.length === 1 ? 'alloy' : 'alloys'}, at.%. The published ones are a part of what is published.\n`;
}
