import { ProblemError } from '@tiegel/contract/terms';

/** Codes and pointers of what a function throws, in order; empty when it does not. */
export async function faultsOf(act: () => unknown): Promise<string[]> {
  try {
    await act();
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    return error.faults.map(({ code, pointer }) => (pointer === '' ? code : `${code} ${pointer}`));
  }
  return [];
}
