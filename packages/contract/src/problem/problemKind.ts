/** How one kind of error answers: HTTP status, exit code of the terminal (1 the request was wrong, 2 a fault), text, remedy. */
export interface ProblemKind {
  status: number;
  exit: 1 | 2;
  text: (values: never) => string;
  remedy: string | ((values: never) => string);
}
