import type { Quantity } from '../definition/quantity.ts';
import { singlePhaseProbability } from '../models/phaseClasses.ts';

/**
 * The probability that the alloy, as usually made, is one disordered fcc or bcc solution: a
 * multinomial logistic model in means of element columns, spreads of two, entropy, mixing enthalpy
 * and squared pair enthalpies, trained on published alloys (`npm run train`; models/phaseClasses.ts
 * has the form, packages/insight the validation). The log odds of a class are a polynomial of second
 * degree in the shares, two roots of such, and the entropy.
 * @source ours; data: Borg et al., Sci. Data 7 (2020) 430
 */
export const singlePhaseEstimate: Quantity = {
  id: 'singlePhaseEstimate',
  name: 'Estimate of one solid solution',
  symbol: 'p₁',
  unit: '',
  formula: singlePhaseProbability,
  notation:
    'p₁ = p(fcc) + p(bcc), p(class) ∝ exp(a + Σ b φ), φ means and spreads of element data, ΔS/R, ΔH, Σ cᵢcⱼ(4Hᵢⱼ)²',
  meaning:
    'How often alloys like this one were reported as a single disordered fcc or bcc solution. It learnt from published alloys, as usually made.',
  range: { min: 0, max: 1 },
  decimals: 2,
  source: {
    authors: 'Logistic model of this project on data of Borg et al.',
    year: 2020,
    where: 'Sci. Data 7, 430 (data)',
    checked: 'ours, no source',
  },
  // Farther from every alloy of the training data too few were known to say what it is worth (evidence.md).
  basis: { quantity: 'nearestDistance', max: 0.22 },
  caution:
    'Says nothing of processing and annealing, and has no basis far from published alloys: see the distance to the nearest. Alloys are published because somebody thought them worth melting.',
};
