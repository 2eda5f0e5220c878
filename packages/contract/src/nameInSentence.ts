/**
 * The name of a quantity inside a sentence. Definitions write names with a capital; that of a person keeps it
 * (Young’s modulus), and an expression of a search's own, which is called by its id, stays as it was typed.
 */
export function nameInSentence(id: string, name: string): string {
  const asWritten = name === id || /^\p{L}+’s /u.test(name);
  return asWritten ? name : name.charAt(0).toLowerCase() + name.slice(1);
}
