import { spacedComposition } from '@tiegel/elements';
import { quantityById } from '@tiegel/screening';
import type { MeltView } from '@tiegel/search/laboratory';
import { attachmentsText } from './attachmentsText.ts';
import { fittedTable } from './fittedTable.ts';
import { wrapped } from './inWords.ts';
import { type MeltVersion, meltHistoryText } from './meltHistoryText.ts';
import { unitOf } from './quantityColumn.ts';

/** Melts for reading, one a line. */
export function* meltList(melts: readonly MeltView[]): Generator<string> {
  if (melts.length === 0) {
    yield 'No melt has been recorded here yet.\n';
    return;
  }
  const rows = melts.map(({ id, date, name, label, hardness, charge }) => [
    ...[id, date, name.slice(0, 24), label ?? 'not looked at'],
    hardness === null ? null : hardness.toFixed(0),
    charge,
  ]);
  const left = { align: 'left' as const };
  const columns = [
    { head: 'id', ...left },
    { head: 'day', ...left },
    { head: 'name', ...left },
    { head: 'phases', ...left },
    { head: 'hardness', unit: 'HV' },
    { head: 'charge', ...left },
  ];
  yield `${fittedTable(columns, rows).join('\n')}\n`;
}

/** A melt for reading: the composition as weighed beside the nominal one, what was done and seen, its files and its history. */
export function* meltText(melt: MeltView & { history?: readonly MeltVersion[] }): Generator<string> {
  const { id, version, name, date, charge, process, anneal, label, methods, deletedAt } = melt;
  yield `${wrapped(`${name === '' ? 'Melt' : name}, ${date}, ${id}, version ${version}${deletedAt === null ? '' : ', deleted'}`)}\n`;
  yield `${wrapped(`${spacedComposition(melt.composition)} at.%, as weighed after the losses`)}\n`;
  if (melt.nominal !== null) {
    yield `${wrapped(`nominal: ${spacedComposition(melt.nominal)}${charge === null ? '' : `, charge sheet ${charge}`}`)}\n`;
  }
  const annealed =
    anneal === null
      ? 'no anneal'
      : `annealed at ${anneal.temperature} K for ${anneal.hours} h, cooling: ${anneal.cooling}`;
  yield `${wrapped(`${process}, ${annealed}`)}\n`;
  yield `${wrapped(label === null ? 'phases: not looked at yet' : `phases: ${label} by ${methods.join(', ')}`)}\n`;
  yield `${wrapped(measured(melt))}\n`;
  if (melt.notes !== '') yield `${wrapped(melt.notes)}\n`;
  yield* attachmentsText(melt.attachments);
  yield* meltHistoryText(melt.history ?? []);
}

function measured({ hardness, density, ingot, attachments }: MeltView): string {
  const value = (name: string, number: number | null, unit: string) =>
    number === null ? `${name} not measured` : `${name} ${number} ${unit}`;
  return [
    value('hardness', hardness, 'HV'),
    value('density', density, unitOf(quantityById('density'), null)),
    value('ingot', ingot, 'g'),
    `${attachments.length} ${attachments.length === 1 ? 'file' : 'files'} attached`,
  ].join(', ');
}
