import type { OwnColumn, PairValue, PriceList } from '@tiegel/elements';

/** The data of the laboratory's own that searches are planned with, beside those that the project carries. */
export interface LabData {
  prices: PriceList | null;
  columns?: readonly OwnColumn[];
  pairs?: readonly PairValue[];
}
