import { distributionsRequest, type Fault, faultsOf, ProblemError } from '@tiegel/contract';
import { columnsOf, quantities } from '@tiegel/screening';

/** The specification inside has a check of its own. */
const form = distributionsRequest();
/** Points that are drawn where nobody says how many. */
const usuallyDrawn = 2_000;

/** A question as it was asked, with its defaults. */
export interface DistributionsAsked {
  specification: unknown;
  /** null: those that are limited or ranked */
  quantities: string[] | null;
  sample: number;
  seed: number;
  compositions: boolean;
}

/** What is ranked where nobody says it, so that the check of a search can be used: it needs no data and is taken off again. */
const idle = quantities.find((one) => Object.values(columnsOf(one)).every((of) => of.length === 0))!;

/** Reads a question as it came. Throws a ProblemError with the faults of its form. */
export function readDistributionsRequest(request: unknown): DistributionsAsked & { ranked: boolean } {
  const faults = faultsOf(form, request);
  if (faults.length > 0) throw new ProblemError(faults);
  const { specification, ...asked } = form.parse(request);
  const ranked = 'rank' in specification;
  return {
    ...{ quantities: null, sample: usuallyDrawn, seed: 1, compositions: false, ...asked },
    specification: ranked
      ? specification
      : { ...specification, rank: [{ quantity: idle.id, prefer: 'low' }] },
    ranked,
  };
}

/** Does what may refuse a specification, whose faults then lie inside the question. */
export function inSpecification<Checked>(check: () => Checked): Checked {
  try {
    return check();
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    throw new ProblemError(
      error.faults.map((one): Fault => ({ ...one, pointer: `/specification${one.pointer}` })),
    );
  }
}
