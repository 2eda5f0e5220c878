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
} satisfies Record<string, ProblemKind>;

export type ProblemCode = keyof typeof problems;
