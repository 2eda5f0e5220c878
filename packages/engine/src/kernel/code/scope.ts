import type { Test } from '../comparison/test.ts';
import type { Tests } from '../comparison/testsOf.ts';
import type { Code } from '../emit.ts';
import type { Form } from '../form.ts';
import type { Node } from '../node.ts';
import type { Guards } from './guards.ts';

/** Where the code of values finds what varies along the grid. */
export interface Sources {
  /** Puts P of a form on the stack. */
  form(form: Form): void;
  entropy(): void;
  system(step: number): void;
  tests: Tests;
}

/** Code of values and tests at one point; each value is formed once within a scope. */
export interface ValueCode {
  /** Puts the value of a node on the stack. */
  push(node: Node): void;
  /** Puts the mask of a test on the stack. */
  pushTest(test: Test): void;
  /** Puts the mask of points that some test so far leaves uncertain on the stack; false where there is none. */
  pushUncertain(): boolean;
  /** Code that may not be reached: it sees what was formed before it, and what it forms stays inside. */
  inner(): ValueCode;
}

/** What the code of an operation or a test is written with. */
export interface Scope extends ValueCode {
  code: Code;
  sources: Sources;
  guards: Guards;
  /** Puts something on the stack, from where it was kept if it was formed before. */
  once(key: string, form: () => void): void;
}
