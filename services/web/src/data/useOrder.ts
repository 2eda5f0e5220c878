import type { Direction } from './table/tableColumn.ts';
import { useAddress } from './useAddress.ts';

/** The order of a table, as it stands in the address. */
export function useOrder(usual: string, usualDirection: Direction = 'asc') {
  const [address, change] = useAddress();
  const order = address.get('order') ?? usual;
  const direction = (address.get('direction') ?? usualDirection) === 'desc' ? 'desc' : 'asc';
  const onOrder = (next: string, way: Direction) =>
    change({
      order: next === usual ? null : next,
      direction: way === usualDirection ? null : way,
    });
  return { order, direction, onOrder } as const;
}
