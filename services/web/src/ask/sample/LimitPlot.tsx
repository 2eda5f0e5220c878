import type { QuantityView } from '@tiegel/contract';
import { nameInSentence } from '@tiegel/contract/terms';
import { Suspense, useContext } from 'react';
import { latePart } from '../../frame/latePart.tsx';
import { entryText } from '../../numbers/parseNumber.ts';
import type { LimitRow } from '../draft/draft.ts';
import { meetsOthers } from './countPasses.ts';
import { dragRange } from './dragRange.ts';
import { LimitShares } from './LimitShares.tsx';
import { RangeTicks } from './RangeTicks.tsx';
import { SampleBars } from './SampleBars.tsx';
import { SampleContext } from './sampleContext.ts';
import type { Thumb } from './Thumbs.tsx';
import { triedLimit } from './triedLimit.ts';

const Thumbs = latePart(async () => (await import('./Thumbs.tsx')).Thumbs);

interface LimitPlotProps {
  row: LimitRow;
  /** its place among the limits */
  index: number;
  quantity: QuantityView;
  unit: string;
  onChange: (part: Partial<LimitRow>) => void;
}

/** A limit on the distribution of its quantity: two thumbs to drag, and what it leaves. */
export function LimitPlot({ row, index, quantity, unit, onChange }: LimitPlotProps) {
  const { sample, passes, stale, error } = useContext(SampleContext);
  const values = sample?.values.get(row.quantity);
  if (!sample || !passes || !values)
    return stale && !error ? <p className="small quiet">Drawing a sample …</p> : null;
  const { min, max } = triedLimit(row);
  const range = dragRange(values, [min, max], quantity.decimals);
  if (!range) return <p className="small quiet">No composition of the sample has a value.</p>;
  const thumb = (
    edge: string,
    value: number | null,
    resting: number,
    set: (text: string) => void,
  ): Thumb => ({
    label: `${quantity.name} ${edge}${unit ? `, ${unit}` : ''}`,
    value,
    resting,
    // At its own end of the axis a thumb cuts nothing off: the limit is taken away.
    onChange: (next) => set(next === resting ? '' : entryText(next)),
  });
  return (
    <div className={stale ? 'limit-plot sample-stale' : 'limit-plot'}>
      <div className="sample-plot">
        <SampleBars
          values={values}
          range={range}
          chosen={(point) => meetsOthers(passes, point, index)}
          min={min}
          max={max}
        />
        <Suspense fallback={null}>
          <Thumbs
            label={`Limits on ${nameInSentence(quantity.id, quantity.name)}`}
            range={range}
            thumbs={[
              thumb('at least', min, range.from, (text) => onChange({ min: text })),
              thumb('at most', max, range.to, (text) => onChange({ max: text })),
            ]}
          />
        </Suspense>
        <RangeTicks range={range} unit={unit} />
      </div>
      <LimitShares index={index} values={values} />
    </div>
  );
}
