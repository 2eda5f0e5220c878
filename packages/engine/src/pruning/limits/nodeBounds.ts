import { entropyTerm } from '@tiegel/screening';
import type { Form } from '../../kernel/form.ts';
import type { Node } from '../../kernel/node.ts';
import type { Box } from '../boxes/box.ts';
import { greatestEntropy, leastEntropy } from '../boxes/boxEntropy.ts';
import type { FormBounds } from './formBounds.ts';

/** Far more than the last operation rounds. */
const ROUNDING = 2 ** -50;
/** exp, ln and powers are not promised to round correctly. */
const CURVED = 2 ** -46;

/** Ends of what a node of a kernel is, in real arithmetic, over boxes of one system after another. */
export interface NodeBounds {
  /** Turns to a box of the system that the bounds of the forms were turned to. */
  bound(box: Box): void;
  low(): number;
  high(): number;
  /** Whether no point of the box is one that the kernel leaves to the canonical evaluator, since a number is near 0. */
  isSure(): boolean;
}

/**
 * Bounds a node by intervals, from the bounds of the polynomials in it. What is not followed further
 * keeps the ends that it has on the whole grid. Null where only those are known.
 *
 * @param boundsOf the bounds of a form, which are turned from system to system elsewhere
 */
export function nodeBounds(
  root: Node,
  total: number,
  boundsOf: (form: Form) => FormBounds,
): NodeBounds | null {
  const order: ((box: Box) => void)[] = [];
  const places = new Map<Node, number>();
  const low: number[] = [];
  const high: number[] = [];
  let terms: Float64Array | null = null;

  const kept: { guard: number; least: number }[] = [];

  /** Where a node's ends stand; what they are made of stands before them. */
  function placeOf(given: Node): number {
    const { operation } = given;
    if (operation.kind === 'away') {
      kept.push({ guard: placeOf(operation.guard), least: operation.least });
      return placeOf(operation.of);
    }
    const node = given;
    const before = places.get(node);
    if (before !== undefined) return before;
    const make = makerOf(node);
    const place = low.length;
    places.set(node, place);
    low.push(node.low);
    high.push(node.high);
    if (make) order.push((box) => make(box, place));
    return place;
  }

  /** Sets ends, outwards by a share of their size and no further than the whole grid has them. */
  function set(place: number, from: number, until: number, rounding: number): void {
    low[place] = from - Math.abs(from) * rounding;
    high[place] = until + Math.abs(until) * rounding;
  }

  function makerOf(node: Node): ((box: Box, place: number) => void) | null {
    const { operation, form } = node;
    if (operation.kind === 'form') {
      const { base, factor } = operation;
      const bounds = boundsOf(base);
      return (box, place) => {
        const [from, until] = [factor * bounds.least(box), factor * bounds.greatest(box)];
        set(place, Math.min(from, until), Math.max(from, until), ROUNDING);
      };
    }
    if (form && form.form.degree > 0) {
      const bounds = boundsOf(form.form);
      const { scale } = form.form;
      return (box, place) => set(place, scale * bounds.least(box), scale * bounds.greatest(box), ROUNDING);
    }
    switch (operation.kind) {
      case 'entropy':
        terms ??= Float64Array.from({ length: total + 1 }, (_, parts) => 0 - entropyTerm(parts / total));
        return (box, place) => set(place, leastEntropy(box, terms!), greatestEntropy(box, terms!), ROUNDING);
      case 'add':
      case 'subtract':
      case 'multiply':
      case 'divide':
      case 'lesser':
      case 'greater':
        return binary(operation.kind, placeOf(operation.left), placeOf(operation.right));
      case 'negate': {
        const of = placeOf(operation.of);
        return (_, place) => set(place, -high[of]!, -low[of]!, 0);
      }
      case 'absolute': {
        const of = placeOf(operation.of);
        return (_, place) => {
          const [from, until] = [low[of]!, high[of]!];
          const least = from > 0 ? from : until < 0 ? -until : 0;
          set(place, least, Math.max(-from, until), 0);
        };
      }
      case 'squareRoot': {
        const of = placeOf(operation.of);
        return (_, place) =>
          set(place, Math.sqrt(Math.max(0, low[of]!)), Math.sqrt(Math.max(0, high[of]!)), ROUNDING);
      }
      case 'powerOfTwo': {
        const of = placeOf(operation.of);
        return (_, place) => set(place, 2 ** low[of]!, 2 ** high[of]!, CURVED);
      }
      case 'exponential': {
        const of = placeOf(operation.of);
        return (_, place) => set(place, Math.exp(low[of]!), Math.exp(high[of]!), CURVED);
      }
      default:
        return null;
    }
  }

  function binary(
    kind: 'add' | 'subtract' | 'multiply' | 'divide' | 'lesser' | 'greater',
    a: number,
    b: number,
  ): (box: Box, place: number) => void {
    switch (kind) {
      case 'add':
        return (_, place) => set(place, low[a]! + low[b]!, high[a]! + high[b]!, ROUNDING);
      case 'subtract':
        return (_, place) => set(place, low[a]! - high[b]!, high[a]! - low[b]!, ROUNDING);
      case 'lesser':
        return (_, place) => set(place, Math.min(low[a]!, low[b]!), Math.min(high[a]!, high[b]!), 0);
      case 'greater':
        return (_, place) => set(place, Math.max(low[a]!, low[b]!), Math.max(high[a]!, high[b]!), 0);
      case 'multiply':
        return (_, place) => {
          const [one, two, three, four] = [
            low[a]! * low[b]!,
            low[a]! * high[b]!,
            high[a]! * low[b]!,
            high[a]! * high[b]!,
          ];
          set(place, Math.min(one, two, three, four), Math.max(one, two, three, four), ROUNDING);
        };
      case 'divide':
        return (_, place) => {
          if (!(low[b]! > 0 || high[b]! < 0)) {
            set(place, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, 0);
            return;
          }
          const [one, two, three, four] = [
            low[a]! / low[b]!,
            low[a]! / high[b]!,
            high[a]! / low[b]!,
            high[a]! / high[b]!,
          ];
          set(place, Math.min(one, two, three, four), Math.max(one, two, three, four), ROUNDING);
        };
    }
  }

  const place = placeOf(root);
  if (order.length === 0) return null;
  return {
    bound(box) {
      for (let at = 0; at < order.length; at += 1) order[at]!(box);
    },
    low: () => low[place]!,
    high: () => high[place]!,
    isSure: () => kept.every(({ guard, least }) => low[guard]! > least || high[guard]! < -least),
  };
}
