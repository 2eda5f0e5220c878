import { countedAmounts, parseAlloy, spacedComposition } from '@tiegel/elements';

/** From here on an amount is most probably per cent, and a symbol without one the forgotten rest. */
const likelyPercent = 10;

/** What is asked of an alloy that can be read and that its writer may have meant otherwise; '' where nothing is. */
export function alloyQuestion(written: string): string {
  const { withoutAmount, shared } = countedAmounts(written);
  const asked = [
    ...withoutAmount
      .filter(({ beside }) => beside >= likelyPercent)
      .map(({ what, counted, beside }) => `${what} has no amount: counted as ${counted} beside ${beside}`),
    ...shared.map(({ what, amount }) => `${what}${amount} counts ${amount} in all, not ${amount} of each`),
  ];
  return asked.length === 0 ? '' : `${asked.join('; ')}; ${spacedComposition(parseAlloy(written))}.`;
}
