import type { ProblemKind } from '../problemKind.ts';
import { orMeant } from './words.ts';

/** What a search asks. */
export const specificationProblems = {
  'specification/too-many-lets': {
    status: 400,
    exit: 1,
    text: ({ count, limit }: { count: number; limit: number }) =>
      `There are ${count} expressions of one’s own; at most ${limit} are read.`,
    remedy: 'Leave out those that nothing names.',
  },
  'specification/front-repeated': {
    status: 400,
    exit: 1,
    text: ({ quantity }: { quantity: string }) =>
      `"${quantity}" is weighed against itself: the front names it twice.`,
    remedy: 'Name each quantity of the front once.',
  },
  'specification/version-unknown': {
    status: 400,
    exit: 1,
    text: ({ version }: { version: string; newest: number }) =>
      `The version of the specification is ${version}, which this release does not know.`,
    remedy: ({ newest }: { version: string; newest: number }) =>
      newest === 1 ? 'Write version 1.' : `Write a version from 1 to ${newest}.`,
  },
  'specification/name': {
    status: 400,
    exit: 1,
    text: () => 'The name has a line break, a control character or half of a character in it.',
    remedy: 'Write the name as one line of plain text.',
  },
  'specification/unknown-element': {
    status: 400,
    exit: 1,
    text: ({ symbol, meant }: { symbol: string; meant: string }) =>
      `"${symbol}" is not the symbol of an element with data${orMeant(meant)}`,
    remedy: 'Use the symbols that GET /api/v1/elements or "data elements" lists.',
  },
  'specification/duplicate-element': {
    status: 400,
    exit: 1,
    text: ({ symbol }: { symbol: string }) => `${symbol} is named twice in the same list.`,
    remedy: ({ symbol }: { symbol: string }) => `Name ${symbol} once.`,
  },
  'specification/required-and-forbidden': {
    status: 400,
    exit: 1,
    text: ({ symbol }: { symbol: string }) => `${symbol} is both required and forbidden.`,
    remedy: ({ symbol }: { symbol: string }) => `Take ${symbol} out of require or out of forbid.`,
  },
  'specification/pool-too-small': {
    status: 400,
    exit: 1,
    text: ({ min, pool }: { min: number; pool: number }) =>
      `Alloys of at least ${min} elements are asked for, but the pool has ${pool} (require adds to it, forbid removes from it).`,
    remedy: 'Add elements to the pool or ask for fewer components.',
  },
  'specification/too-many-required': {
    status: 400,
    exit: 1,
    text: ({ required, max }: { required: number; max: number }) =>
      `${required} elements are required, but an alloy may have at most ${max}.`,
    remedy: 'Require fewer elements or allow more components.',
  },
  'specification/step': {
    status: 400,
    exit: 1,
    text: ({ found }: { found: number; steps: string }) => `A step of ${found} at.% is not offered.`,
    remedy: ({ steps }: { found: number; steps: string }) => `Use one of these steps: ${steps} (at.%).`,
  },
  'specification/bounds-crossed': {
    status: 400,
    exit: 1,
    text: ({ what, min, max }: { what: string; min: number; max: number }) =>
      `${what}: the lower bound ${min} is above the upper bound ${max}.`,
    remedy: 'Lower the minimum or raise the maximum.',
  },
  'specification/bounds-between-steps': {
    status: 400,
    exit: 1,
    text: ({ what, min, max, step }: { what: string; min: number; max: number; step: number }) =>
      `${what}: no multiple of the step of ${step} at.% lies between ${min} and ${max} at.%.`,
    remedy: 'Widen the bounds or take a finer step.',
  },
  'specification/limit-without-bound': {
    status: 400,
    exit: 1,
    text: ({ what }: { what: string }) => `The limit on ${what} has neither min nor max.`,
    remedy: 'Give it a min or a max or both.',
  },
  'specification/anchor-missing': {
    status: 400,
    exit: 1,
    text: ({ key, what }: { key: string; what: string }) =>
      `Several quantities are ranked together, and ${what} has no "${key}".`,
    remedy:
      'Give each entry the values between which it becomes desirable: from and to, or within for a target.',
  },
  'specification/anchor-idle': {
    status: 400,
    exit: 1,
    text: ({ key, what }: { key: string; what: string }) =>
      `"${key}" says nothing about ${what}: high and low take from and to, a target takes within.`,
    remedy: ({ key }: { key: string; what: string }) => `Leave "${key}" out.`,
  },
  'specification/anchor-alone': {
    status: 400,
    exit: 1,
    text: ({ key, what }: { key: string; what: string }) =>
      `Candidates are ranked by ${what} alone, so "${key}" would change nothing.`,
    remedy: ({ key }: { key: string; what: string }) => `Leave "${key}" out, or rank by several quantities.`,
  },
  'specification/anchors-crossed': {
    status: 400,
    exit: 1,
    text: ({ what, from, to }: { what: string; from: number; to: number }) =>
      `${what}: from is ${from}, which is not below to, ${to}.`,
    remedy: 'Write the smaller value as from and the larger as to, for high and for low alike.',
  },
} satisfies Record<string, ProblemKind>;
