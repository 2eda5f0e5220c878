import type { Atom, Test } from '../../kernel/comparison/test.ts';
import type { Form } from '../../kernel/form.ts';
import type { Node } from '../../kernel/node.ts';
import { sizeOf } from '../../kernel/slack.ts';
import type { Box } from '../boxes/box.ts';
import { boundsOfForm } from './boundsOfForm.ts';
import type { FormBounds } from './formBounds.ts';
import { nodeBounds } from './nodeBounds.ts';

/** What is known of a limit over a box: all points of it meet the limit, none does, or neither is known. */
export const all = 1;
export const none = -1;
export const open = 0;
export type Verdict = typeof all | typeof none | typeof open;

/** A limit over boxes of one system after another, as the canonical evaluator decides it. */
interface LimitRegion {
  verdict(box: Box): Verdict;
  /** Whether the verdict comes from all that the limit asks for, so that no other bound can say much more. */
  isWhole: boolean;
  /** The greatest degree of its forms. */
  degree: number;
}

/** Limits over boxes of one system after another. */
export interface LimitRegions {
  enter(members: readonly number[]): void;
  /** In the order of the limits. */
  limits: readonly LimitRegion[];
}

/**
 * Limits, as a kernel tests them, over boxes. What the kernel compares are polynomials, whose bounds
 * are sharp where those of a quotient, step by step, are not. A test that computes more than
 * polynomials is open.
 */
export function limitRegions(tests: readonly Test[], total: number, mostElements: number): LimitRegions {
  const known = new Map<Form, FormBounds>();

  function boundsOf(form: Form): FormBounds {
    const before = known.get(form) ?? equalTo(form);
    if (before) return before;
    const made = boundsOfForm(form, total, mostElements);
    known.set(form, made);
    return made;
  }

  /** Both sides of a limit ask for the same form, made twice. */
  function equalTo({ constant, linear, quadratic, degree }: Form): FormBounds | undefined {
    const same = (one: Float64Array | null, other: Float64Array | null) =>
      one === other || (one?.every((value, at) => value === other?.[at]) ?? false);
    for (const [form, bounds] of known) {
      const isEqual = form.constant === constant && form.degree === degree;
      if (isEqual && same(form.linear, linear) && same(form.quadratic, quadratic)) return bounds;
    }
    return undefined;
  }

  function regionOf(test: Test): LimitRegion {
    switch (test.kind) {
      case 'always':
        return { verdict: () => all, isWhole: true, degree: 0 };
      case 'never':
        return { verdict: () => none, isWhole: true, degree: 0 };
      case 'all':
      case 'any':
        return together(test.tests.map(regionOf), test.kind === 'all' ? none : all);
      case 'atom':
        break;
    }
    const { value, operator, threshold, guard } = test;
    if (value.kind === 'node') return nodeRegion(test, value.node);
    const bounds = boundsOf(value.form);
    const { degree } = value.form;
    const [lower, upper] = [threshold - guard, threshold + guard];
    const exact = guard === 0;
    // A point within tells which verdict cannot be, and so which end need not be known.
    switch (operator) {
      case '<=':
        return sides((box) => {
          const within = bounds.within(box);
          if (!(within < lower) && bounds.least(box) > upper) return none;
          if (within > upper) return open;
          const most = bounds.greatest(box);
          return most < lower || (exact && most === lower) ? all : open;
        });
      case '<':
        return sides((box) => {
          const within = bounds.within(box);
          if (!(within < lower)) {
            const least = bounds.least(box);
            if (least > upper || (exact && least === upper)) return none;
          }
          if (within > upper) return open;
          return bounds.greatest(box) < lower ? all : open;
        });
      case '>=':
        return sides((box) => {
          const within = bounds.within(box);
          if (!(within > upper) && bounds.greatest(box) < lower) return none;
          if (within < lower) return open;
          const least = bounds.least(box);
          return least > upper || (exact && least === upper) ? all : open;
        });
      case '>':
        return sides((box) => {
          const within = bounds.within(box);
          if (!(within > upper)) {
            const most = bounds.greatest(box);
            if (most < lower || (exact && most === lower)) return none;
          }
          if (within < lower) return open;
          return bounds.least(box) > upper ? all : open;
        });
    }

    function sides(verdict: (box: Box) => Verdict): LimitRegion {
      return { verdict, isWhole: true, degree };
    }
  }

  /** A node's ends are further away from the threshold than the kernel's value may be from the canonical one, or the box is open. */
  function nodeRegion({ operator, threshold, guard, unit, preview }: Atom, given: Node): LimitRegion {
    // Powers of two reach so far that a difference of exponents says much more than one of the sums.
    const node = preview?.node ?? given;
    const bounds = nodeBounds(node, total, boundsOf);
    if (bounds === null) return { verdict: () => open, isWhole: false, degree: 0 };
    const around = unit === null ? guard : guard * sizeOf(unit);
    const [lower, upper] = preview ? [preview.low, preview.high] : [threshold - around, threshold + around];
    const isUpper = operator === '<' || operator === '<=';
    const verdict = (box: Box): Verdict => {
      bounds.bound(box);
      const [isBelow, isAbove] = [bounds.high() < lower, bounds.low() > upper];
      if (!(isBelow || isAbove) || !bounds.isSure()) return open;
      if (isBelow !== isUpper) return none;
      return node.mayLack ? open : all;
    };
    return { verdict, isWhole: false, degree: 2 };
  }

  const limits = tests.map(regionOf);
  const entering = [...known.values()];
  return {
    enter(members) {
      for (const one of entering) one.enter(members);
    },
    limits,
  };
}

/** Regions of which one decides alone (none of all, all of any), and only together they decide the other way. */
function together(parts: readonly LimitRegion[], alone: Verdict): LimitRegion {
  const verdict = (box: Box): Verdict => {
    let result: Verdict = alone === none ? all : none;
    for (const part of parts) {
      const one = part.verdict(box);
      if (one === alone) return alone;
      if (one === open) result = open;
    }
    return result;
  };
  return {
    verdict,
    isWhole: parts.every(({ isWhole }) => isWhole),
    degree: Math.max(...parts.map(({ degree }) => degree)),
  };
}
