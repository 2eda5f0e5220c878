import { quantityById } from '@tiegel/screening';

/** Name and unit of a quantity as a search words them, with the currency of the prices that it was planned with. */
export function namedIn(currency: string | null): (id: string) => { name: string; unit: string } {
  return (id) => {
    const { name, unit } = quantityById(id);
    return { name, unit: currency === null ? unit : unit.replace('currency', currency) };
  };
}
