import type { SearchView } from '@tiegel/contract';
import { inDigits, scheduleInWords } from '@tiegel/contract/terms';
import { fittedTable } from './fittedTable.ts';
import { durationInWords, wrapped } from './inWords.ts';

/** What is left of a line for a name. */
const nameWidth = 28;

/** Searches as they stand, a line each. */
export function* standingTexts(all: readonly SearchView[]): Generator<string> {
  if (all.length === 0) {
    yield 'The service has no search yet: start one with "searches start FILE".\n';
    return;
  }
  const rows = all.map((view) => [
    view.id,
    view.state,
    doneOf(view),
    view.secondsLeft === null ? null : durationInWords(view.secondsLeft),
    timesOf(view),
    view.schedule.priority,
    short(view.name === '' ? view.question : view.name),
  ]);
  yield `${fittedTable(
    [
      { head: 'id', align: 'left' },
      { head: 'state', align: 'left' },
      { head: 'done' },
      { head: 'left' },
      { head: 'hours', align: 'left' },
      { head: 'priority', align: 'left' },
      { head: 'name', align: 'left' },
    ],
    rows,
  ).join('\n')}\n`;
  yield* zonesInWords(all);
}

function timesOf({ schedule: { hours } }: SearchView): string {
  return hours === null ? 'any time' : `${hours.from} to ${hours.to}`;
}

/** The names of zones are too long for a column. */
function* zonesInWords(all: readonly SearchView[]): Generator<string> {
  const timed = all.filter(({ schedule }) => schedule.hours !== null);
  const byZone = Map.groupBy(timed, ({ schedule }) => schedule.hours!.zone);
  for (const [zone, views] of byZone) {
    const whose = byZone.size === 1 ? '' : ` of ${views.map(({ id }) => id).join(', ')}`;
    yield `${wrapped(`Hours${whose} are those of ${zone}.`)}\n`;
  }
}

/** One search as it stands, in a sentence or two. */
export function* standingText(view: SearchView): Generator<string> {
  const { id, state, reason, progress } = view;
  const done = `${doneOf(view)} of ${inDigits(progress.total)} points done`;
  yield `${wrapped(`${id} is ${state}, ${done}.${reason === null ? '' : ` ${reason}`}`)}\n`;
}

/** When a search is worked on. */
export function* scheduledText({ id, schedule }: SearchView): Generator<string> {
  yield `${wrapped(`${id} is worked on ${scheduleInWords(schedule)}.`)}\n`;
}

/** Rounded down: 100 % is all of it. */
function doneOf({ progress: { points, total } }: SearchView): string {
  return total === 0 ? '–' : `${Math.floor((100 * points) / total)} %`;
}

const short = (text: string): string => (text.length > nameWidth ? `${text.slice(0, nameWidth - 1)}…` : text);
