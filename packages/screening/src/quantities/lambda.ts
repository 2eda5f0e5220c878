import type { Quantity } from '../definition/quantity.ts';
import { atMost, choose, constant, divide, lesser, linear, times, variance } from '../formula/expression.ts';
import { configurationalEntropy } from './configurationalEntropy.ts';

const CAP = constant(10_000, 'J/(mol K)');

const squaredMismatch = divide(
  times(10_000, variance('metallicRadius')), // pm²
  times(linear('metallicRadius'), linear('metallicRadius')), // pm²
);

/**
 * Λ, entropy against size mismatch (J/(mol K), as published: δ enters as a number of per cent):
 *   Λ = min(10⁴, ΔS / δ²),   10⁴ where δ = 0, a pure element included.
 * The cap is ours. δ² is 10⁴ var(r)/r̄², without the root that would be squared again.
 * @source Singh, Kumar, Dwivedi & Subramaniam, Intermetallics 53 (2014) 112 (equation from memory)
 */
export const lambda: Quantity = {
  id: 'lambda',
  name: 'Entropy–size ratio',
  symbol: 'Λ',
  unit: 'J/(mol K)',
  formula: choose(
    atMost(squaredMismatch, 0),
    CAP,
    lesser(CAP, divide(configurationalEntropy.formula, squaredMismatch)),
  ),
  notation: 'Λ = min(10⁴, ΔS / δ²); 10⁴ where δ = 0',
  meaning: 'Entropy against the strain from unequal atoms; above about 0.96 one phase is expected.',
  range: { min: 0, max: 10_000 },
  decimals: 2,
  source: { authors: 'Singh et al.', year: 2014, where: 'Intermetallics 53, 112', checked: 'from memory' },
  caution: 'It belongs to the radius set, as δ does. Where δ is near 0 its size means nothing.',
};
