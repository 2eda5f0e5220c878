import { Printed } from '../frame/Printed.tsx';
import { conditionsInWords } from './conditions/conditionsInWords.ts';
import type { AlloyState } from './state/alloyState.ts';

/** What the numbers of the page depend on; on paper also when and from where it was printed. */
export function Provenance({ alloy }: { alloy: AlloyState }) {
  const { search, candidate, conditions, prices, explanation } = alloy;
  const list = candidate ? search?.prices : prices;
  return (
    <footer className="provenance small quiet">
      <p>Computed for: {conditionsInWords(conditions)}.</p>
      <p>
        {search && candidate
          ? `The search ran with data version ${search.dataVersion}, engine version ${search.engineVersion}. `
          : ''}
        {explanation ? `Data version in force now ${explanation.dataVersion}. ` : ''}
        Prices {list ? `of ${list.date}${list.invented ? ' (invented)' : ''}` : 'none'}.
      </p>
      <Printed />
    </footer>
  );
}
