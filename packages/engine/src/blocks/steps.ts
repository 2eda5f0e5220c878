import type { Program, Step } from '@tiegel/screening';

/** A sum over the elements present, by their amounts. */
export type SumStep = Extract<Step, { kind: 'linear' | 'pairs' | 'entropy' }>;
/** An extreme over the elements present: the same at all points of a system. */
type ExtremeStep = Extract<Step, { kind: 'least' | 'greatest' | 'leastPair' | 'greatestPair' }>;
type ConstantStep = Extract<Step, { kind: 'constant' }>;
/** What computes from other steps, at each point by itself. */
export type OperatorStep = Exclude<Step, SumStep | ExtremeStep | ConstantStep>;

export function isSum(step: Step): step is SumStep {
  return step.kind === 'linear' || step.kind === 'pairs' || step.kind === 'entropy';
}

export function isOperator(step: Step): step is OperatorStep {
  return 'of' in step || 'left' in step;
}

/** The steps that an operator reads. */
function operandsOf(step: OperatorStep): number[] {
  if ('of' in step) return [step.of];
  const { left, right } = step;
  if (step.kind !== 'choose') return [left, right];
  return [left, right, step.then, ...(step.otherwise === null ? [] : [step.otherwise])];
}

/** The steps that some steps need, themselves included. */
export function stepsBehind({ steps }: Program, of: readonly number[]): Set<number> {
  const found = new Set(of);
  for (let number = steps.length - 1; number >= 0; number -= 1) {
    const step = steps[number]!;
    if (found.has(number) && isOperator(step)) for (const operand of operandsOf(step)) found.add(operand);
  }
  return found;
}

/** Whether a step differs from point to point, only from system to system, or not at all. */
export type Variation = 'point' | 'system' | 'none';

/** How each step of a program varies. */
export function variationsOf({ steps }: Program): Variation[] {
  const variations: Variation[] = [];
  for (const step of steps) {
    if (isSum(step)) variations.push('point');
    else if (isOperator(step)) {
      const operands = operandsOf(step).map((operand) => variations[operand]);
      const most = (['point', 'system'] as const).find((one) => operands.includes(one));
      variations.push(most ?? 'none');
    } else variations.push(step.kind === 'constant' ? 'none' : 'system');
  }
  return variations;
}
