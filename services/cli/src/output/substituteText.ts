import type { Limit } from '@tiegel/contract';
import { type PriceList, spacedComposition } from '@tiegel/elements';
import { type Phase, type Substitute, substitutesTrust } from '@tiegel/insight';
import { wrapped } from './inWords.ts';
import { quantityColumn, shownValue } from './quantityColumn.ts';
import { lineWidth, table } from './table.ts';

const shownItems = 20;
/** Those that fit into a line are shown, in this order. */
const columns = [
  'valenceElectronConcentration',
  'sizeMismatch',
  'mixingEnthalpy',
  'density',
  'meltingTemperature',
];

/** Substitutes for reading: the best of them, by what, and what it does to the alloy. */
export function* substituteText(
  items: readonly Substitute<Phase>[],
  limits: readonly Limit[],
  prices: PriceList,
): Generator<string> {
  yield `${fitting(items.slice(0, shownItems), limits, prices, columns).join('\n')}\n\n`;
  yield `${Math.min(shownItems, items.length)} of ${items.length}; all of them, with every quantity and its change: --json.\n`;
  const kept = limits.length === 0 ? '' : 'limits: how many of them are kept. ';
  yield `${wrapped(`unlike: 0 as before, 1 as unlike as can be. ${kept}p₁: estimate of one solution, – without a basis. T_sp: demixing, an explanation and no prediction of phases, – at no temperature.`)}\n`;
  yield `${wrapped(substitutesTrust)}\n`;
  yield* outsideInWords(items.slice(0, shownItems));
  if (prices.invented) yield `Prices of ${prices.date}, invented for demonstration.\n`;
}

/** What is counted among the limits does not tell that an element is forbidden. */
function* outsideInWords(items: readonly Substitute<Phase>[]): Generator<string> {
  const outside = items.filter(({ outsideSpace }) => outsideSpace.length > 0);
  if (outside.length === 0) return;
  yield '\n×: outside the space of the search.\n';
  for (const { composition, outsideSpace } of outside)
    yield `${wrapped(`× ${spacedComposition(composition)}: ${outsideSpace.join('; ')}`)}\n`;
  yield '\n';
}

function fitting(
  items: readonly Substitute<Phase>[],
  limits: readonly Limit[],
  prices: PriceList,
  ids: readonly string[],
): string[] {
  const lines = table(
    [
      { head: 'composition', unit: 'at.%', align: 'left' },
      { head: 'unlike' },
      ...(limits.length === 0 ? [] : [{ head: 'limits' }]),
      { head: 'p₁' },
      { head: 'T_sp', unit: 'K' },
      quantityColumn('cost', prices),
      ...ids.map((id) => quantityColumn(id, prices)),
    ],
    items.map(({ composition, score, phase, demixing, cost, quantities, limits: kept, outsideSpace }) => [
      `${outsideSpace.length > 0 ? '× ' : ''}${spacedComposition(composition)}`,
      score?.toFixed(3) ?? null,
      ...(limits.length === 0 ? [] : [`${kept.filter(Boolean).length}/${limits.length}`]),
      phase?.singleSolution?.toFixed(2) ?? null,
      demixing?.temperature?.toFixed(0) ?? null,
      shownValue('cost', cost),
      ...ids.map((id) => shownValue(id, quantities[id])),
    ]),
  );
  const fits = Math.max(...lines.map((line) => line.length)) <= lineWidth;
  return fits || ids.length === 0 ? lines : fitting(items, limits, prices, ids.slice(0, -1));
}
