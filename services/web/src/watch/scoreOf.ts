import type { SearchView } from '@tiegel/contract';
import { nameInSentence } from '@tiegel/contract/terms';
import { axisTitle } from '../plot/axisTitle.ts';
import { lookupIn, unitText } from '../server/lookup.ts';
import type { ShownQuantity } from '../server/types.ts';

/** What the score of a search is: the ranked quantity, the distance to its target, or the combined desirability. */
export function scoreOf(
  { specification, prices }: Pick<SearchView, 'specification' | 'prices'>,
  quantities: readonly ShownQuantity[],
): { name: string; title: string; unit: string; decimals: number } {
  const [entry, ...others] = specification.rank;
  const currency = prices?.currency;
  if (!entry || others.length > 0) {
    return { name: 'desirability', title: 'Desirability', unit: '', decimals: 3 };
  }
  const quantity = quantities.find(({ id }) => id === entry.quantity);
  const decimals = quantity?.decimals ?? 2;
  if (!quantity) {
    const { name, unit } = lookupIn(quantities, currency)(entry.quantity);
    return { name, title: name, unit, decimals };
  }
  const unit = unitText(quantity.unit, currency);
  const name = nameInSentence(quantity.id, quantity.name);
  if (typeof entry.prefer === 'object') {
    const target = `${entry.prefer.target}${unit === '' ? '' : ` ${unit}`}`.replace('-', '−');
    return {
      name: `distance of ${name} to ${target}`,
      title: `Distance to ${target}${unit === '' ? '' : ` (${unit})`}`,
      ...{ unit, decimals },
    };
  }
  return { name, title: axisTitle(quantity, currency), unit, decimals };
}
