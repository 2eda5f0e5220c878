import type { WeighingError } from '@tiegel/contract';
import { FaultList } from '../../frame/FaultList.tsx';
import { formatInterval } from '../../numbers/formatInterval.ts';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { lookupIn } from '../../server/lookup.ts';
import { limitAsSentence } from '../../words/limitAsSentence.ts';
import { untestedInWords } from '../inSearch/untestedInWords.ts';
import type { AlloyState } from '../state/alloyState.ts';
import { GramField } from './GramField.tsx';

interface WeighingSectionProps {
  alloy: AlloyState;
  mass: number;
  resolution: number;
  onChange: (part: { mass?: number; resolution?: number }) => void;
  weighing: WeighingError | null;
  error: unknown;
  stale: boolean;
}

/** What the step of a balance leaves certain: shares, limits and rules that weighing alone can turn. */
export function WeighingSection(props: WeighingSectionProps) {
  const { alloy, mass, resolution, onChange, weighing, error, stale } = props;
  return (
    <section aria-labelledby="weighing">
      <h2 id="weighing">Weighed out</h2>
      <div className="row">
        <GramField label="Mass of the batch" value={mass} onTake={(grams) => onChange({ mass: grams })} />
        <GramField
          label="One step of the balance"
          value={resolution}
          onTake={(grams) => onChange({ resolution: grams })}
        />
      </div>
      <FaultList inBackground error={error} what="The rest of the page holds without it." />
      {weighing && !error ? (
        <div className={stale ? 'dimmed' : undefined} aria-busy={stale}>
          <p className="read-small">
            {flipsInWords(weighing, alloy)}
            {untestedInWords(alloy)}
          </p>
          <table className="plain-table weighing-table">
            <thead>
              <tr>
                <th scope="col">Element</th>
                <th scope="col" className="number">
                  Mass (g)
                </th>
                <th scope="col" className="number">
                  at.% that can come out
                </th>
              </tr>
            </thead>
            <tbody>
              {Object.entries(weighing.masses).map(([symbol, grams]) => {
                const { least, greatest } = weighing.shares[symbol]!;
                return (
                  <tr key={symbol}>
                    <th scope="row">{symbol}</th>
                    <td className="number">{formatNumber(grams, decimalsOf(resolution))}</td>
                    <td className="number">{formatInterval(least, greatest, 2)}</td>
                  </tr>
                );
              })}
            </tbody>
          </table>
          <p className="small quiet read-small">
            {weighing.trust} What weighing does to each quantity stands in its line above.
          </p>
        </div>
      ) : null}
    </section>
  );
}

/** Decimals that a balance of this step shows. */
const decimalsOf = (resolution: number) => Math.max(0, Math.ceil(-Math.log10(resolution) - 1e-9));

function flipsInWords(
  { limits, criteria }: WeighingError,
  { quantities, prices, evidence }: AlloyState,
): string {
  const lookup = lookupIn(quantities, prices?.currency);
  const turned = [
    ...limits.filter(({ canFlip }) => canFlip).map(({ limit }) => limitAsSentence(limit, lookup)),
    ...(evidence?.criteria ?? []).filter(({ id }) => criteria[id]?.canFlip).map(({ name }) => name),
  ];
  const what = limits.length > 0 ? 'limit and no rule' : 'rule';
  if (turned.length === 0) return `Weighing alone can turn no ${what}.`;
  return `Weighing alone can turn: ${turned.join('; ')}. A heavier batch or a finer balance settles it.`;
}
