import type { QuantityView } from '@tiegel/contract';
import { nameInSentence } from '@tiegel/contract/terms';
import { Suspense, useContext, useEffect, useRef } from 'react';
import { latePart } from '../../frame/latePart.tsx';
import { entryText } from '../../numbers/parseNumber.ts';
import type { RankRow } from '../draft/draft.ts';
import { dragRange } from './dragRange.ts';
import { RangeTicks } from './RangeTicks.tsx';
import { SampleBars } from './SampleBars.tsx';
import { SampleContext } from './sampleContext.ts';
import type { Thumb } from './Thumbs.tsx';
import { WorthCurve } from './WorthCurve.tsx';
import { type Wish, wishOf, withAnchors } from './worth.ts';

const Thumbs = latePart(async () => (await import('./Thumbs.tsx')).Thumbs);

interface WishPlotProps {
  row: RankRow;
  quantity: QuantityView;
  unit: string;
  /** what is not set may be taken from the sample at once */
  unanchored: boolean;
  onAnchored: () => void;
  onChange: (part: Partial<RankRow>) => void;
}

/** What each value of a quantity is worth, drawn over its distribution; the anchors are dragged. */
export function WishPlot({ row, quantity, unit, unanchored, onAnchored, onChange }: WishPlotProps) {
  const { sample, passes, stale, error } = useContext(SampleContext);
  const values = sample?.values.get(row.quantity);
  const wish = wishOf(row);
  const { from, to, target, within } = wish;
  const reach = target === null || within === null ? [] : [target - within, target + within];
  const bounds = row.prefer === 'target' ? [target, ...reach] : [from, to];
  const range = values ? dragRange(values, bounds, quantity.decimals) : null;
  const drawn = values && range ? withAnchors(wish, values, range.step) : null;
  const set = (part: Partial<Record<keyof Wish, number>>) =>
    onChange(Object.fromEntries(Object.entries(part).map(([key, value]) => [key, entryText(value)])));
  const unset = row.prefer === 'target' ? target === null || within === null : from === null || to === null;
  const proposal = unanchored && drawn && !stale ? anchorsOf(drawn) : null;
  const take = useRef({ set, onAnchored, unset });
  take.current = { set, onAnchored, unset };
  const proposed = proposal === null ? null : JSON.stringify(proposal);
  useEffect(() => {
    if (proposed === null) return;
    if (take.current.unset) take.current.set(JSON.parse(proposed));
    take.current.onAnchored();
  }, [proposed]);

  if (!values || !range || !drawn)
    return stale && !error ? <p className="small quiet">Drawing a sample …</p> : null;
  const named = (words: string) => `${quantity.name} ${words}${unit ? `, ${unit}` : ''}`;

  return (
    <div className={stale ? 'sample-stale' : undefined}>
      <div className="sample-plot wish-plot">
        <SampleBars values={values} range={range} chosen={(point) => passes?.failed[point] === 0} />
        <WorthCurve wish={drawn} range={range} />
        <Suspense fallback={null}>
          <Thumbs
            label={`What ${nameInSentence(quantity.id, quantity.name)} is worth`}
            range={range}
            thumbs={thumbs()}
          />
        </Suspense>
        <RangeTicks range={range} unit={unit} />
      </div>
      {unset ? (
        <p className="small row">
          The dashed ends are a proposal from the sample, not set yet.
          <button type="button" onClick={() => set(anchorsOf(drawn))}>
            Take them
          </button>
        </p>
      ) : null}
    </div>
  );

  function thumbs(): Thumb[] {
    const all = drawn!;
    if (row.prefer !== 'target') {
      const ends =
        row.prefer === 'high' ? ['worth 0 up to', 'worth 1 from'] : ['worth 1 up to', 'worth 0 from'];
      // One anchor alone is of no use: the other one is set with it.
      return [
        {
          label: named(ends[0]!),
          value: from,
          resting: all.from!,
          onChange: (next) => set({ from: next, to: all.to! }),
        },
        {
          label: named(ends[1]!),
          value: to,
          resting: all.to!,
          onChange: (next) => set({ to: next, from: all.from! }),
        },
      ];
    }
    const middle = all.target!;
    const edge = (side: -1 | 1): Thumb => ({
      label: named(side < 0 ? 'worth 0 below' : 'worth 0 above'),
      value: within === null || target === null ? null : middle + side * all.within!,
      resting: middle + side * all.within!,
      onChange: (next) => {
        const half = Number((side * (next - middle)).toPrecision(10));
        if (half > 0) set({ within: half, target: middle });
      },
    });
    const centre: Thumb = {
      label: named('wanted'),
      value: target,
      resting: middle,
      onChange: (next) => set({ target: next, within: all.within! }),
    };
    return [edge(-1), centre, edge(1)];
  }
}

/** The anchors that a wish of its kind has. */
function anchorsOf({ prefer, from, to, target, within }: Wish): Partial<Record<keyof Wish, number>> {
  return prefer === 'target' ? { target: target!, within: within! } : { from: from!, to: to! };
}
