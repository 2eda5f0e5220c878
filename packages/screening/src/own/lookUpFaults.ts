import { type Fault, fault, nearest } from '@tiegel/contract/terms';
import { type FormulaNode, partsOf } from './formulaNode.ts';
import { functions } from './functions.ts';
import { partText } from './partText.ts';

/**
 * What a formula names and nobody knows: quantities, functions, a wrong number of values; and
 * numbers too large, or too near 0, to be one. Every fault with its place in the text.
 * @param ids of the quantities that may be named
 */
export function lookUpFaults(
  formula: FormulaNode,
  text: string,
  ids: readonly string[],
  pointer: string,
): Fault[] {
  const known = new Set(ids);
  const visit = (node: FormulaNode): Fault[] => [...faultsOf(node), ...partsOf(node).flatMap(visit)];

  function faultsOf(node: FormulaNode): Fault[] {
    const place = node.at[0] + 1;
    switch (node.kind) {
      case 'name': {
        const { name } = node;
        if (known.has(name)) return [];
        return [fault('expression/unknown-name', { place, name, near: nearest(name, ids) ?? '' }, pointer)];
      }
      case 'number':
        return Number.isFinite(node.value) && (node.value !== 0 || isWrittenAsZero(text, node))
          ? []
          : [fault('expression/number', { place, found: partText(text, node) }, pointer)];
      case 'call':
        return callFaults(node, place);
      default:
        return [];
    }
  }

  function callFaults({ name, values }: FormulaNode & { kind: 'call' }, place: number): Fault[] {
    const called = functions.get(name);
    if (!called) {
      const names = [...functions.keys()];
      const near = nearest(name, names) ?? '';
      return [fault('expression/unknown-function', { place, name, near, known: names.join(', ') }, pointer)];
    }
    const { least, most } = called.values;
    if (values.length >= least && values.length <= most) return [];
    const wanted = least === most ? `${least}` : `${least} to ${most}`;
    return [fault('expression/values', { place, name, wanted, given: values.length }, pointer)];
  }

  return visit(formula);
}

/** Whether a number that reads as 0 has no digit but 0 before its exponent: 1e-400 has. */
function isWrittenAsZero(text: string, { at }: FormulaNode): boolean {
  return !/^[^eE]*[1-9]/.test(text.slice(...at));
}
