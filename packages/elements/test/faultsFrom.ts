import { type Fault, ProblemError } from '@tiegel/contract';

/** The faults that an action is refused with; fails where it is not refused, or breaks in another way. */
export function faultsFrom(action: () => unknown): readonly Fault[] {
  try {
    action();
  } catch (error) {
    if (error instanceof ProblemError) return error.faults;
    throw error;
  }
  throw new Error('nothing was refused');
}

/** The same as code and pointer, for comparing whole lists. */
export function codesFrom(action: () => unknown): string[] {
  return faultsFrom(action).map(({ code, pointer }) => `${code} ${pointer}`.trim());
}
