import type { PhaseEstimate } from './phase.ts';
import type { PhaseClass } from './phaseClasses.ts';

/** Classes of an estimate, and whether it has a basis. */
export interface Likely extends Pick<PhaseEstimate, 'basis'> {
  likely: readonly PhaseClass[] | null;
}

/** What the estimate expects of the metal, as one plain sentence. */
export function likelyInWords({ likely, basis }: Likely): string {
  if (likely === null || basis === 'none') return 'Nothing can be said of its phases.';
  const single = likely.filter((one) => one === 'fcc' || one === 'bcc');
  const several = likely.filter((one) => one === 'both' || one === 'other');
  const one = `one uniform metal phase (${single.join(' or ')})`;
  if (several.length === 0) return `Probably ${one}.`;
  const more = several.includes('other') ? 'more phases or compounds' : 'two phases, fcc and bcc';
  return single.length === 0 ? `Probably ${more}.` : `Perhaps ${one}, perhaps ${more}.`;
}
