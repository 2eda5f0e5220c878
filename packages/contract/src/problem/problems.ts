import type { ProblemKind } from './problemKind.ts';
import { accessProblems } from './table/access.ts';
import { alloyProblems } from './table/alloys.ts';
import { columnProblems } from './table/columns.ts';
import { expressionProblems } from './table/expressions.ts';
import { fileProblems } from './table/files.ts';
import { importProblems } from './table/imports.ts';
import { laboratoryProblems } from './table/laboratory.ts';
import { materialProblems } from './table/materials.ts';
import { priceProblems } from './table/prices.ts';
import { requestProblems } from './table/requests.ts';
import { searchProblems } from './table/searches.ts';
import { serverProblems } from './table/server.ts';
import { specificationProblems } from './table/specifications.ts';
import { storeProblems } from './table/store.ts';

export type { ProblemKind } from './problemKind.ts';

/**
 * The one table of errors: terminal, HTTP and docs derive from it. Codes are area/what. A text
 * says what is wrong and a remedy what would be right, each a whole sentence.
 */
export const problems = {
  ...accessProblems,
  ...alloyProblems,
  ...specificationProblems,
  ...expressionProblems,
  ...searchProblems,
  ...priceProblems,
  ...columnProblems,
  ...materialProblems,
  ...importProblems,
  ...requestProblems,
  ...serverProblems,
  ...storeProblems,
  ...laboratoryProblems,
  ...fileProblems,
} satisfies Record<string, ProblemKind>;

export type ProblemCode = keyof typeof problems;
