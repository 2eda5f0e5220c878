import type { ProblemKind } from '../problemKind.ts';

/** An alloy that is written down, its elements and quantities. */
export const alloyProblems = {
  'alloy/unreadable': {
    status: 400,
    exit: 1,
    text: ({ alloy, place, found }: { alloy: string; place: number; found: string; right: string }) =>
      `"${alloy}" cannot be read at character ${place}: ${found}.`,
    remedy: ({ right }: { alloy: string; place: number; found: string; right: string }) =>
      right || 'Write element symbols with optional decimal amounts, for example Al7.69Co30.77Fe61.54.',
  },
  'alloy/too-long': {
    status: 400,
    exit: 1,
    text: ({ length, limit }: { length: number; limit: number }) =>
      `The alloy is written with ${length} characters; at most ${limit} are read.`,
    remedy: 'Write one alloy at a time, as in Al7.69Co30.77Fe61.54.',
  },
  'alloy/empty': {
    status: 400,
    exit: 1,
    text: () => 'The alloy has no elements.',
    remedy: 'Write element symbols with optional decimal amounts, for example Al7.69Co30.77Fe61.54.',
  },
  'alloy/repeated-element': {
    status: 400,
    exit: 1,
    text: ({ symbol, first, place }: { symbol: string; first: number; place: number }) =>
      `${symbol} stands in the alloy twice, at characters ${first} and ${place}.`,
    remedy: ({ symbol }: { symbol: string; first: number; place: number }) =>
      `Write ${symbol} once, with its whole amount.`,
  },
  'alloy/amount': {
    status: 400,
    exit: 1,
    text: ({ symbol, amount, where }: { symbol: string; amount: string; where: string }) =>
      `The amount of ${symbol}${where} is ${amount}, which is not possible.`,
    remedy: ({ symbol }: { symbol: string; amount: string; where: string }) =>
      `Give ${symbol} an amount above 0 (at least 1e-100) and at most 1e15, or leave it out.`,
  },
  'alloy/share-too-small': {
    status: 400,
    exit: 1,
    text: ({ symbol }: { symbol: string }) =>
      `The share of ${symbol} is below 0.0000000005 at.% and would be printed as 0.`,
    remedy: ({ symbol }: { symbol: string }) => `Leave ${symbol} out or give it a larger amount.`,
  },
  'element/unknown': {
    status: 400,
    exit: 1,
    text: ({ symbol, where }: { symbol: string; where: string; near: string }) =>
      `"${symbol}"${where} is not the symbol of an element.`,
    remedy: ({ near }: { symbol: string; where: string; near: string }) =>
      near === ''
        ? 'Write the symbol of an element, such as Fe.'
        : `Write the symbol of an element; the nearest known: ${near}.`,
  },
  'element/no-data': {
    status: 400,
    exit: 1,
    text: ({ symbol, name, where }: { symbol: string; name: string; where: string }) =>
      `There are no data of ${symbol}${where} (${name.toLowerCase()}).`,
    remedy: 'Use the elements that the page Data shows, and "data elements" and GET /api/v1/elements list.',
  },
  'quantity/unknown': {
    status: 400,
    exit: 1,
    text: ({ id, near }: { id: string; near?: string; known?: string }) =>
      `There is no quantity "${id}"${near === undefined ? '.' : `: did you mean "${near}"?`}`,
    remedy: ({ known }: { id: string; near?: string; known?: string }) =>
      known === undefined
        ? 'Use an id that "screen CoNi --json" and GET /api/v1/quantities list.'
        : `Use one of these: ${known}.`,
  },
  'quantity/late': {
    status: 400,
    exit: 1,
    text: ({ id }: { id: string }) =>
      `"${id}" is worked out for kept candidates only: it can neither limit nor rank every point of a grid.`,
    remedy: ({ id }: { id: string }) =>
      `Write it under "keptOnly", for example "keptOnly": [{"quantity": "${id}", "max": 1}].`,
  },
  'candidate/unknown': {
    status: 404,
    exit: 1,
    text: ({ composition }: { composition: string }) =>
      `The search kept no candidate of the composition ${composition}.`,
    remedy: 'Its candidates are listed under /api/v1/searches/ID/candidates.',
  },
  'substitute/absent': {
    status: 400,
    exit: 1,
    text: ({ symbol, alloy }: { symbol: string; alloy: string }) =>
      `${symbol} cannot be replaced: ${alloy} does not hold it.`,
    remedy: 'Name an element of the alloy to be replaced.',
  },
  'substitute/itself': {
    status: 400,
    exit: 1,
    text: ({ symbol }: { symbol: string }) => `${symbol} cannot replace itself.`,
    remedy: ({ symbol }: { symbol: string }) => `Name other elements than ${symbol} to come instead.`,
  },
  'weighing/too-many-elements': {
    status: 400,
    exit: 1,
    text: ({ count, limit }: { count: number; limit: number }) =>
      `The alloy has ${count} elements; weighing is worked out for at most ${limit}.`,
    remedy: 'Leave out traces that are not weighed by themselves.',
  },
  'weighing/resolution': {
    status: 400,
    exit: 1,
    text: ({ mass, resolution }: { mass: number; resolution: number }) =>
      `A balance that shows ${resolution} g cannot weigh a batch of ${mass} g.`,
    remedy: 'Enlarge the batch, or take a balance with smaller steps.',
  },
} satisfies Record<string, ProblemKind>;
