import { type ChargeSheet, decimalsOf } from '@tiegel/charge';
import { fixedDecimals } from '@tiegel/contract/terms';
import { spacedComposition } from '@tiegel/elements';
import type { SavedChargeSheet } from '@tiegel/search/laboratory';
import { wrapped } from './inWords.ts';
import { table } from './table.ts';

/**
 * A charge sheet for reading and for paper: masses in the order of charging, what comes of them, what
 * they mean, and the cautions.
 * @param invented day of the invented price list that the costs come from, null where they do not
 * @param number under which it was kept, null where it was not
 * @param saved where it was kept before: when, what for, and which price list was in force then
 */
export function* chargeText(
  sheet: ChargeSheet,
  {
    invented,
    number,
    saved,
  }: {
    invented: string | null;
    number: string | null;
    saved?: Pick<SavedChargeSheet, 'name' | 'savedAt' | 'by' | 'prices'>;
  },
): Generator<string> {
  const { composition, mass, resolution, window, notes, cautions } = sheet;
  if (number !== null) yield `Charge sheet ${number}\n`;
  if (saved) yield `${wrapped(savedText(saved))}\n`;
  yield `${wrapped(`${spacedComposition(composition)} at.%, ${mass} g on a balance of ${resolution} g`)}\n\n`;
  yield `${masses(sheet).join('\n')}\n\n`;
  yield `${shares(sheet).join('\n')}\n\n`;
  if (window.gap !== null && window.highestMelting !== null) {
    const { lowestBoiling: boils, highestMelting: melts } = window;
    yield `${wrapped(`${Math.round(window.gap)} K between the lowest boiling (${boils.element}, ${Math.round(boils.temperature)} K) and the highest melting point (${melts.element}, ${Math.round(melts.temperature)} K).`)}\n`;
  }
  for (const note of notes) yield `${wrapped(note)}\n`;
  if (invented !== null) yield `Prices of ${invented}, invented for demonstration.\n`;
  if (saved?.prices) {
    const { date, currency, invented: made } = saved.prices;
    yield `Price list in force then: ${date}, ${currency}${made ? ', invented for demonstration' : ''}.\n`;
  }
  yield `\n${wrapped(`CAUTIONS. Reminders, not a safety assessment. ${cautions[0]?.follow ?? ''}`.trim())}\n`;
  for (const { kind, text } of cautions) yield `${wrapped(`- ${kind}: ${text}`)}\n`;
}

function masses({ lines, total, resolution, cost, currency, order }: ChargeSheet): string[] {
  const decimals = decimalsOf(resolution);
  const ordered = order.map((name) => lines.find(({ material }) => material === name)!);
  const rows = ordered.map(({ material, mass, melting, cost: of }, at) => [
    String(at + 1),
    material,
    mass.toFixed(decimals),
    `${melting.estimated ? '~' : ''}${Math.round(melting.temperature)}`,
    of === null ? null : of.toFixed(2),
  ]);
  return table(
    [
      { head: '' },
      { head: 'material', align: 'left' },
      { head: 'mass', unit: 'g' },
      { head: 'melts at', unit: 'K' },
      { head: 'cost', unit: currency ?? '' },
    ],
    [...rows, ['', 'in all', total.toFixed(decimals), '', cost === null ? null : cost.toFixed(2)]],
  );
}

function shares({ composition, resulting, rounding }: ChargeSheet): string[] {
  return table(
    [
      { head: '', align: 'left' },
      { head: 'target', unit: 'at.%' },
      { head: 'resulting', unit: 'at.%' },
      { head: 'off', unit: 'at.%' },
      { head: 'at most', unit: 'at.%' },
    ],
    Object.keys(composition).map((symbol) => [
      symbol,
      composition[symbol]!.toFixed(3),
      resulting[symbol]!.toFixed(3),
      signed(resulting[symbol]! - composition[symbol]!),
      rounding[symbol]!.toFixed(4),
    ]),
  );
}

function signed(number: number): string {
  const shown = fixedDecimals(number, 4);
  return shown.startsWith('-') ? shown : `+${shown}`;
}

function savedText({ savedAt, by, name }: Pick<SavedChargeSheet, 'savedAt' | 'by' | 'name'>): string {
  const at = `${savedAt.slice(0, 16).replace('T', ' ')} UTC`;
  return [at, ...(by === null ? [] : [`by ${by}`]), name].join(' ').trim();
}
