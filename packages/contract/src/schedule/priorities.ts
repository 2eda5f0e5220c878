/** In the order of going; searches of one priority take turns. */
export const priorities = ['first', 'usual', 'last'] as const;
export type Priority = (typeof priorities)[number];
