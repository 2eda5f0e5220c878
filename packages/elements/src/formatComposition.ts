import { type Composition, inPercent } from './percent.ts';

const unitsPerPercent = 1e9;

/**
 * The canonical text of a composition, its address in URLs: symbols alphabetical, at.% with up to
 * nine decimals and no trailing zeros, nothing between, as in 'Al5Co20Cr25Fe25Ni25'. parseAlloy
 * gives each share back within 1e-9 at.%, and the text of what it gives is the same text.
 * @throws RangeError for shares that are not positive and finite
 */
export function formatComposition(composition: Readonly<Composition>): string {
  return printedShares(composition)
    .map(([symbol, share]) => symbol + share)
    .join('');
}

/** The same for the eye, 'Al5 Co20 Cr25 Fe25 Ni25', with up to `decimals` decimals: a trace is 'B<0.01', never 'B0'. */
export function spacedComposition(composition: Readonly<Composition>, decimals = 2): string {
  const shown = (share: number): string => {
    const rounded = Number(share.toFixed(decimals));
    return rounded === 0 ? `<${10 ** -decimals}` : String(rounded);
  };
  return Object.keys(composition)
    .sort()
    .map((symbol) => symbol + shown(composition[symbol]!))
    .join(' ');
}

function printedShares(composition: Readonly<Composition>): [string, string][] {
  const symbols = Object.keys(composition).sort();
  const shares = symbols.map((symbol) => composition[symbol]!);
  if (!shares.every((share) => share > 0 && Number.isFinite(share))) {
    throw new RangeError('a composition has positive shares');
  }
  const units = roundedToUnits(inUnits(shares));
  return symbols.map((symbol, index) => [symbol, printed(units[index]!)]);
}

/**
 * Rounds each share by itself, so that equal shares print equal (Co33.333333333Cr33.333333333...),
 * unless reading the text and normalising it would give another text; then the rounding errors are
 * evened out, largest first, and the printed shares add up to exactly 100.
 */
function roundedToUnits(exact: readonly number[]): number[] {
  const units = exact.map((share) => Math.max(1, Math.round(share)));
  const total = units.reduce((sum, share) => sum + share, 0);
  const whole = 100 * unitsPerPercent;
  if (total === whole) return units;
  if (units.every((share) => Math.round((share / total) * whole) === share) && isReadBack(units))
    return units;
  const direction = Math.sign(whole - total);
  const byError = exact
    .map((share, index) => ({ index, error: (share - units[index]!) * direction }))
    .filter(({ index }) => units[index]! + direction > 0)
    .sort((a, b) => b.error - a.error || a.index - b.index);
  for (const { index } of byError.slice(0, Math.abs(whole - total))) units[index]! += direction;
  return units;
}

/**
 * Whether reading the text gives shares that are printed alike, computed as reading and printing do:
 * where the sum is off by one unit, a share of a half lies between two units but for rounding errors.
 */
function isReadBack(units: readonly number[]): boolean {
  // Keys that sort as the symbols did, since the order of a sum moves its last digit.
  const amounts = units.map(
    (share, index) => [String(index).padStart(3, '0'), share / unitsPerPercent] as const,
  );
  const read = Object.values(inPercent(Object.fromEntries(amounts)));
  return inUnits(read).every((exact, index) => Math.round(exact) === units[index]);
}

/** Shares of any total in the units that are printed, not yet rounded. */
function inUnits(shares: readonly number[]): number[] {
  const total = shares.reduce((sum, share) => sum + share, 0);
  return shares.map((share) => (share / total) * 100 * unitsPerPercent);
}

function printed(units: number): string {
  const digits = String(units).padStart(10, '0');
  const decimals = digits.slice(-9).replace(/0+$/, '');
  return digits.slice(0, -9) + (decimals === '' ? '' : `.${decimals}`);
}
