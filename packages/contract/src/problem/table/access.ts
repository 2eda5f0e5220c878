import { type Role, roleInWords } from '../../access/roles.ts';
import type { ProblemKind } from '../problemKind.ts';

/** Who asks, and the settings of a service. */
export const accessProblems = {
  'access/foreign-host': {
    status: 403,
    exit: 1,
    text: ({ host }: { host: string }) => `The request names the host "${host}", which this server is not.`,
    remedy:
      'Open the address that the server printed at its start, under the name localhost or 127.0.0.1, or start it with the name in HOST_NAMES.',
  },
  'access/foreign-page': {
    status: 403,
    exit: 1,
    text: ({ origin }: { origin: string }) => `A page of another site (${origin}) asked for a change here.`,
    remedy: 'Make the change from a page of this server, or from a program that sends no Origin header.',
  },
  'access/no-token': {
    status: 401,
    exit: 1,
    text: () => 'This server asks who you are, and no token was sent.',
    remedy:
      'Sign in on the page, send the header "Authorization: Bearer TOKEN", or set TIEGEL_TOKEN for the terminal; whoever keeps the server gives tokens out, by "access give".',
  },
  'access/unknown-token': {
    status: 401,
    exit: 1,
    text: () => 'The token that was sent is not in force here.',
    remedy: 'Send it whole, as it was given to you, or ask whoever keeps the server for another.',
  },
  'access/role': {
    status: 403,
    exit: 1,
    text: ({ name, role }: { name: string; role: Role; needed: Role }) =>
      `${name} has the role "${role}": they may ${roleInWords(role)}.`,
    remedy: ({ needed }: { name: string; role: Role; needed: Role }) =>
      `Ask whoever keeps the server for a token with the role "${needed}".`,
  },
  'access/nobody': {
    status: 500,
    exit: 1,
    text: () => 'TOKENS=yes, but nobody has a token, so that nobody could use this server.',
    remedy:
      'Give one out first, with the same DATA_DIR: npm run -s tiegel -- access give "Your name" --role keeper.',
  },
  'access/holder-name': {
    status: 400,
    exit: 1,
    text: () => 'This cannot be the name of somebody who holds a token.',
    remedy: ({ longest }: { longest: number }) =>
      `Write a name of 1 to ${longest} characters that can be seen.`,
  },
  'access/holder-known': {
    status: 409,
    exit: 1,
    text: ({ name }: { name: string }) => `"${name}" has a token already.`,
    remedy: 'Take that one out of force first, by "access withdraw", or choose another name.',
  },
  'access/holder-unknown': {
    status: 404,
    exit: 1,
    text: ({ name }: { name: string }) => `"${name}" has no token in force.`,
    remedy: 'Write a name as "access list" shows it.',
  },
  'configuration/invalid': {
    status: 500,
    exit: 1,
    text: ({ name, value }: { name: string; value: string; needed: string }) =>
      `The setting ${name} is "${value}", which is not possible.`,
    remedy: ({ name, needed }: { name: string; value: string; needed: string }) =>
      `Set ${name} to ${needed}, or leave it out for the default.`,
  },
  'configuration/missing': {
    status: 500,
    exit: 1,
    text: ({ name }: { name: string; needed: string }) => `The setting ${name} is missing.`,
    remedy: ({ name, needed }: { name: string; needed: string }) => `Set ${name} to ${needed}.`,
  },
  'configuration/open-network': {
    status: 500,
    exit: 1,
    text: ({ host }: { host: string }) =>
      `HOST is "${host}": other computers could reach this server, which asks nobody who they are.`,
    remedy:
      'Leave HOST out to serve this computer alone, set TOKENS=yes so that only holders of a token may use it, or OPEN_NETWORK=yes so that anyone who reaches it may.',
  },
} satisfies Record<string, ProblemKind>;
