import { inDigits } from '../../inDigits.ts';
import type { ProblemKind } from '../problemKind.ts';
import { type Found, type Length, orMeant } from './words.ts';

/** The form of a request. */
export const requestProblems = {
  'request/invalid': {
    status: 400,
    exit: 1,
    text: ({ what }: { what: string; right?: string }) => (what.endsWith('?') ? what : `${what}.`),
    remedy: ({ right = 'See the description of the request in /api/v1/openapi.json.' }) => right,
  },
  'request/after-and-at': {
    status: 400,
    exit: 1,
    text: () => 'A page cannot both follow a key (after) and begin at a row (at).',
    remedy: 'Leave out one of the two.',
  },
  'request/content-type': {
    status: 415,
    exit: 1,
    text: ({ found }: { found: string; accepted: string }) => `The content type of the body is ${found}.`,
    remedy: ({ accepted }: { found: string; accepted: string }) => `Send the body as ${accepted}.`,
  },
  'request/malformed-json': {
    status: 400,
    exit: 1,
    text: ({ found }: { found: string }) => `The body is not JSON: ${found}.`,
    remedy:
      'Send one JSON value, with double quotes around names and texts and no comma at the end of a list.',
  },
  'request/key-twice': {
    status: 400,
    exit: 1,
    text: ({ key }: { key: string }) => `The key ${JSON.stringify(key)} stands twice in one object.`,
    remedy: 'Leave one of the two: each key has one value.',
  },
  'request/too-large': {
    status: 413,
    exit: 1,
    text: ({ limit }: { limit: number }) => `The body is larger than ${limit} bytes.`,
    remedy: 'Send less at once: several smaller requests, or a smaller file.',
  },
  'request/unknown-route': {
    status: 404,
    exit: 1,
    text: ({ method, path }: { method: string; path: string }) => `Nothing answers ${method} ${path}.`,
    remedy: 'Every address is described in /api/v1/openapi.json.',
  },
  'request/unreadable': {
    status: 400,
    exit: 1,
    text: ({ what }: { what: string }) => `The request cannot be read: ${what}.`,
    remedy:
      'Send a request that follows HTTP, with percent signs in the address encoded as %25 and text in UTF-8.',
  },
  'request/wrong-method': {
    status: 405,
    exit: 1,
    text: ({ method, path }: { method: string; path: string; allowed: string }) =>
      `${path} does not take ${method}.`,
    remedy: ({ allowed }: { method: string; path: string; allowed: string }) => `It takes ${allowed}.`,
  },
  'request/unknown-key': {
    status: 400,
    exit: 1,
    text: ({ place, key, meant }: { place: string; key: string; meant: string; known: string }) =>
      `${place} has the unknown key "${key}"${orMeant(meant)}`,
    remedy: ({ key, known }: { place: string; key: string; meant: string; known: string }) =>
      known === '' ? `Leave "${key}" out: nothing is taken here.` : `Use only these keys: ${known}.`,
  },
  'request/missing-key': {
    status: 400,
    exit: 1,
    text: ({ place }: { place: string; right: string }) => `${place} is missing.`,
    remedy: ({ right }: { place: string; right: string }) => right,
  },
  'request/wrong-value': {
    status: 400,
    exit: 1,
    text: ({ place, found }: { place: string; found: string; right: string }) =>
      `${place} is ${found}, which is not possible here.`,
    remedy: ({ right }: { place: string; found: string; right: string }) => right,
  },
  'request/out-of-range': {
    status: 400,
    exit: 1,
    text: ({ place, found, word, bound }: Found & { word: string; bound: number }) =>
      `${place} is ${found}; it must be ${word} ${inDigits(bound)}.`,
    remedy: ({ right }: Found & { word: string; bound: number }) => right,
  },
  'request/length': {
    status: 400,
    exit: 1,
    text: ({ place, size, of, word, bound }: { place: string; right: string } & Length) =>
      `${place} has ${size} ${of}; it must have ${word} ${bound}.`,
    remedy: ({ right }: { place: string; right: string } & Length) => right,
  },
  'request/more-faults': {
    status: 400,
    exit: 1,
    text: ({ named }: { named: number }) => `There are more faults than the ${named} named here.`,
    remedy: 'Correct these and send the request again.',
  },
} satisfies Record<string, ProblemKind>;
