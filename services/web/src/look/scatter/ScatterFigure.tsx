import { useQueryClient } from '@tanstack/react-query';
import type { CandidateValues, TradeOff } from '@tiegel/contract';
import { nameInSentence } from '@tiegel/contract/terms';
import { formatComposition } from '@tiegel/elements';
import { useMemo } from 'react';
import { useLocation } from 'wouter';
import { formatCount, formatNumber } from '../../numbers/formatNumber.ts';
import { pointsDrawnSingly } from '../../plot/drawPoints.ts';
import { Figure } from '../../plot/Figure.tsx';
import { Scatter } from '../../plot/Scatter.tsx';
import type { ScatterAxis, ScatterLayer, ScatterPoint } from '../../plot/scatterData.ts';
import { unitText } from '../../server/lookup.ts';
import type { ShownQuantity } from '../../server/types.ts';
import { candidateAddress } from '../candidateAddress.ts';
import { candidateOfRankQuery } from '../lookQueries.ts';
import { fileNameOf, type LookProps, originOf } from '../lookView.ts';
import type { MarkedPoint } from '../marks/useMarkedPoints.ts';
import type { Marks } from '../marks/useMarks.ts';
import { FrontTable } from './FrontTable.tsx';
import { layersInWords } from './layersInWords.ts';
import type { AlloyLayer } from './layersOf.ts';
import { PointReadout } from './PointReadout.tsx';
import type { ChosenPlot } from './usualPlot.ts';

interface ScatterFigureProps extends LookProps {
  chosen: ChosenPlot;
  axes: { x: ScatterAxis; y: ScatterAxis; colour: ScatterAxis | null };
  values: CandidateValues;
  /** undefined while it is not known, null where no side of an axis is better */
  front: TradeOff | null | undefined;
  layers: readonly AlloyLayer[];
  marks: Marks;
  /** where the marked candidates lie */
  markedPoints: readonly MarkedPoint[];
  /** of the data that the values of the layers are computed from; null: not known yet */
  layersVersion: string | null;
}

/** The scatter with its title, caption and table. */
export function ScatterFigure(props: ScatterFigureProps) {
  const { search, view, change, chosen, axes, values, front, layers, marks, markedPoints } = props;
  const [, navigate] = useLocation();
  const client = useQueryClient();
  const { x, y, colour } = chosen;
  const frontPoints = useMemo(
    () => (front?.items ?? []).map(({ values: [px, py] }) => ({ x: px, y: py })),
    [front],
  );
  const ticks = useMemo(
    (): ScatterLayer | null =>
      markedPoints.length === 0 ? null : { name: 'Marked', mark: 'tick', points: markedPoints },
    [markedPoints],
  );
  const currency = search.prices?.currency;
  const textOf = ({ id, name, decimals, unit }: ShownQuantity, value: number | null | undefined) =>
    `${nameInSentence(id, name)} ${formatNumber(value, decimals)}${unit === '' ? '' : ` ${unitText(unit, currency)}`}`;
  const isMarked = ({ layer: place, index }: ScatterPoint) =>
    place === null && markedPoints.some(({ rank }) => rank === values.ranks[index]);
  const wordsOf = ({ layer: place, index }: ScatterPoint) => {
    if (place !== null) {
      const { words, phases, x: px, y: py } = layers[place]!.points[index]!;
      return `${words}, ${phases ?? 'no phases reported'}; ${textOf(x, px)}, ${textOf(y, py)}`;
    }
    const parts = [textOf(x, axes.x.values[index]), textOf(y, axes.y.values[index])];
    if (colour && axes.colour) parts.push(textOf(colour, axes.colour.values[index]));
    return `rank ${values.ranks[index]}: ${parts.join(', ')}`;
  };
  // Where it cannot be fetched the readout says why.
  const candidateAt = (index: number) =>
    client.fetchQuery(candidateOfRankQuery(search.id, values.ranks[index]!)).catch(() => null);
  const onOpen = async ({ layer: place, index }: ScatterPoint) => {
    if (place !== null) {
      const { melt } = layers[place]!.points[index]!;
      if (melt !== null) navigate(`/melts/${encodeURIComponent(melt)}`);
      return;
    }
    const found = await candidateAt(index);
    if (found) navigate(candidateAddress(search.id, found.composition));
  };
  const onMark = async ({ layer: place, index }: ScatterPoint) => {
    if (place !== null) return;
    const found = await candidateAt(index);
    if (found) marks.turn([formatComposition(found.composition)]);
  };

  return (
    <Figure
      title={`${y.name} against ${nameInSentence(x.id, x.name)}`}
      caption={captionOf(props)}
      origin={[originOf(search)]}
      fileName={fileNameOf(search, `${y.id}-${x.id}`)}
      table={front ? <FrontTable search={search} chosen={chosen} front={front} /> : null}
      tableName="The Pareto front as a table"
    >
      <Scatter
        label={`${axes.y.title} against ${axes.x.title}. Arrow keys walk the points, with Shift they select, Space marks, Enter opens a candidate.`}
        x={axes.x}
        y={axes.y}
        colour={axes.colour}
        layers={layers}
        front={frontPoints}
        ticks={ticks}
        brush={view.plot.brush}
        onBrush={(brush) => change({ plot: { ...view.plot, brush } })}
        wordsOf={(point) => `${wordsOf(point)}${isMarked(point) ? '; marked' : ''}`}
        readoutOf={(point) => (
          <PointReadout
            search={search}
            words={wordsOf(point)}
            rank={point.layer === null ? values.ranks[point.index]! : null}
            other={point.layer === null ? null : layers[point.layer]!.points[point.index]!}
            marks={marks}
          />
        )}
        onOpen={(point) => void onOpen(point)}
        onMark={(point) => void onMark(point)}
      />
    </Figure>
  );
}

/** What the figure shows, of how many, and what it leaves out. */
function captionOf({
  search,
  values,
  axes,
  layers,
  layersVersion,
  front,
  markedPoints,
}: ScatterFigureProps): string[] {
  const drawn = values.ranks.length;
  const { kept, passed } = values.among;
  const of = passed === null ? '' : ` of ${formatCount(passed)} that passed`;
  const missing = axes.x.values.filter(
    (value, place) => value === null || axes.y.values[place] === null,
  ).length;
  return [
    values.every === 1
      ? `${formatCount(drawn)} candidates, of ${formatCount(kept)} kept${of}.`
      : `${formatCount(drawn)} of ${formatCount(values.meeting)} candidates: every ${formatCount(values.every)}th rank, and the 200 best.`,
    ...(drawn > pointsDrawnSingly
      ? [axes.colour ? 'Cells show the mean of the colour.' : 'Cells show how many candidates lie there.']
      : []),
    ...(missing > 0 ? [`${formatCount(missing)} have no value of one of the axes and are not drawn.`] : []),
    ...(front
      ? [`The Pareto front is that of the kept candidates: ${countOf(front.items.length, 'corner')}.`]
      : []),
    ...(front === null
      ? ['No Pareto front: say above which values of both quantities are better, and it is drawn.']
      : []),
    ...layersInWords(layers, layersVersion, search.dataVersion),
    ...(markedPoints.length > 0
      ? [
          `Marked: ${countOf(markedPoints.length, 'candidate')}, also those that filters leave out; what lies outside the axes has no tick.`,
        ]
      : []),
  ];
}

function countOf(count: number, what: string): string {
  return `${formatCount(count)} ${what}${count === 1 ? '' : 's'}`;
}
