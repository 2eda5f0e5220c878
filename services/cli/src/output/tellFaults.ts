import { type Fault, ProblemError, problems } from '@tiegel/contract/terms';

/**
 * Says on standard error what went wrong and gives the exit code: 1 where the request was wrong,
 * 2 for a fault. Only what nobody foresaw is shown with its stack.
 */
export function tellFaults(error: unknown): 1 | 2 {
  if (!(error instanceof ProblemError)) {
    console.error(error);
    return 2;
  }
  for (const fault of error.faults) console.error(inLines(fault));
  return error.faults.some(({ code }) => problems[code].exit === 2) ? 2 : 1;
}

/**
 * What and where, then what would be right, with the code by which a script knows it. A row of a file
 * goes by its line where that is told: rows are counted from 0 without the header, lines as editors do.
 */
function inLines({ code, pointer, detail, remedy }: Fault): string {
  const isToldByLine = /^\/rows\/\d/.test(pointer) && /\bline \d/i.test(detail);
  return `${pointer === '' || isToldByLine ? '' : `${pointer}: `}${detail}\n  ${remedy} [${code}]`;
}
