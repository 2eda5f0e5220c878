import { spacedComposition } from '@tiegel/elements';
import type { SavedChargeSheet } from '@tiegel/search/laboratory';
import { fittedTable } from './fittedTable.ts';

/** Saved charge sheets, a line each. */
export function* sheetsText(all: readonly SavedChargeSheet[]): Generator<string> {
  if (all.length === 0) {
    yield 'No charge sheet was saved in this database yet: save one with "charge ALLOY ... --save".\n';
    return;
  }
  yield `${fittedTable(
    [
      { head: 'number', align: 'left' },
      { head: 'saved', unit: 'UTC', align: 'left' },
      { head: 'mass', unit: 'g' },
      { head: 'composition', unit: 'at.%', align: 'left' },
      { head: 'name', align: 'left' },
    ],
    all.map(({ number, savedAt, mass, composition, name }) => [
      number,
      savedAt.slice(0, 16).replace('T', ' '),
      String(mass),
      spacedComposition(composition),
      name,
    ]),
  ).join('\n')}\n`;
}
