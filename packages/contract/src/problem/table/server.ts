import type { ProblemKind } from '../problemKind.ts';

/** A service that does not answer as it should. */
export const serverProblems = {
  'server/address-in-use': {
    status: 500,
    exit: 1,
    text: ({ host, port }: { host: string; port: number; other: number }) =>
      `Something already listens on ${host}, port ${port}; perhaps this server runs already.`,
    remedy: ({ other }: { host: string; port: number; other: number }) =>
      `Stop the other program, or choose another port, for example PORT=${other} npm start.`,
  },
  'server/cannot-listen': {
    status: 500,
    exit: 1,
    text: ({ host, port, why }: { host: string; port: number; why: string }) =>
      `The server cannot listen on ${host}, port ${port}: ${why}.`,
    remedy:
      'Set HOST and PORT to an address of this computer that you may use; a port from 1024 up needs no rights.',
  },
  'server/address': {
    status: 400,
    exit: 1,
    text: ({ address }: { address: string }) => `"${address}" is no address of a service.`,
    remedy: 'Write an address such as http://127.0.0.1:4270 behind --server or in TIEGEL_SERVER.',
  },
  'server/out-of-reach': {
    status: 503,
    exit: 2,
    text: ({ address, why }: { address: string; why: string }) =>
      `The service at ${address} is out of reach: ${why}.`,
    remedy: 'Start it with "npm start", or say with --server or TIEGEL_SERVER where it is.',
  },
  'server/other-answer': {
    status: 502,
    exit: 2,
    text: ({ address, status }: { address: string; status: number }) =>
      `What answers at ${address} (status ${status}) is not this service, or another release of it.`,
    remedy: 'Say with --server or TIEGEL_SERVER where the service is, and use the terminal of its release.',
  },
  'server/busy': {
    status: 503,
    exit: 2,
    text: ({ most, what }: { most: number; what: string }) =>
      `The server is busy with ${most} ${what}, which is as many as it takes at once.`,
    remedy: 'Ask again when one of them is done, or end one.',
  },
  'server/fault': {
    status: 500,
    exit: 2,
    text: ({ id }: { id: string }) => `Something failed in the server; its log has the cause under ${id}.`,
    remedy: 'Try again; if it fails again, report it with this number and the lines of the log around it.',
  },
  'server/stopping': {
    status: 503,
    exit: 2,
    text: () => 'The server is stopping and takes nothing new.',
    remedy: 'Try again when it has started anew; nothing that was accepted is lost.',
  },
} satisfies Record<string, ProblemKind>;
