import type { Numbers } from './columnBlocks.ts';

/** Columns held in memory up to so many bytes together; those asked for longest ago go first. */
export interface ColumnCache {
  get(search: number, name: string): Numbers | undefined;
  put<Column extends Numbers>(search: number, name: string, column: Column): Column;
  forget(search: number): void;
}

export function columnCache(mostBytes: number): ColumnCache {
  const held = new Map<string, { search: number; column: Numbers }>();
  let bytes = 0;

  function drop(key: string): void {
    bytes -= held.get(key)?.column.byteLength ?? 0;
    held.delete(key);
  }

  return {
    get(search, name) {
      const key = `${search} ${name}`;
      const found = held.get(key);
      if (found === undefined) return undefined;
      held.delete(key);
      held.set(key, found);
      return found.column;
    },
    put(search, name, column) {
      const key = `${search} ${name}`;
      drop(key);
      held.set(key, { search, column });
      bytes += column.byteLength;
      for (const oldest of held.keys()) {
        if (bytes <= mostBytes || oldest === key) break;
        drop(oldest);
      }
      return column;
    },
    forget(search) {
      for (const [key, one] of held) if (one.search === search) drop(key);
    },
  };
}
