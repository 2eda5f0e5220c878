import type { QuantityView, SearchSpecification } from '@tiegel/contract';
import { askedFirst } from '../../look/columns.ts';

/** What is compared where no search says what matters. */
const usual = [
  'mixingEnthalpy',
  'sizeMismatch',
  'valenceElectronConcentration',
  'meltingTemperature',
  'density',
  'cost',
];

/** The quantities that the search asks for, then the usual ones. */
export function columnsFor(
  quantities: readonly QuantityView[],
  specification: SearchSpecification | null,
): QuantityView[] {
  const asked = specification === null ? [] : askedFirst(specification, quantities).asked;
  const others = usual.flatMap((id) => quantities.find((one) => one.id === id && !asked.includes(one)) ?? []);
  return [...asked, ...others];
}
