import { formatCount } from '../../numbers/formatNumber.ts';

/** '1 import', '3 imports' */
export function countOf(count: number, one: string, several = `${one}s`): string {
  return `${formatCount(count)} ${count === 1 ? one : several}`;
}
