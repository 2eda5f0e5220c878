import { type ProblemCode, type ProblemKind, problems } from './problems.ts';

/** One thing that is wrong: what (`detail`), where (`pointer`, a JSON pointer into the request), what would be right (`remedy`). */
export interface Fault {
  code: ProblemCode;
  pointer: string;
  detail: string;
  remedy: string;
}

export type ProblemValues = Record<string, string | number>;

/** States one fault by its code of the table, with the values that its text names. */
export function fault(code: ProblemCode, values: ProblemValues = {}, pointer = ''): Fault {
  const kind: ProblemKind = problems[code];
  const remedy = typeof kind.remedy === 'string' ? kind.remedy : kind.remedy(values as never);
  return { code, pointer, detail: kind.text(values as never), remedy };
}

/** Thrown at a package's edge. Carries every fault found, never only the first. */
export class ProblemError extends Error {
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(faults.map((one) => (one.pointer ? `${one.pointer}: ` : '') + one.detail).join('\n'));
    this.name = 'ProblemError';
    this.faults = faults;
  }
}

/** A single fault as an error, to throw. */
export function problem(code: ProblemCode, values: ProblemValues = {}, pointer = ''): ProblemError {
  return new ProblemError([fault(code, values, pointer)]);
}
