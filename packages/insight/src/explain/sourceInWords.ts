import type { Source } from '@tiegel/screening';

/** A source as it is cited, with how far anybody compared it: 'Ye et al., Scr. Mater. 104, 53 (2015), from memory'. */
export function sourceInWords({ authors, year, where, checked }: Source): string {
  const cited = [authors, where].filter((part) => part !== '').join(', ');
  return `${cited}${year === null ? '' : ` (${year})`}, ${checked}`;
}
