import { type Fault, fault, nearest } from '@tiegel/contract/terms';

/** The fault of a quantity that the candidates of a search do not have, with the one that was probably meant. */
export function unknownColumn(quantity: string, columns: readonly string[], pointer: string): Fault {
  const what = `The candidates of this search have no quantity "${quantity}"`;
  const near = nearest(quantity, columns);
  const values = {
    what: near === null ? what : `${what}: did you mean "${near}"?`,
    right: `Use one of these: ${columns.join(', ')}.`,
  };
  return fault('request/invalid', values, pointer);
}
