import type { Code, Local } from '../emit.ts';
import { guardsIn } from './guards.ts';
import { pushOperation } from './operationCode.ts';
import type { Scope, Sources, ValueCode } from './scope.ts';
import { pushTest } from './testCode.ts';

/** @param outer what was formed before, by key */
export function valueCode(code: Code, sources: Sources, outer = new Map<string, Local>()): ValueCode {
  const formed = new Map(outer);
  const guards = guardsIn(code);
  const scope: Scope = {
    ...{ code, sources, guards },
    once(key, form) {
      const known = formed.get(key);
      if (known !== undefined) {
        code.get(known);
        return;
      }
      form();
      const local = code.local('v128');
      code.tee(local);
      formed.set(key, local);
    },
    push(node) {
      const { operation } = node;
      if (operation.kind === 'constant') code.splat(operation.value);
      else scope.once(`node ${node.id}`, () => pushOperation(scope, node));
    },
    pushTest: (test) => pushTest(scope, test),
    pushUncertain: guards.pushUncertain,
    inner: () => valueCode(code, sources, formed),
  };
  return scope;
}
