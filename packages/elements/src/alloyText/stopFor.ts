/** Hyphens, dashes and the minus sign, as printed formulas have them. */
export const hyphen = /[-‐‑–—−]/;

/** Why the character at an index has no place in an alloy text; `closing` is the sign that would end the bracket there, '' outside. */
export function stopFor(text: string, index: number, { closing }: { closing: string }): string {
  const character = String.fromCodePoint(text.codePointAt(index)!);
  if (character === ',')
    return '"," is no decimal sign here and separates nothing; decimals are written with a point';
  if (character === '·')
    return '"·" is no decimal sign here and separates nothing; decimals are written with a point';
  if (hyphen.test(character)) {
    return /^.\s*[.\d₀-₉]/.test(text.slice(index))
      ? `"${character}" has no meaning here; amounts are positive, and behind hyphens, as in Fe-20Cr-10Ni, they stand for mass per cent`
      : `"${character}" has no meaning here; symbols and amounts follow each other without hyphens`;
  }
  if (/[a-z]/.test(character))
    return `"${character}" begins no symbol; a symbol begins with a capital letter`;
  if (/[0-9₀-₉]/.test(character)) return `"${character}" is an amount without a symbol before it`;
  if (character === '(' || character === '[') return 'brackets stand in one another at most twice';
  if (character === closing) return 'the bracket that ends there holds nothing';
  if (character === ')' || character === ']') {
    return closing === ''
      ? `"${character}" closes no bracket`
      : `"${character}" stands where "${closing}" would close the bracket`;
  }
  return `"${character}" is neither a symbol nor an amount`;
}
