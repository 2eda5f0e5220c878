import { gathered } from './gathered.ts';
import { bare, type Node, type Nodes } from './node.ts';

/** The same value with rough exponentials, as powers of two: quicker, and known less well. */
export type Roughen = (node: Node) => Node;

/** Of each node the same rough one whenever it is asked for, so that it is formed once at a point. */
export function roughener(nodes: Nodes, grid: { total: number; elements: number }): Roughen {
  const known = new Map<Node, Node>();

  function roughened(node: Node): Node {
    let rough = known.get(node);
    if (rough === undefined) {
      rough = made(node);
      known.set(node, rough);
    }
    return rough;
  }

  function made(node: Node): Node {
    const { operation } = node;
    if (operation.kind === 'exponential') {
      const exponent =
        gathered(nodes, operation.of, Math.LOG2E, grid) ??
        nodes.binary('multiply', nodes.constant(Math.LOG2E), operation.of);
      return nodes.unary('powerOfTwo', exponent, node);
    }
    switch (operation.kind) {
      case 'add':
      case 'subtract':
      case 'multiply':
      case 'divide':
      case 'lesser':
      case 'greater': {
        const [left, right] = [bare(operation.left), bare(operation.right)];
        const [first, second] = [roughened(left), roughened(right)];
        return first === left && second === right ? node : nodes.binary(operation.kind, first, second, node);
      }
      case 'power': {
        const of = bare(operation.of);
        const rough = roughened(of);
        return rough === of ? node : nodes.power(rough, operation.exponent, node);
      }
      case 'negate':
      case 'absolute':
      case 'squareRoot': {
        const of = bare(operation.of);
        const rough = roughened(of);
        return rough === of ? node : nodes.unary(operation.kind, rough, node);
      }
      default:
        return node;
    }
  }

  return roughened;
}
