import type { SearchTask } from '../../kernel/kernelTask.ts';
import { bare, type Node } from '../../kernel/node.ts';
import type { Box } from '../boxes/box.ts';
import { sortPlaces, startOrder } from '../boxes/greedy.ts';

/** The least key that a ratio of two sums allows over boxes of one system after another. */
export interface RatioBound {
  enter(members: readonly number[]): void;
  /** No key of a point of the box, as it is computed canonically, is below this. */
  bestKey(box: Box): number;
}

/** Rounds at most; each comes much nearer than the last, so that two or three do. */
const mostRounds = 8;
/** So many times its size may what is added up here be off. */
const ROUNDING = 2 ** -44;

/**
 * The bound of a score that is a sum of degree 1 over a positive one, exact but for roundings: with
 * r the ratio at some point, A − rB is least at some other, whose ratio is no greater, and so on
 * until it stays (Dinkelbach's iteration). Null for other scores.
 */
export function ratioBound(task: SearchTask, mostElements: number): RatioBound | null {
  const parts = task.score && ratioOf(task.score);
  if (parts === null) return null;
  const { prefer, scoreSlack } = task;
  const { above, below } = parts;
  const sign = prefer === 'high' ? -1 : 1;
  const a = new Float64Array(mostElements);
  const b = new Float64Array(mostElements);
  const [firstA, firstB] = [
    sign * above.form.scale * above.form.constant,
    below.form.scale * below.form.constant,
  ];
  const slopes = new Float64Array(mostElements);
  const order = new Int32Array(mostElements);
  let size = 0;

  return {
    enter(members) {
      size = Math.abs(firstA);
      startOrder(order, 0, members.length);
      for (let at = 0; at < members.length; at += 1) {
        a[at] = sign * above.form.scale * above.form.linear[members[at]!]!;
        b[at] = below.form.scale * below.form.linear[members[at]!]!;
        size = Math.max(size, Math.abs(a[at]!) * task.total);
      }
    },
    bestKey({ low, high, total }) {
      const elements = low.length;
      let rest = total;
      let [cornerA, cornerB] = [firstA, firstB];
      for (let at = 0; at < elements; at += 1) {
        rest -= low[at]!;
        cornerA += a[at]! * low[at]!;
        cornerB += b[at]! * low[at]!;
      }
      // The middle of the box, or nearly: any point will do.
      let [middleA, middleB] = [cornerA, cornerB];
      let left = rest;
      for (let at = 0; at < elements && left > 0; at += 1) {
        const given = Math.min(left, high[at]! - low[at]!);
        middleA += a[at]! * given;
        middleB += b[at]! * given;
        left -= given;
      }
      let ratio = middleA / middleB;
      let excess = 0;
      for (let round = 1; ; round += 1) {
        for (let at = 0; at < elements; at += 1) slopes[at] = a[at]! - ratio * b[at]!;
        sortPlaces(slopes, 0, order, 0, elements);
        let [sumA, sumB] = [cornerA, cornerB];
        left = rest;
        for (let place = 0; left > 0; place += 1) {
          const at = order[place]!;
          const width = high[at]! - low[at]!;
          const given = Math.min(width, left);
          sumA += a[at]! * given;
          sumB += b[at]! * given;
          left -= given;
        }
        excess = sumA - ratio * sumB;
        const next = sumA / sumB;
        // The excess is that over this ratio: of the next one nothing is known before another round.
        if (!(next < ratio) || round === mostRounds) break;
        ratio = next;
      }
      // Anywhere A − rB is at least this excess; what is rounded goes with it.
      const margin = (ROUNDING * (size + Math.abs(ratio) * below.high) - Math.min(0, excess)) / below.low;
      const bound = ratio - margin;
      return (
        bound -
        (1.01 * (scoreSlack.absolute + scoreSlack.relative * Math.abs(bound)) + ROUNDING * Math.abs(bound))
      );
    },
  };
}

/** The two sums whose ratio a node is. */
function ratioOf(node: Node): { above: Sum; below: Sum } | null {
  const { operation } = bare(node);
  if (operation.kind !== 'divide') return null;
  const [left, right] = [bare(operation.left), bare(operation.right)];
  if (left.form?.form.degree !== 1 || right.form?.form.degree !== 1 || !(right.low > 0)) return null;
  return { above: { ...left, form: left.form.form }, below: { ...right, form: right.form.form } };
}

type Sum = Pick<Node, 'low' | 'high'> & { form: NonNullable<Node['form']>['form'] };
