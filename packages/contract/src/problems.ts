/** How one kind of error answers: HTTP status, exit code of the terminal (1 the request was wrong, 2 a fault), text, remedy. */
export interface ProblemKind {
  status: number;
  exit: 1 | 2;
  text: (values: never) => string;
  remedy: string | ((values: never) => string);
}

/**
 * The one table of errors: terminal, HTTP and docs derive from it. Codes are area/what. A text
 * says what is wrong and a remedy what would be right, each a whole sentence.
 */
export const problems = {
  'access/foreign-host': {
    status: 403,
    exit: 1,
    text: ({ host }: { host: string }) => `The request names the host "${host}", which this server is not.`,
    remedy: 'Open the address that the server printed at its start, under the name localhost or 127.0.0.1.',
  },
  'access/foreign-page': {
    status: 403,
    exit: 1,
    text: ({ origin }: { origin: string }) => `A page of another site (${origin}) asked for a change here.`,
    remedy: 'Make the change from a page of this server, or from a program that sends no Origin header.',
  },
  'configuration/invalid': {
    status: 500,
    exit: 1,
    text: ({ name, value }: { name: string; value: string; needed: string }) =>
      `The setting ${name} is "${value}", which is not possible.`,
    remedy: ({ name, needed }: { name: string; value: string; needed: string }) =>
      `Set ${name} to ${needed}, or leave it out for the default.`,
  },
  'configuration/open-network': {
    status: 500,
    exit: 1,
    text: ({ host }: { host: string }) =>
      `HOST is "${host}": other computers could reach this server, which asks nobody who they are.`,
    remedy:
      'Leave HOST out to serve this computer alone, or set OPEN_NETWORK=yes so that anyone who reaches it may use it.',
  },
  'alloy/unreadable': {
    status: 400,
    exit: 1,
    text: ({ alloy, place, found }: { alloy: string; place: number; found: string }) =>
      `"${alloy}" cannot be read at character ${place}: ${found}.`,
    remedy: 'Write element symbols with optional decimal amounts, for example Al7.69Co30.77Fe61.54.',
  },
  'request/invalid': {
    status: 400,
    exit: 1,
    text: ({ what }: { what: string }) => `${what}.`,
    remedy: 'See the description of the request in /api/v1/openapi.json.',
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
  'request/too-large': {
    status: 413,
    exit: 1,
    text: ({ limit }: { limit: number }) => `The body is larger than ${limit} bytes.`,
    remedy: 'Split the request into several smaller ones.',
  },
  'request/unknown-name': {
    status: 400,
    exit: 1,
    text: ({ name }: { name: string; near: string }) => `"${name}" means nothing here.`,
    remedy: ({ near }: { name: string; near: string }) => near,
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
    remedy: 'Send a request that follows HTTP, with percent signs in the address encoded as %25.',
  },
  'request/value': {
    status: 400,
    exit: 1,
    text: ({ name, found }: { name: string; found: string; needed: string }) => `${name} is ${found}.`,
    remedy: ({ name, needed }: { name: string; found: string; needed: string }) =>
      `${name} must be ${needed}.`,
  },
  'request/wrong-method': {
    status: 405,
    exit: 1,
    text: ({ method, path }: { method: string; path: string; allowed: string }) =>
      `${path} does not take ${method}.`,
    remedy: ({ allowed }: { method: string; path: string; allowed: string }) => `It takes ${allowed}.`,
  },
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

export type ProblemCode = keyof typeof problems;
