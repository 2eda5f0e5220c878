/** What a typed text means: a number, nothing (empty), or why it cannot be told. */
export type ParsedNumber = { value: number } | { value: null } | { unclear: string };

const plain = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?$/i;

/**
 * Reads a number as people type it: comma or point as the decimal sign, spaces and apostrophes
 * between thousands, '−' as minus. `decimalSign` is the one of the reader's locale, which is
 * always decimal. The other one before exactly three digits (1,000) could mean two numbers and is
 * asked back, unless `whole` says that only whole numbers fit.
 */
export function parseNumber(
  text: string,
  { decimalSign = localDecimalSign(), whole = false }: { decimalSign?: ',' | '.'; whole?: boolean } = {},
): ParsedNumber {
  const bare = text
    .trim()
    .replace('−', '-')
    .replace(/(?<=\d)[\s'’](?=\d{3}(?!\d))/g, '');
  if (bare === '') return { value: null };
  const otherSign = decimalSign === ',' ? '.' : ',';
  const others = bare.split(otherSign).length - 1;
  const groupPattern = new RegExp(`^[+-]?[1-9]\\d{0,2}(?:\\${otherSign}\\d{3})+(?:\\${decimalSign}\\d*)?$`);
  const grouped = others > 0 && groupPattern.test(bare);
  if (grouped && others === 1 && !whole && !bare.includes(decimalSign)) {
    const large = bare.replace(otherSign, '');
    const small = String(Number(bare.replace(otherSign, '.'))).replace('.', decimalSign);
    return { unclear: `“${text.trim()}” could mean ${large} or ${small}. Write one of these.` };
  }
  const digits = grouped ? bare.replaceAll(otherSign, '') : bare;
  const normal = digits.replace(/[.,]/, '.');
  const value = plain.test(normal) ? Number(normal) : Number.NaN;
  if (!Number.isFinite(value))
    return { unclear: `“${text.trim()}” is not a number. Write digits alone, as in 12.5.` };
  return { value };
}

let known: ',' | '.' | undefined;

/** The decimal sign of the reader's locale; a point where that is neither comma nor point. */
function localDecimalSign(): ',' | '.' {
  known ??= new Intl.NumberFormat(navigator.language).format(1.5).includes(',') ? ',' : '.';
  return known;
}

/** A number as text for an entry field, in full precision, with the reader's decimal sign. */
export function entryText(value: number | undefined): string {
  return value === undefined ? '' : String(value).replace('.', localDecimalSign());
}
