import type { MaterialView } from '@tiegel/contract';
import { spacedComposition } from '@tiegel/elements';

/** What a material contains: 'iron alone' as 'Fe', a master alloy as 'Fe34 Nb66' in wt.%. */
export function containsInWords({ contains }: Pick<MaterialView, 'contains'>): string {
  const symbols = Object.keys(contains);
  return symbols.length === 1 ? symbols[0]! : spacedComposition(contains, 1);
}
