import { productOfForms, scaledForm, sumOfForms } from './form.ts';
import type { BinaryKind, Node } from './node.ts';
import { type Known, ROUNDED, slackOf } from './slack.ts';

/** What is known of −node. */
export const negated = (of: Known): Known => ({ ...of, low: -of.high, high: -of.low });

/** The polynomial of factor · node; null where it has none. */
export function scaledFormOf({ form }: Node, factor: number): Node['form'] {
  if (form === null || factor === 0 || !Number.isFinite(factor)) return null;
  const { absolute, relative } = form.slack;
  const slack = { absolute: absolute * Math.abs(factor), relative: relative + ROUNDED };
  return { form: scaledForm(form.form, factor), slack };
}

/** The polynomial of two nodes together; null where it has none, or too high a degree. */
export function formOf(kind: BinaryKind, left: Node, right: Node, total: number): Node['form'] {
  if (left.form === null || right.form === null) return null;
  const [one, other] = [
    { ...left, slack: left.form.slack },
    { ...right, slack: right.form.slack },
  ];
  if (kind === 'add' || kind === 'subtract') {
    const sign = kind === 'add' ? 1 : -1;
    const form = sumOfForms(left.form.form, right.form.form, sign, total);
    return { form, slack: slackOf.add(one, sign === 1 ? other : negated(other)) };
  }
  if (kind !== 'multiply') return null;
  const form = productOfForms(left.form.form, right.form.form, total);
  return form && { form, slack: slackOf.multiply(one, other) };
}
