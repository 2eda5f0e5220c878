import type { Connection } from '../sharing/connections.ts';

/** A saved charge sheet: its number, and the sheet as a JSON value whose meaning is not the store's. */
export interface StoredChargeSheet {
  number: number;
  savedAt: string;
  sheet: unknown;
}

/** The charge sheets that somebody saved. None is ever changed or taken away: a number on a crucible keeps its meaning. */
export interface ChargeSheetTable {
  /**
   * Keeps a sheet under the next number; it is on the disk when this returns. The same key, sent
   * again because the answer was lost, gives the sheet that it made the first time.
   */
  save(sheet: unknown, at: string, key?: string | null): { stored: StoredChargeSheet; created: boolean };
  find(number: number): StoredChargeSheet | null;
  /** The newest first. */
  list(): StoredChargeSheet[];
}

interface Row {
  number: number;
  saved_at: string;
  sheet: string;
}

export function chargeSheetTable(durable: Connection): ChargeSheetTable {
  const insert = durable.prepare('insert into charge_sheet (saved_at, key, sheet) values (?, ?, ?)');
  const byKey = durable.prepare('select number, saved_at, sheet from charge_sheet where key = ?');
  const byNumber = durable.prepare('select number, saved_at, sheet from charge_sheet where number = ?');
  const all = durable.prepare('select number, saved_at, sheet from charge_sheet order by number desc');
  const save = durable.transaction((sheet: unknown, at: string, key: string | null) => {
    const before = key === null ? undefined : (byKey.get(key) as Row | undefined);
    if (before !== undefined) return { stored: read(before), created: false };
    const { lastInsertRowid } = insert.run(at, key, JSON.stringify(sheet));
    return { stored: read(byNumber.get(lastInsertRowid) as Row), created: true };
  });
  return {
    save: (sheet, at, key = null) => save.immediate(sheet, at, key),
    find(number) {
      const row = byNumber.get(number) as Row | undefined;
      return row === undefined ? null : read(row);
    },
    list: () => (all.all() as Row[]).map(read),
  };
}

function read({ number, saved_at, sheet }: Row): StoredChargeSheet {
  return { number, savedAt: saved_at, sheet: JSON.parse(sheet) };
}
