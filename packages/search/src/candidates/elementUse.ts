import type { ElementUse } from '@tiegel/contract';

/** How often each element is in the candidates that it is told of, and how much of it. */
export function elementUse(pool: readonly string[]) {
  const counted = new Map(pool.map((symbol) => [symbol, new Map<string, number>()]));
  return {
    /** A candidate: its symbols with spaces between, and its parts of the grid. */
    add(system: string, parts: string): void {
      const amounts = parts.split(' ');
      const whole = wholeOf(amounts);
      for (const [place, symbol] of system.split(' ').entries()) {
        const amount = `${amounts[place]}/${whole}`;
        const counts = counted.get(symbol)!;
        counts.set(amount, (counts.get(amount) ?? 0) + 1);
      }
    },
    /** The most frequent first, then by symbol. */
    elements(): ElementUse['elements'] {
      return [...counted]
        .map(([symbol, counts]) => ({
          symbol,
          candidates: [...counts.values()].reduce((sum, count) => sum + count, 0),
          amounts: [...counts]
            .map(([amount, candidates]) => ({ atomicPercent: atomicPercent(amount), candidates }))
            .sort((a, b) => a.atomicPercent - b.atomicPercent),
        }))
        .sort((a, b) => b.candidates - a.candidates || (a.symbol < b.symbol ? -1 : 1));
    },
  };
}

function wholeOf(amounts: readonly string[]): number {
  let whole = 0;
  for (const amount of amounts) whole += Number(amount);
  return whole;
}

function atomicPercent(amount: string): number {
  const [part, whole] = amount.split('/').map(Number);
  return (100 * part!) / whole!;
}
