import { EPSILON, type Form, roundingOf, scaledForm, sumOfForms } from './form.ts';
import { bare, fixedValue, type Node, type Nodes } from './node.ts';
import { absoluteOf, ROUNDED, sizeOf } from './slack.ts';

/**
 * factor · node with the terms of its sums put together: all that are polynomials of the parts become
 * one form, built up along the grid as one number. Null where there is nothing to put together.
 *
 * The canonical evaluator adds term by term; how far its sum may lie from the real one, and the real
 * one from the kernel's, becomes the slack of the result.
 */
export function gathered(
  nodes: Nodes,
  node: Node,
  factor: number,
  grid: { total: number; elements: number },
): Node | null {
  let form: Form | null = null;
  let error = 0;
  let sizes = 0;
  let terms = 0;
  const others: { of: Node; times: number }[] = [];

  function visit(given: Node, times: number): boolean {
    const one = bare(given);
    const { operation } = one;
    if (one.mayLack || !Number.isFinite(times) || times === 0) return false;
    terms += 1;
    if (one.form) {
      const scaled = scaledForm(one.form.form, times);
      form = form ? sumOfForms(form, scaled, 1, grid.total) : scaled;
      error += Math.abs(times) * absoluteOf({ ...one, slack: one.form.slack });
      sizes += Math.abs(times) * sizeOf(one);
      return true;
    }
    error += 2 * EPSILON * Math.abs(times) * sizeOf(one);
    switch (operation.kind) {
      case 'negate':
        return visit(operation.of, -times);
      case 'add':
        return visit(operation.left, times) && visit(operation.right, times);
      case 'subtract':
        return visit(operation.left, times) && visit(operation.right, -times);
      case 'multiply': {
        const [left, right] = [fixedValue(operation.left), fixedValue(operation.right)];
        if (left !== null) return visit(operation.right, times * left);
        if (right !== null) return visit(operation.left, times * right);
      }
    }
    others.push({ of: one, times });
    error += Math.abs(times) * absoluteOf(one);
    sizes += Math.abs(times) * sizeOf(one);
    return true;
  }

  if (!visit(node, factor) || form === null || terms < 2) return null;
  const [one, other] = [factor * node.low, factor * node.high];
  const ends = { low: Math.min(one, other), high: Math.max(one, other), mayLack: false };
  // What is not yet the whole sum has no canonical value whose ends are known.
  const part = { low: -sizes, high: sizes, mayLack: false };
  const base = unscaled(form);
  const rounding = roundingOf(base, grid.total, grid.elements) + ROUNDED * (terms + 2) * sizes;
  const sum = nodes.form(base, { absolute: error + rounding, relative: 0 }, others.length > 0 ? part : ends);
  return others.reduce((before, { of, times }, at) => {
    const term = nodes.binary('multiply', of, nodes.constant(times));
    return nodes.binary('add', before, term, at === others.length - 1 ? ends : part);
  }, sum);
}

/** The same with a scale of 1: nothing is left to be multiplied at a point. */
function unscaled(form: Form): Form {
  const { scale, constant, linear, quadratic } = form;
  if (scale === 1) return form;
  return {
    ...form,
    ...{ scale: 1, exact: false, constant: scale * constant },
    linear: linear.map((value) => scale * value),
    quadratic: quadratic?.map((value) => scale * value) ?? null,
  };
}
