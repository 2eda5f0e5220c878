import type { MeltEntry } from '@tiegel/contract';
import { materialName } from './materialName.ts';
import type { ChargeSheet } from './sheet.ts';

/** An entry that leaves to its charge sheet what is in the materials of the sheet, whatever it says of them. */
export function leftToSheet(entry: MeltEntry, { lines }: ChargeSheet): MeltEntry {
  const ofSheet = new Set(lines.map(({ material }) => materialName(material)));
  const weighed = entry.weighed.map((row) =>
    ofSheet.has(materialName(row.material)) ? { material: row.material, mass: row.mass } : row,
  );
  return { ...entry, weighed };
}
