import type { ScatterAxis } from '../../plot/scatterData.ts';
import type { ShownQuantity } from '../../server/types.ts';
import type { LookProps } from '../lookView.ts';
import { QuantityChoice } from '../QuantityChoice.tsx';
import { AxisChoice } from './AxisChoice.tsx';
import { type PlotState, type PublishedLayer, publishedLayers, type Wish } from './plotState.ts';
import type { ChosenPlot } from './usualPlot.ts';

const layerWords: Record<PublishedLayer, string> = {
  pool: 'made of this pool',
  all: 'all',
  none: 'none',
};

type PlotChoiceProps = Pick<LookProps, 'view' | 'change'> & {
  quantities: readonly ShownQuantity[];
  chosen: ChosenPlot;
  /** null while they are not known */
  axes: { x: ScatterAxis; y: ScatterAxis } | null;
};

/** Axes, colour, and the layer of published alloys. */
export function PlotChoice({ quantities, view, change, chosen, axes }: PlotChoiceProps) {
  const { plot } = view;
  const set = (part: Partial<PlotState>) => change({ plot: { ...plot, ...part } });
  const axis = (place: 0 | 1) => ({
    quantities,
    quantity: place === 0 ? chosen.x : chosen.y,
    wish: chosen.wishes[place],
    axis: (place === 0 ? axes?.x : axes?.y) ?? null,
    // Another quantity is looked at afresh: what was chosen for the one before says nothing of it.
    onQuantity: (id: string) =>
      set({
        [place === 0 ? 'x' : 'y']: id,
        wishes: put(plot.wishes, place, null),
        scales: put(plot.scales, place, null),
        brush: null,
      }),
    onWish: (wish: Wish) => set({ wishes: put(chosen.wishes, place, wish) }),
    onLogarithmic: (logarithmic: boolean) =>
      set({ scales: put(plot.scales, place, logarithmic ? 'log' : 'linear') }),
  });
  return (
    <div className="look-tools plot-choice">
      <AxisChoice label="Across" {...axis(0)} />
      <AxisChoice label="Up" {...axis(1)} />
      <QuantityChoice
        label="Colour"
        value={chosen.colour?.id ?? 'none'}
        quantities={quantities}
        none="nothing"
        onChange={(colour) => set({ colour })}
      />
      <label className="row">
        Published alloys
        <select
          value={plot.published}
          onChange={(event) => set({ published: event.target.value as PublishedLayer })}
        >
          {publishedLayers.map((layer) => (
            <option key={layer} value={layer}>
              {layerWords[layer]}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}

/** A pair with one of its two exchanged. */
function put<Value>(pair: readonly [Value, Value], place: 0 | 1, value: Value): [Value, Value] {
  return place === 0 ? [value, pair[1]] : [pair[0], value];
}
