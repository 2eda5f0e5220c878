import type { Evidence, PhaseEstimate } from '@tiegel/contract';
import { formatCount, formatNumber } from '../../numbers/formatNumber.ts';
import { apartInWords } from './apartInWords.ts';

/**
 * How far the estimate can be trusted here, in plain words: its probability, and how many of the
 * published alloys that it rated alike turned out so.
 */
export function surenessInWords(phase: PhaseEstimate, evidence: Evidence | null): string {
  const { singleSolution, basis, nearestDistance } = phase;
  const apart = `${apartInWords(nearestDistance)} of the atoms differ from the nearest alloy with known phases`;
  if (singleSolution === null) {
    return `There is no basis for an estimate: ${apart}, or data of an element lack.`;
  }
  const said = `The estimate of one solid solution is ${formatNumber(singleSolution, 2)}.`;
  const thin = basis === 'weak' ? ` Its basis is thin: ${apart}.` : '';
  const band = evidence?.phaseEstimate.reliability.find(
    ({ from, to }) => singleSolution >= from && (singleSolution < to || to === 1),
  );
  if (!band || band.count < 1 || band.happened === null) return said + thin;
  const { from, to, count, happened } = band;
  return (
    `${said} Of the published alloys that it rated ${formatNumber(from, 2)} to ${formatNumber(to, 2)} ` +
    `without having seen their system, ${formatNumber(100 * happened, 0)} % were (about ${formatCount(Math.round(count))} alloys).${thin}`
  );
}
