import type { SystemView } from '@tiegel/contract';
import { csvText, formatComposition } from '@tiegel/elements';
import type { ShownQuantity } from '../server/types.ts';

/**
 * Systems in their order as CSV (RFC 4180) with a head that names the units: the best candidate of each with every
 * quantity in full, with a point, and how much is known of the system.
 */
export function systemsAsCsv(
  items: readonly SystemView[],
  quantities: readonly Pick<ShownQuantity, 'id' | 'unit'>[],
): string {
  const head = [
    ...['place', 'system', 'kept', 'best rank', 'best composition (at.%)'],
    ...quantities.map(({ id, unit }) => (unit === '' ? id : `${id} (${unit})`)),
    ...['published alloys', 'published phases', 'melts recorded here', 'own alloys'],
  ];
  const lines = items.map(({ system, kept, best, published, melts, own }, place) => [
    ...[String(place + 1), system, String(kept), String(best.rank), formatComposition(best.composition)],
    ...quantities.map(({ id }) => String(best.quantities[id] ?? '')),
    String(published?.alloys ?? 0),
    (published?.phases ?? []).map(({ phases, alloys }) => `${phases ?? 'not reported'} ${alloys}`).join('; '),
    ...[String(melts), String(own)],
  ]);
  return csvText(head, lines);
}
