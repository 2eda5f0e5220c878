import { unitText } from '../server/lookup.ts';
import type { ShownQuantity } from '../server/types.ts';

/** What an axis is called: 'Density ρ (g/cm³)', 'Melting temperature T_m (K)'; Axis sets low what follows an underscore. */
export function axisTitle(
  { name, symbol, unit }: Pick<ShownQuantity, 'name' | 'symbol' | 'unit'>,
  currency: string | undefined,
): string {
  const printed = unitText(unit, currency);
  return `${name} ${symbol}${printed === '' ? '' : ` (${printed})`}`;
}
