import { userInfo } from 'node:os';

/** Who types: the name of the user on this computer, where it has one. */
export function userName(): string {
  try {
    return userInfo().username || 'terminal';
  } catch {
    return 'terminal';
  }
}
