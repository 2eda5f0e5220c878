import type { Fault } from '@tiegel/contract';

/** What to do on the page, where the terminal and the API have other ways. */
const remedies: Partial<Record<Fault['code'], string>> = {
  'element/no-data': 'Use elements that the page Data shows.',
  'expression/unknown-name':
    'Put a quantity in from the list below, or name an expression that stands before this one.',
};

/** What to do about a fault, where it is told on a page. */
export function remedyHere({ code, remedy }: Fault): string {
  return remedies[code] ?? remedy;
}
