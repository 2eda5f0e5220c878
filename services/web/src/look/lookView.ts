import type { SearchView } from '@tiegel/contract';
import type { ShownQuantity } from '../server/types.ts';
import type { ViewState } from './viewState.ts';

/** What every view of a result is given. */
export interface LookProps {
  search: SearchView;
  /** of its candidates: those that it ranks and limits first */
  quantities: readonly ShownQuantity[];
  view: ViewState;
  change: (part: Partial<ViewState>) => void;
}

/** From which data a figure comes: stands under it and in its files. */
export function originOf({ name, id, dataVersion, engineVersion, prices }: SearchView): string {
  const called = name === '' ? `Search ${id}` : `“${name}” (search ${id})`;
  const invented = prices?.invented ? ' Prices are invented for the demonstration.' : '';
  return `${called}; data version ${dataVersion}, engine version ${engineVersion}.${invented}`;
}

/** A name of plain letters for the files of a figure. */
export function fileNameOf({ name, id }: SearchView, what: string): string {
  const words = name.toLowerCase().match(/[a-z0-9]{1,30}/g) ?? [];
  return [...words.slice(0, 8), id, what].join('-');
}
