import type { CandidatePage, SearchView, SystemsPage } from '@tiegel/contract';
import { inDigits } from '@tiegel/contract/terms';
import { spacedComposition } from '@tiegel/elements';
import { fittedTable } from './fittedTable.ts';
import { wrapped } from './inWords.ts';
import { candidateTable } from './searchText.ts';

/** Searches for reading, a line each. */
export function* searchesText(all: readonly SearchView[]): Generator<string> {
  if (all.length === 0) {
    yield 'No search is in this database yet: run one with "search FILE --database FILE".\n';
    return;
  }
  const rows = all.map(({ id, createdAt, state, kept, name, question }) => [
    id,
    createdAt.slice(0, 16).replace('T', ' '),
    state,
    inDigits(kept),
    short(name === '' ? question : name),
  ]);
  yield `${fittedTable(
    [
      { head: 'id', align: 'left' },
      { head: 'asked', unit: 'UTC', align: 'left' },
      { head: 'state', align: 'left' },
      { head: 'kept' },
      { head: 'name or question', align: 'left' },
    ],
    rows,
  ).join('\n')}\n`;
  for (const { id, state, reason } of all) {
    if (reason !== null && (state === 'paused' || state === 'failed'))
      yield `\n${wrapped(`${id} is ${state}. ${reason}`)}\n`;
  }
}

/** Candidates that a search kept, for reading. */
export function* candidatesText(view: SearchView, { items, among }: CandidatePage): Generator<string> {
  yield `${wrapped(view.question)}\n\n`;
  if (items.length === 0) {
    yield `None of the ${inDigits(among.kept)} kept candidates meets all of this: leave something out.\n`;
    return;
  }
  yield `${candidateTable(view, items, view.prices).join('\n')}\n`;
  yield `\n${inDigits(items.length)} of ${inDigits(among.kept)} kept; every value with --json.\n`;
  if (view.prices?.invented) yield `Prices of ${view.prices.date}, invented for demonstration.\n`;
}

/** Systems by their best candidate, and how much of them is explored. */
export function* systemsText(
  view: SearchView,
  items: SystemsPage['items'],
  explored: SystemsPage['explored'],
): Generator<string> {
  yield `${wrapped(view.question)}\n\n`;
  const known = `${inDigits(explored.keptExplored)} of them have a published alloy, one of your own or a melt`;
  const all = `${inDigits(explored.kept)} of ${inDigits(explored.systems)} systems have kept candidates`;
  yield `${wrapped(`${all}; ${known}.`)}\n`;
  const rows = items.map(({ system, kept, best, published, melts, own }) => [
    String(best.rank),
    system,
    spacedComposition(best.composition),
    inDigits(kept),
    String(published?.alloys ?? 0),
    String(own),
    String(melts),
  ]);
  if (rows.length > 0)
    yield `\n${fittedTable(
      [
        { head: 'rank' },
        { head: 'system', align: 'left' },
        { head: 'best candidate', unit: 'at.%', align: 'left' },
        { head: 'kept' },
        { head: 'published' },
        { head: 'own' },
        { head: 'melts' },
      ],
      rows,
    ).join('\n')}\n`;
  yield `\n${wrapped(explored.trust)}\n`;
}

/** What is left of a line for a name. */
const nameWidth = 40;

const short = (text: string): string => (text.length > nameWidth ? `${text.slice(0, nameWidth - 1)}…` : text);
