import type { Quantity } from '../definition/quantity.ts';
import { entropy, exponential } from '../formula/expression.ts';

/**
 * Effective number of elements N_eff, no unit: how many elements in equal shares have the entropy
 * of the composition,
 *   N_eff = exp(−Σ cᵢ ln cᵢ);   n for n equal shares, 1 for a pure element.
 * @source the perplexity of a distribution; common practice
 */
export const effectiveElements: Quantity = {
  id: 'effectiveElements',
  name: 'Effective number of elements',
  symbol: 'N_eff',
  unit: '',
  formula: exponential(entropy()),
  notation: 'N_eff = exp(−Σ cᵢ ln cᵢ)',
  meaning:
    'How many elements in equal shares would be as mixed as this composition: a trace hardly counts, a main element counts as one.',
  range: { min: 1 },
  decimals: 2,
  source: {
    authors: 'Perplexity of the shares',
    year: null,
    where: 'definition of perplexity',
    checked: 'definition',
  },
};
