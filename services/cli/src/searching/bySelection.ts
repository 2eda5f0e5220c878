import { type Fault, ProblemError } from '@tiegel/contract/terms';
import type { LaboratoryOptions } from '../input/laboratoryOptions.ts';
import { boundsIn } from '../input/limitOptions.ts';
import type { SelectionOptions } from '../input/selectionOptions.ts';
import { inLaboratory, type Telling } from './inLaboratory.ts';

/**
 * The same as inLaboratory for candidates that options select: what is wrong names the option that it was
 * written at, not a place in a query that nobody wrote.
 */
export async function bySelection(
  options: LaboratoryOptions & SelectionOptions,
  told: Telling,
): Promise<void> {
  try {
    await inLaboratory(options, told);
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    throw new ProblemError(error.faults.map((one) => ({ ...one, pointer: optionOf(one, options) })));
  }
}

function optionOf({ pointer }: Fault, options: SelectionOptions): string {
  const [, first = '', place] = pointer.split('/');
  if (first === 'ranges') return boundsIn(options)[Number(place)]?.min === undefined ? '--max' : '--min';
  if (first === 'quantities' && 'between' in options) return '--between';
  return first in options ? `--${first}` : pointer;
}
