import { columns, priceColumn } from '@tiegel/elements';
import type { ElementView } from '../server/types.ts';

/** A number of an element that its card can show. */
export interface ElementProperty {
  id: string;
  name: string;
  /** '' for a plain number; 'currency' stands for the currency of the price list */
  unit: string;
  decimals: number;
}

/** Decimals that mean something, and the order in which the properties are offered. */
export const propertyDecimals: Record<string, number> = {
  meltingTemperature: 0,
  boilingTemperature: 0,
  density: 2,
  metallicRadius: 1,
  atomicMass: 2,
  valenceElectrons: 0,
  paulingElectronegativity: 2,
  allenElectronegativity: 2,
  shearModulus: 0,
  youngsModulus: 0,
  bulkModulus: 0,
  price: 2,
};

/** The properties that the server tells of the elements. */
export function elementProperties(elements: readonly ElementView[]): ElementProperty[] {
  return Object.keys(propertyDecimals).flatMap((id) => {
    const column = [...columns, priceColumn].find((one) => one.id === id);
    const told = elements.some((element) => propertyOf(element, id) !== null);
    return column && told
      ? [{ id, name: column.name, unit: column.unit, decimals: propertyDecimals[id]! }]
      : [];
  });
}

/** The value of a property; null where it is unknown. */
export function propertyOf(element: ElementView, property: string): number | null {
  const value = element[property as keyof ElementView];
  return typeof value === 'number' ? value : null;
}
