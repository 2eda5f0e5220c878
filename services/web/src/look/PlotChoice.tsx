import type { ShownQuantity } from '../server/types.ts';
import type { LookProps } from './lookView.ts';
import { type PublishedLayer, publishedLayers, type Wish } from './plotState.ts';
import type { ChosenPlot } from './usualPlot.ts';

const layerWords: Record<PublishedLayer, string> = {
  pool: 'made of this pool',
  all: 'all',
  none: 'none',
};

type PlotChoiceProps = Pick<LookProps, 'quantities' | 'view' | 'change'> & { chosen: ChosenPlot };

/** Axes, colour, what is better on each axis, and the layer of published alloys. */
export function PlotChoice({ quantities, view, change, chosen }: PlotChoiceProps) {
  const { plot } = view;
  const set = (part: Partial<typeof plot>) => change({ plot: { ...plot, ...part } });
  const wish = (axis: 0 | 1, value: Wish) => {
    const wishes: [Wish, Wish] = [...chosen.wishes];
    wishes[axis] = value;
    set({ wishes });
  };
  return (
    <div className="look-tools plot-choice">
      <QuantityChoice
        label="Across"
        value={chosen.x.id}
        quantities={quantities}
        onChange={(x) => set({ x, brush: null })}
      />
      <WishChoice
        label={`Better values of ${chosen.x.name}`}
        value={chosen.wishes[0]}
        onChange={(one) => wish(0, one)}
      />
      <QuantityChoice
        label="Up"
        value={chosen.y.id}
        quantities={quantities}
        onChange={(y) => set({ y, brush: null })}
      />
      <WishChoice
        label={`Better values of ${chosen.y.name}`}
        value={chosen.wishes[1]}
        onChange={(one) => wish(1, one)}
      />
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

interface QuantityChoiceProps {
  label: string;
  value: string;
  quantities: readonly ShownQuantity[];
  /** what the choice of no quantity is called, where there is one */
  none?: string;
  onChange: (id: string) => void;
}

function QuantityChoice({ label, value, quantities, none, onChange }: QuantityChoiceProps) {
  return (
    <label className="row">
      {label}
      <select value={value} onChange={(event) => onChange(event.target.value)}>
        {none === undefined ? null : <option value="none">{none}</option>}
        {quantities.map(({ id, name, symbol }) => (
          <option key={id} value={id}>
            {name} {symbol.replace('_', '')}
          </option>
        ))}
      </select>
    </label>
  );
}

function WishChoice({
  label,
  value,
  onChange,
}: {
  label: string;
  value: Wish;
  onChange: (wish: Wish) => void;
}) {
  return (
    <select aria-label={label} value={value} onChange={(event) => onChange(event.target.value as Wish)}>
      <option value="low">low is better</option>
      <option value="high">high is better</option>
    </select>
  );
}
