import type {
  Amounts,
  Candidate,
  Evidence,
  Explanation,
  Facts,
  Limit,
  QuantityView,
  SearchView,
  TypicalRanges,
  Values,
} from '@tiegel/contract';
import type { SearchSpace } from '@tiegel/contract/terms';
import type { OwnPair } from '@tiegel/elements';
import type { ElementView, PricesView } from '../../server/types.ts';

/** What is known of the alloy on the page; every part of the page is drawn from it. */
export interface AlloyState {
  /** at.%, 100 in sum */
  composition: Amounts;
  /** alphabetical */
  symbols: readonly string[];
  /** of the shares in display (at.%) */
  decimals: number;
  /** by how much arrow keys change a share (at.%) */
  step: number;
  /** that were asked for; every other has its default */
  conditions: Record<string, number>;
  facts: Facts;
  /** the quantities of this very composition, with the expressions of the search; none of what is not known */
  values: Values;
  quantities: readonly QuantityView[];
  elements: readonly ElementView[];
  /** pair values in force that were brought in */
  ownPairs: readonly OwnPair[];
  prices: PricesView;
  /** null while it is not known; of an earlier composition while `stale` */
  explanation: Explanation | null;
  stale: boolean;
  /** why there is no explanation of this composition */
  error: unknown;
  retry: () => void;
  /** null while it is not known */
  evidence: Evidence | null;
  typical: TypicalRanges | null;
  /** of the search, those that the server tests on any alloy: not on expressions and columns of one's own */
  limits: readonly Limit[];
  /** which alloys the search looks at; null where the page belongs to none */
  space: SearchSpace | null;
  /** null where the page belongs to no search */
  search: SearchView | null;
  /** null where the search did not keep the composition, or that is not known yet */
  candidate: Candidate | null;
}
