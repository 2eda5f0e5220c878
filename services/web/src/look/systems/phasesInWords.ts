import type { SystemView } from '@tiegel/contract';
import { formatCount } from '../../numbers/formatNumber.ts';

const mostLabels = 3;

/**
 * What is published of a system, and how many alloys of one's own and melts there are here:
 * '12 alloys: FCC 7, FCC+BCC 3, not reported 2; 2 alloys of yours; 1 melt here'.
 */
export function phasesInWords(published: SystemView['published'], { own = 0, melts = 0 } = {}): string {
  const yours = own === 0 ? '' : `; ${formatCount(own)} ${own === 1 ? 'alloy' : 'alloys'} of yours`;
  const melted = melts === 0 ? '' : `; ${formatCount(melts)} ${melts === 1 ? 'melt' : 'melts'} here`;
  const here = yours + melted;
  if (published === null) return `none in the table here${here}`;
  const { alloys, phases } = published;
  const labels = phases
    .slice(0, mostLabels)
    .map(({ phases: label, alloys: count }) => `${label ?? 'not reported'} ${formatCount(count)}`);
  const more = phases.length > mostLabels ? ', …' : '';
  return `${formatCount(alloys)} ${alloys === 1 ? 'alloy' : 'alloys'}: ${labels.join(', ')}${more}${here}`;
}
