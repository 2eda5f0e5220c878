import { mostCompared } from '@tiegel/contract/terms';
import { readConditions, writeConditions } from '../alloy/conditions/conditionState.ts';
import { readAlloyText } from '../alloy/entry/readAlloyText.ts';

/** What a comparison shows; all of it stands in the address. */
export interface CompareView {
  /** canonical texts, each once, at most six */
  alloys: readonly string[];
  /** what the address names and nobody can read */
  unreadable: readonly string[];
  conditions: Record<string, number>;
  /** id of the search whose limits are tested; null: none */
  search: string | null;
  /** rows in which nothing differs are left out */
  onlyDifferent: boolean;
}

/** Reads a comparison from the search part of an address. */
export function readCompareView(text: string): CompareView {
  const address = new URLSearchParams(text);
  const read = address
    .getAll('alloy')
    .map((written) => ({ written, canonical: readAlloyText(written).text }));
  const alloys = [...new Set(read.flatMap(({ canonical }) => canonical ?? []))].slice(0, mostCompared);
  return {
    alloys,
    unreadable: read.filter(({ canonical }) => canonical === null).map(({ written }) => written),
    conditions: readConditions(address),
    search: address.get('search'),
    onlyDifferent: address.get('only') === 'different',
  };
}

/** The search part of an address for a comparison. */
export function writeCompareView({ alloys, conditions, search, onlyDifferent }: CompareView): string {
  const address = new URLSearchParams(alloys.map((alloy) => ['alloy', alloy]));
  if (search !== null) address.set('search', search);
  if (onlyDifferent) address.set('only', 'different');
  return writeConditions(address, conditions).toString();
}
