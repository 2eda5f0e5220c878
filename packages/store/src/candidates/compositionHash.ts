/** 32 bits of a composition's text, by which it is sought among many (FNV-1a, Fowler, Noll & Vo, public domain). */
export function compositionHash(system: string, parts: string): number {
  const text = `${system}|${parts}`;
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return hash >>> 0;
}
