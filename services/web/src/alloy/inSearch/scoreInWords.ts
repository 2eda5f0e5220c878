import type { Candidate, QuantityView, RankEntry } from '@tiegel/contract';
import { nameInSentence } from '@tiegel/contract/terms';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { unitText } from '../../server/lookup.ts';

/** What a candidate's score is and means: 'size mismatch 1.02 %', 'off its target by 0.03', 'desirability 0.71 of 1'. */
export function scoreInWords(
  { score }: Candidate,
  rank: readonly RankEntry[],
  quantities: readonly QuantityView[],
  currency: string | undefined,
): string {
  const [first] = rank;
  if (score === null || first === undefined) return 'the quantity that ranks has no value here';
  if (rank.length > 1) return `desirability ${formatNumber(score, 4)} of 1`;
  const quantity = quantities.find(({ id }) => id === first.quantity);
  const value =
    `${formatNumber(score, quantity?.decimals ?? 3)} ${unitText(quantity?.unit ?? '', currency)}`.trim();
  const name = nameInSentence(first.quantity, quantity?.name ?? first.quantity);
  if (typeof first.prefer === 'string') return `${name} ${value}, ${first.prefer}est first`;
  return `${name} off its target ${formatNumber(first.prefer.target, quantity?.decimals ?? 3)} by ${value}`;
}
