import type { Test } from '../comparison/test.ts';
import type { Tests } from '../comparison/testsOf.ts';
import type { Form } from '../form.ts';
import { formKey } from '../formKey.ts';
import type { Node } from '../node.ts';

/** What tests and nodes are computed from. */
export interface Needs {
  /** Each once, in the order in which they are met. */
  forms: Form[];
  entropy: boolean;
  /** Steps that are one number for each system. */
  constants: number[];
}

/** Finds what some tests and some nodes are computed from; what the tests need comes first. */
export function needsOf(given: readonly Test[], nodes: readonly Node[], tests: Tests): Needs {
  const forms = new Map<string, Form>();
  const constants = new Set<number>();
  const visited = new Set<Node>();
  let entropy = false;

  const addForm = (form: Form): void => {
    const key = formKey(form);
    if (!forms.has(key)) forms.set(key, form);
  };

  function visitTest(test: Test): void {
    if ('tests' in test) test.tests.forEach(visitTest);
    if (test.kind !== 'atom') return;
    if (test.value.kind === 'form') addForm(test.value.form);
    else visit(test.value.node);
    if (test.unit) visit(test.unit);
    if (test.preview) visit(test.preview.node);
  }

  function visit(node: Node): void {
    if (visited.has(node)) return;
    visited.add(node);
    const { operation } = node;
    if (operation.kind === 'form') addForm(operation.base);
    else if (operation.kind === 'entropy') entropy = true;
    else if (operation.kind === 'system') constants.add(operation.step);
    else if (operation.kind === 'choose') visitChoice(operation);
    else if ('of' in operation) visit(operation.of);
    else if ('left' in operation) [operation.left, operation.right].forEach(visit);
    if (operation.kind === 'away') visit(operation.guard);
  }

  function visitChoice({ when, then, otherwise }: Extract<Node['operation'], { kind: 'choose' }>): void {
    visitTest(tests.holds(when));
    visitTest(tests.failsToHold(when));
    visit(then);
    if (otherwise) visit(otherwise);
  }

  given.forEach(visitTest);
  nodes.forEach(visit);
  return { forms: [...forms.values()], entropy, constants: [...constants] };
}
