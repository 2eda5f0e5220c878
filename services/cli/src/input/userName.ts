import { userInfo } from 'node:os';
import { shortlistMost } from '@tiegel/contract/terms';

/** Who types: the name of the user on this computer, where it has one. */
export function userName(): string {
  try {
    return userInfo().username.slice(0, shortlistMost.by) || 'terminal';
  } catch {
    return 'terminal';
  }
}
