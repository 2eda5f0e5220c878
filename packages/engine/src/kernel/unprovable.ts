/** Thrown where the error of a value that decides something has no bound: another scorer must take the search. */
export class Unprovable extends Error {}
