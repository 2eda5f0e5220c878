import type { ProblemKind } from '../problemKind.ts';
import { orMeant } from './words.ts';

/** Expressions of one’s own. */
export const expressionProblems = {
  'expression/length': {
    status: 400,
    exit: 1,
    text: ({ length, limit }: { length: number; limit: number }) =>
      `The formula has ${length} characters; at most ${limit} are read.`,
    remedy: 'Shorten it, or give a part of it a name of its own.',
  },
  'expression/too-complex': {
    status: 400,
    exit: 1,
    text: ({ size, limit, of }: { size: number; limit: number; of: string }) =>
      `The formula has ${size} ${of}; at most ${limit} are read.`,
    remedy: 'Make it simpler.',
  },
  'expression/syntax': {
    status: 400,
    exit: 1,
    text: ({ place, found }: { place: number; found: string; expected: string }) =>
      `The formula cannot be read at character ${place}, where ${found}.`,
    remedy: ({ expected }: { place: number; found: string; expected: string }) =>
      `What may stand there: ${expected}. Decimals have a point, products a *.`,
  },
  'expression/number': {
    status: 400,
    exit: 1,
    text: ({ place, found }: { place: number; found: string }) =>
      `${found}, at character ${place} of the formula, is too large, or too near 0, to be a number here.`,
    remedy: 'Write 0, or a number between 5e-324 and 1.7e308.',
  },
  'expression/unknown-name': {
    status: 400,
    exit: 1,
    text: ({ place, name, near }: { place: number; name: string; near: string }) =>
      `"${name}", at character ${place} of the formula, is not a quantity${orMeant(near)}`,
    remedy:
      'Use the ids that "screen CoNi --json" and GET /api/v1/quantities list, and names of your own that stand before.',
  },
  'expression/unknown-function': {
    status: 400,
    exit: 1,
    text: ({ place, name, near }: { place: number; name: string; near: string; known: string }) =>
      `"${name}", at character ${place} of the formula, is not a function${orMeant(near)}`,
    remedy: ({ known }: { place: number; name: string; near: string; known: string }) =>
      `The functions: ${known}. Write a product with a *.`,
  },
  'expression/values': {
    status: 400,
    exit: 1,
    text: ({ place, name, given }: { place: number; name: string; wanted: string; given: number }) =>
      `${name}, at character ${place} of the formula, is given ${given === 1 ? 'one value' : `${given} values`}.`,
    remedy: ({ name, wanted }: { place: number; name: string; wanted: string; given: number }) =>
      `Give ${name} ${wanted === '1' ? 'one value' : `${wanted} values`}.`,
  },
  'expression/units': {
    status: 400,
    exit: 1,
    text: (values: { place: number; left: string; leftUnit: string; right: string; rightUnit: string }) =>
      `"${values.left}" (${values.leftUnit}) and "${values.right}" (${values.rightUnit}), at character ${values.place} of the formula, have different units and cannot be added or compared.`,
    remedy:
      'Divide each by a number in its own unit, as in density/8 + meltingTemperature/2000: a typed number may carry any unit.',
  },
  'expression/not-plain': {
    status: 400,
    exit: 1,
    text: ({ place, name, part, unit }: { place: number; name: string; part: string; unit: string }) =>
      `"${part}", at character ${place} of the formula, is in ${unit}, but ${name} takes a plain number.`,
    remedy: 'Divide it by a number in that unit, as in ln(density/8): a typed number may carry any unit.',
  },
  'expression/exponent': {
    status: 400,
    exit: 1,
    text: ({ place, found }: { place: number; found: string }) =>
      `The exponent "${found}", at character ${place} of the formula, is not a number.`,
    remedy: 'Write a number as the exponent, as in density^2 or density^(1/3).',
  },
  'expression/no-value': {
    status: 400,
    exit: 1,
    text: ({ place, part }: { place: number; part: string }) =>
      `"${part}", at character ${place} of the formula, has no value.`,
    remedy: 'Divide by no 0, and take roots and logarithms of positive numbers.',
  },
  'expression/no-quantity': {
    status: 400,
    exit: 1,
    text: () => 'The formula names no quantity, so it is the same for every alloy.',
    remedy: 'Name at least one quantity, as in omega - density/8.',
  },
  'expression/name': {
    status: 400,
    exit: 1,
    text: ({ name }: { name: string }) => `"${name}" cannot be a name in formulas.`,
    remedy:
      'Begin with a letter and go on with letters, digits and underscores, at most 64 in all: stiffness_per_mass.',
  },
  'expression/name-taken': {
    status: 400,
    exit: 1,
    text: ({ name }: { name: string }) => `"${name}" is the name of something else already.`,
    remedy: 'Choose another name.',
  },
} satisfies Record<string, ProblemKind>;
