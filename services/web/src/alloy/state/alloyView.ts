import { readConditions, writeConditions } from '../conditions/conditionState.ts';

/** Everything that tells one view of an alloy from another beside the composition; all of it stands in the address. */
export interface AlloyView {
  /** that were asked for */
  conditions: Record<string, number>;
  /** the element that is to be replaced; null: none */
  replace: string | null;
  /** who may come instead; empty: every other */
  partners: readonly string[];
  /** of the batch, g */
  mass: number;
  /** one step of the balance, g */
  resolution: number;
}

const usual = { mass: 50, resolution: 0.001 };
const symbol = /^[A-Z][a-z]?$/;

/** Reads a view from the search part of an address; what makes no sense is left out. */
export function readAlloyView(text: string): AlloyView {
  const address = new URLSearchParams(text);
  const replace = address.get('replace') ?? '';
  const grams = (name: 'mass' | 'resolution') => {
    const value = Number(address.get(name));
    return value > 0 && Number.isFinite(value) ? value : usual[name];
  };
  return {
    conditions: readConditions(address),
    replace: symbol.test(replace) ? replace : null,
    partners: (address.get('with') ?? '').split(',').filter((one) => symbol.test(one)),
    mass: grams('mass'),
    resolution: grams('resolution'),
  };
}

/** The search part of an address for a view; what is usual is left out. */
export function writeAlloyView({ conditions, replace, partners, mass, resolution }: AlloyView): string {
  const address = writeConditions(new URLSearchParams(), conditions);
  if (replace !== null) {
    address.set('replace', replace);
    if (partners.length > 0) address.set('with', partners.join(','));
  }
  if (mass !== usual.mass) address.set('mass', String(mass));
  if (resolution !== usual.resolution) address.set('resolution', String(resolution));
  return address.toString().replaceAll('%2C', ',');
}
