import { spacedComposition } from '../formatComposition.ts';
import { weightToAtomicPercent } from '../percent.ts';
import { isAvailable } from '../periodicTable.ts';
import { hyphen } from './stopFor.ts';

const dash = `\\s*${hyphen.source}\\s*`;
const whole = new RegExp(`^\\s*([A-Z][a-z]?)((?:${dash}\\d+(?:\\.\\d+)?\\s*[A-Z][a-z]?)+)\\s*$`);

/**
 * A text such as 'Fe-20Cr-10Ni', the notation of mass per cent whose first metal is the rest, as
 * amounts behind their symbols, in mass per cent and in at.%; null where it is no such text.
 */
export function massPerCent(text: string): { byWeight: string; byAtoms: string } | null {
  const found = whole.exec(text);
  if (found === null) return null;
  const added = [...found[2]!.matchAll(/(\d+(?:\.\d+)?)\s*([A-Z][a-z]?)/g)].map(
    ([, amount, symbol]) => [symbol!, Number(amount)] as const,
  );
  const rest = Number((100 - added.reduce((sum, [, amount]) => sum + amount, 0)).toFixed(9));
  const amounts = [[found[1]!, rest] as const, ...added];
  const symbols = new Set(amounts.map(([symbol]) => symbol));
  if (symbols.size < amounts.length || ![...symbols].every(isAvailable)) return null;
  if (!amounts.every(([, amount]) => amount > 0)) return null;
  const atomic = weightToAtomicPercent(Object.fromEntries(amounts));
  return {
    byWeight: amounts.map(([symbol, amount]) => symbol + amount).join(''),
    byAtoms: spacedComposition(atomic),
  };
}
