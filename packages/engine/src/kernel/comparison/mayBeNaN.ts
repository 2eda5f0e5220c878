import { bare, type Node } from '../node.ts';

/** A node that may be infinite has an infinite end. */
export function mayBeInfinite({ low, high, mayLack }: Node): boolean {
  return mayLack && !(Number.isFinite(low) && Number.isFinite(high));
}

/** Whether a node may be NaN, and not only infinite. */
export function mayBeNaN(node: Node): boolean {
  if (!node.mayLack) return false;
  const { operation } = bare(node);
  switch (operation.kind) {
    case 'form':
    case 'entropy':
      return false;
    case 'constant':
      return Number.isNaN(operation.value);
    case 'absolute':
    case 'negate':
    case 'exponential':
    case 'powerOfTwo':
      return mayBeNaN(operation.of);
    case 'divide': {
      const [above, below] = [operation.left, bare(operation.right)];
      const zeros = above.low <= 0 && above.high >= 0 && below.low <= 0 && below.high >= 0;
      return zeros || above.mayLack || below.mayLack;
    }
    case 'lesser':
    case 'greater':
      return mayBeNaN(operation.left) || mayBeNaN(operation.right);
    default:
      return true;
  }
}
