import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { Failed } from '../../frame/Failed.tsx';
import { useLast } from '../../frame/useLast.ts';
import { Waiting } from '../../frame/Waiting.tsx';
import { formatCount } from '../../numbers/formatNumber.ts';
import { axisTitle } from '../../plot/axisTitle.ts';
import { NothingMeets } from '../filters/NothingMeets.tsx';
import { publishedQuery, tradeOffQuery, valuesQuery } from '../lookQueries.ts';
import type { LookProps } from '../lookView.ts';
import { Marked } from '../marks/Marked.tsx';
import { useMarkedPoints } from '../marks/useMarkedPoints.ts';
import { useMarks } from '../marks/useMarks.ts';
import { asksForLogarithm } from './asksForLogarithm.ts';
import { layersOf } from './layersOf.ts';
import { PlotChoice } from './PlotChoice.tsx';
import type { PlotScale } from './plotState.ts';
import { ScatterFigure } from './ScatterFigure.tsx';
import { Selected } from './Selected.tsx';
import { usualPlot } from './usualPlot.ts';

const noPoints: never[] = [];

/** Any two quantities of the candidates against each other, coloured by a third, with the front and published alloys. */
export function ScatterView(props: LookProps) {
  const { search, quantities, view, change } = props;
  const { id, specification } = search;
  const currency = search.prices?.currency;
  const chosen = usualPlot(view.plot, specification, quantities);
  const { x, y, colour } = chosen;
  const [scaleX, scaleY] = chosen.scales;
  const asked = [...new Set([x.id, y.id, ...(colour ? [colour.id] : [])])];
  const values = useQuery(valuesQuery(id, view.filters, asked));
  const front = useQuery(tradeOffQuery(id, view.filters, [x.id, y.id], chosen.wishes));
  const fronted = !chosen.wishes.includes('none');
  const published = useQuery(publishedQuery(id, asked));

  const marks = useMarks(id);
  const ticked = useMarkedPoints(id, marks.marked, x.id, y.id);

  const last = useLast(values.data);
  const data = last.value;
  const stale = last.stale || values.isPlaceholderData;
  const axes = useMemo(() => {
    if (!data) return null;
    const of = (quantity: typeof x, scale: PlotScale | null) => {
      const found = data.values[data.quantities.indexOf(quantity.id)] ?? noPoints;
      return {
        title: axisTitle(quantity, currency),
        values: found,
        logarithmic: scale === null ? asksForLogarithm(found) : scale === 'log',
      };
    };
    // While another axis is fetched, the values are still those of the one before.
    if (![x, y].every((quantity) => data.quantities.includes(quantity.id))) return null;
    const withColour = colour && data.quantities.includes(colour.id) ? of(colour, 'linear') : null;
    return { x: of(x, scaleX), y: of(y, scaleY), colour: withColour };
  }, [data, x, y, colour, scaleX, scaleY, currency]);
  const which = view.plot.published;
  const layers = useMemo(
    () => layersOf(published.data, which, x.id, y.id),
    [published.data, which, x.id, y.id],
  );

  if (values.error && !data)
    return <Failed error={values.error} what="The scatter" onRetry={() => void values.refetch()} />;
  const frontError = fronted ? front.error : null;
  const partly = [
    { what: 'The Pareto front', error: frontError, again: front.refetch },
    { what: 'The layer of published alloys and own melts', error: published.error, again: published.refetch },
    { what: 'The ticks of marked candidates', error: ticked.error, again: ticked.again },
  ].find(({ error }) => error);
  return (
    <>
      <PlotChoice quantities={quantities} view={view} change={change} chosen={chosen} axes={axes} />
      {partly ? <Failed error={partly.error} what={partly.what} onRetry={() => void partly.again()} /> : null}
      {data?.meeting === 0 ? <NothingMeets view={view} change={change} /> : null}
      {!data ? <Waiting what="Fetching the values" /> : null}
      {data && data.meeting > 0 && !axes ? <Waiting what="Fetching the values of another quantity" /> : null}
      {data && axes && data.meeting > 0 ? (
        <div className={stale ? 'look-stale' : undefined} aria-busy={stale}>
          {values.error ? (
            <p className="note" role="status">
              These are the values of before; newer ones could not be fetched: {values.error.message}
            </p>
          ) : null}
          <ScatterFigure
            {...props}
            chosen={chosen}
            axes={axes}
            values={data}
            front={!fronted ? null : front.isPlaceholderData ? undefined : front.data}
            layers={layers}
            marks={marks}
            markedPoints={ticked.points}
            layersVersion={published.data?.dataVersion ?? null}
          />
          <p className="unseen" role="status">
            {formatCount(data.meeting)} candidates are drawn
          </p>
        </div>
      ) : null}
      <Marked search={search} marks={marks} each="point" />
      {data && axes && data.meeting > 0 ? <Selected {...props} chosen={chosen} marks={marks} /> : null}
    </>
  );
}
