import type { ChargeBody } from './chargeOf.ts';
import type { SavedSheet } from './savedSheet.ts';

/** Whether a saved sheet is what a form asks for; the server trims its name. */
export function isSheetOf(
  { name, request }: Pick<SavedSheet, 'name' | 'request'>,
  body: ChargeBody,
): boolean {
  const { name: written, ...asked } = body;
  return name === written.trim() && JSON.stringify(plain(request)) === JSON.stringify(plain(asked));
}

/** In one order, whatever wrote it. */
const plain = (request: object) => Object.entries(request).toSorted(([a], [b]) => (a < b ? -1 : 1));
