import type { SearchView } from '@tiegel/contract';
import { hoursInWords, inDigits, scheduleInWords } from '@tiegel/contract/terms';
import { durationInWords, wrapped } from './inWords.ts';
import { table } from './table.ts';

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
    view.schedule.hours === null ? 'any time' : hoursInWords(view.schedule.hours),
    view.schedule.priority,
    short(view.name === '' ? view.question : view.name),
  ]);
  yield `${table(
    [
      { head: 'id', align: 'left' },
      { head: 'state', align: 'left' },
      { head: 'done' },
      { head: 'left' },
      { head: 'hours', align: 'left' },
      { head: 'priority', align: 'left' },
      { head: 'name or question', align: 'left' },
    ],
    rows,
  ).join('\n')}\n`;
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
