import { ProblemError } from '@tiegel/contract/terms';

/** What an error says to people, in whole sentences. */
export function textOf(error: unknown): string {
  if (error instanceof ProblemError) {
    return error.faults.map(({ detail, remedy }) => `${detail} ${remedy}`).join(' ');
  }
  const text = error instanceof Error ? error.message : String(error);
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
