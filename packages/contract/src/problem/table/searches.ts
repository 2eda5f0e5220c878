import type { ProblemKind } from '../problemKind.ts';

/** A search as it goes. */
export const searchProblems = {
  'schedule/unknown-zone': {
    status: 400,
    exit: 1,
    text: ({ zone }: { zone: string }) => `"${zone}" is no time zone that this computer knows.`,
    remedy: 'Use an IANA name such as "Europe/Berlin", "America/Chicago" or "UTC".',
  },
  'plan/engine-version': {
    status: 500,
    exit: 2,
    text: ({ planned, here }: { planned: string; here: string }) =>
      `The search was planned for engine version ${planned}, and this is engine version ${here}.`,
    remedy: 'Run api, terminal and workers from the same release, or start the search anew.',
  },
  'outcome/unreadable': {
    status: 500,
    exit: 2,
    text: ({ found }: { found: string }) => `What scoring found cannot be read: ${found}.`,
    remedy: 'Run api, terminal and workers from the same release; the chunk is then scored again.',
  },
  'search/unknown': {
    status: 404,
    exit: 1,
    text: ({ id }: { id: string }) => `There is no search "${id}".`,
    remedy: 'The page Searches, "results list" and GET /api/v1/searches list all of them.',
  },
  'search/not-finished': {
    status: 409,
    exit: 1,
    text: ({ state }: { state: string }) => `The search is ${state}: it has no candidates to show.`,
    remedy: ({ state }: { state: string }) => {
      if (state === 'cancelled')
        return 'Start the same specification anew: what is cancelled is over for good.';
      const wait = 'wait until the search is done';
      if (state === 'paused' || state === 'failed')
        return `Resume it, on its page or with "searches resume", and ${wait}.`;
      return `${wait.replace('w', 'W')}; its page shows how far it is, and "searches watch" where a service works on it.`;
    },
  },
  'search/not-possible': {
    status: 409,
    exit: 1,
    text: ({ act, state }: { act: string; state: string }) =>
      `The search is ${state}, so one cannot ${act} it.`,
    remedy: 'Start the same specification anew to search again.',
  },
  'search/closed': {
    status: 503,
    exit: 2,
    text: () => 'The program ended before the search did.',
    remedy: 'Start it again on the same database: the search goes on where it stood.',
  },
  'search/key-reused': {
    status: 409,
    exit: 1,
    text: ({ id, differing }: { id: string; differing: string }) =>
      `The idempotency key belongs to the search ${id}, which differs in ${differing}.`,
    remedy:
      'Send a new key with a new search; PUT /api/v1/searches/ID/schedule changes hours and priority of one that is there.',
  },
  'search/no-points': {
    status: 400,
    exit: 1,
    text: () => 'No composition lies on this grid: the bounds of the elements do not add up to 100 at.%.',
    remedy: 'Widen the bounds of the elements, take a finer step, or allow other numbers of components.',
  },
  'search/too-many-points': {
    status: 400,
    exit: 1,
    text: ({ points, most }: { points: string; most: string }) =>
      `The search has ${points} points; at most ${most} are searched.`,
    remedy: 'Take a coarser step, a smaller pool, fewer components or narrower bounds.',
  },
  'search/value-missing': {
    status: 400,
    exit: 1,
    text: ({ quantity, value, elements }: { quantity: string; value: string; elements: string }) =>
      `${quantity} needs the value ${value}, which is not known for ${elements}.`,
    remedy: ({ elements }: { quantity: string; value: string; elements: string }) =>
      `Take ${elements} out of the pool, or leave this quantity out of limits and ranking.`,
  },
  'search/price-missing': {
    status: 400,
    exit: 1,
    text: ({ quantity, elements }: { quantity: string; elements: string }) =>
      `${quantity} needs prices, and the price list in force has none for ${elements}.`,
    remedy: ({ elements }: { quantity: string; elements: string }) =>
      `Add ${elements} to the price list, take them out of the pool, or leave this quantity out of limits and ranking.`,
  },
  'search/limit-unreachable': {
    status: 400,
    exit: 1,
    text: ({ quantity, low, high }: { quantity: string; low: string; high: string }) =>
      `No composition of this grid can meet the limit: its ${quantity} lies between ${low} and ${high}.`,
    remedy: ({ low, high }: { quantity: string; low: string; high: string }) =>
      `Set a limit that leaves something between ${low} and ${high}, or change the grid.`,
  },
  'queue/out-of-reach': {
    status: 503,
    exit: 2,
    text: ({ place, why }: { place: string; why: string }) => `Redis at ${place} is out of reach: ${why}.`,
    remedy: 'Start Redis or correct REDIS_URL; without REDIS_URL this machine scores by itself.',
  },
} satisfies Record<string, ProblemKind>;
