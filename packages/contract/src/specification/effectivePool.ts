/** The sets of symbols that a specification names. */
export interface ElementsRequest {
  pool: string[];
  require?: string[];
  forbid?: string[];
}

/** The pool that is searched, alphabetical: `require` adds to it, `forbid` removes from it. */
export function effectivePool(elements: ElementsRequest): string[] {
  const pool = new Set([...elements.pool, ...(elements.require ?? [])]);
  for (const symbol of elements.forbid ?? []) pool.delete(symbol);
  return [...pool].sort();
}
