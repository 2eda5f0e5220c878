/** What the holder of a token may do; each role may do what those before it may. */
export const roles = ['reader', 'author', 'keeper'] as const;
export type Role = (typeof roles)[number];

const acts: Record<Role, string> = {
  reader: 'look at everything and work things out, but change nothing',
  author: 'look at everything, start and stop searches, and write shortlists, charge sheets and melts',
  keeper: 'do everything, also bring in and withdraw prices and other data',
};

/** What a role may do, as the end of a sentence that begins 'may'. */
export function roleInWords(role: Role): string {
  return acts[role];
}

/** Whether the holder of one role may do what is asked of another. */
export function mayAct(role: Role, needed: Role): boolean {
  return roles.indexOf(role) >= roles.indexOf(needed);
}

/** Whoever gave a token out calls it so: of a person or of a program. */
export const longestHolderName = 60;
