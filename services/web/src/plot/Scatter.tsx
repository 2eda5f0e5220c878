import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { Axis, axisRoom } from './Axis.tsx';
import { colourSequence, tokenColour } from './colourSequence.ts';
import { drawPoints } from './drawPoints.ts';
import { extentOf } from './extentOf.ts';
import { linearScale, type Scale } from './linearScale.ts';
import { logarithmicExtent, logarithmicScale } from './logarithmicScale.ts';
import type { Places } from './nearestPoint.ts';
import { niceExtent } from './niceTicks.ts';
import './plot.css';
import { PlotSvg } from './PlotSvg.tsx';
import './scatter.css';
import { legendHeight, ScatterLegend } from './ScatterLegend.tsx';
import { BrushRectangle, ScatterMarks } from './ScatterMarks.tsx';
import type { ScatterAxis, ScatterBrush, ScatterLayer, ScatterPoint } from './scatterData.ts';
import { useDark } from './useDark.ts';
import { useScatterHands } from './useScatterHands.ts';
import { useWidth } from './useWidth.ts';

interface ScatterProps {
  /** what a listener is told the figure is */
  label: string;
  x: ScatterAxis;
  y: ScatterAxis;
  colour: ScatterAxis | null;
  layers: readonly ScatterLayer[];
  front: readonly { x: number; y: number }[];
  /** over main points, which are walked to as such; null for none */
  ticks: ScatterLayer | null;
  brush: ScatterBrush | null;
  onBrush: (brush: ScatterBrush | null) => void;
  /** a point in one line of plain words */
  wordsOf: (point: ScatterPoint) => string;
  /** the same for the eye, with links */
  readoutOf: (point: ScatterPoint) => ReactNode;
  onOpen: (point: ScatterPoint) => void;
  onMark: (point: ScatterPoint) => void;
}

/**
 * A scatter of points in the order of rank. Points lie on a canvas, singly or as cells where they
 * are many; axes, front and other layers lie over it as SVG. The pointer reads the nearest point
 * and draws a rectangle that selects, a click holds the point; arrows walk, with Shift they stretch
 * the rectangle, Space marks.
 */
export function Scatter(props: ScatterProps) {
  const { label, x, y, colour, layers, front, ticks, brush, onBrush, wordsOf, readoutOf } = props;
  const [stage, width] = useWidth<HTMLDivElement>();
  const canvas = useRef<HTMLCanvasElement>(null);
  const [fullest, setFullest] = useState<number | null>(null);
  const dark = useDark();
  const colours = useMemo(
    () => ({ sequence: colourSequence(dark), plain: tokenColour('--plot-whole', dark) }),
    [dark],
  );

  const range = useMemo(() => (colour && extentOf(colour.values)) ?? ([0, 1] as const), [colour]);
  const named = useMemo(() => (ticks === null ? layers : [...layers, ticks]), [layers, ticks]);
  const legend = legendHeight(
    fullest !== null && !colour ? '' : (colour?.title ?? null),
    named,
    front.length > 0,
    width,
  );
  const top = legend + axisRoom.top;
  const plotHeight = Math.round(Math.max(240, Math.min(560, width * 0.6)));
  const scales = useScales(x, y, width, top, plotHeight);
  const places = useMemo(() => placesOf(x.values, y.values, layers, scales), [x, y, layers, scales]);
  const main = x.values.length;
  const pointAt = (place: number): ScatterPoint => layerOf(place, main, layers);
  const hands = useScatterHands({
    places,
    main,
    scales,
    stage,
    brush,
    onBrush,
    onOpen: (place) => props.onOpen(pointAt(place)),
    onMark: (place) => props.onMark(pointAt(place)),
  });
  const at = hands.at === null || hands.at >= places.x.length ? null : pointAt(hands.at);

  useEffect(() => {
    if (!canvas.current || width === 0) return;
    const own = { x: places.x.subarray(0, main), y: places.y.subarray(0, main) };
    setFullest(
      drawPoints(canvas.current, {
        places: own,
        colour: colour?.values ?? null,
        colourRange: range,
        ...colours,
        ...{ width, height: top + plotHeight + axisRoom.bottom },
      }),
    );
  }, [places, main, colour, range, colours, width, top, plotHeight]);

  const shown = hands.drag ?? brush;
  const counted = fullest !== null && !colour;
  return (
    <div className="scatter">
      <div
        ref={stage}
        className="plot-stage scatter-stage"
        role="slider"
        aria-label={label}
        aria-valuemin={1}
        aria-valuemax={Math.max(1, places.x.length)}
        aria-valuenow={(hands.at ?? 0) + 1}
        aria-valuetext={at === null ? 'no point' : wordsOf(at)}
        tabIndex={0}
        {...hands.handlers}
      >
        <canvas ref={canvas} className="scatter-points" />
        <PlotSvg width={width} height={top + plotHeight + axisRoom.bottom}>
          <ScatterLegend
            colour={counted ? 'Candidates in a cell' : (colour?.title ?? null)}
            range={counted ? [1, fullest] : range}
            sequence={colours.sequence}
            layers={named}
            front={front.length > 0}
            width={width}
          />
          <Axis side="bottom" scale={scales.x} at={top + plotHeight} title={x.title} />
          <Axis side="left" scale={scales.y} at={scales.x.start} title={y.title} />
          <ScatterMarks {...scales} layers={layers} front={front} ticks={ticks} />
          <g data-screen-only>
            {shown ? <BrushRectangle brush={shown} {...scales} /> : null}
            {hands.at !== null && places.x[hands.at] !== undefined && !Number.isNaN(places.x[hands.at]) ? (
              <circle cx={places.x[hands.at]} cy={places.y[hands.at]} r={8} className="plot-here" />
            ) : null}
          </g>
        </PlotSvg>
      </div>
      <div className="scatter-readout small">{at === null ? null : readoutOf(at)}</div>
    </div>
  );
}

function useScales(x: ScatterAxis, y: ScatterAxis, width: number, top: number, height: number) {
  return useMemo(() => {
    const left = axisRoom.left + 4;
    const right = Math.max(left + 1, width - axisRoom.right);
    return { x: scaleOf(x, left, right), y: scaleOf(y, top + height, top) };
  }, [x, y, width, top, height]);
}

function scaleOf({ values, logarithmic }: ScatterAxis, start: number, end: number): Scale {
  const extent = extentOf(values) ?? [0, 1];
  return logarithmic && extent[0] > 0
    ? logarithmicScale(...logarithmicExtent(...extent), start, end)
    : linearScale(...niceExtent(...extent), start, end);
}

/** Every point that can be walked to: the main ones, then those of the layers that lie on the axes. */
function placesOf(
  x: ScatterAxis['values'],
  y: ScatterAxis['values'],
  layers: readonly ScatterLayer[],
  scales: { x: Scale; y: Scale },
): Places {
  const count = x.length + layers.reduce((sum, { points }) => sum + points.length, 0);
  const places = { x: new Float32Array(count), y: new Float32Array(count) };
  const put = (place: number, valueX: number | null, valueY: number | null) => {
    const there = isOn(scales.x, valueX) && isOn(scales.y, valueY);
    places.x[place] = there ? scales.x.at(valueX!) : Number.NaN;
    places.y[place] = there ? scales.y.at(valueY!) : Number.NaN;
  };
  for (let place = 0; place < x.length; place += 1) put(place, x[place]!, y[place]!);
  let place = x.length;
  for (const { points } of layers) for (const point of points) put(place++, point.x, point.y);
  return places;
}

function isOn({ from, to }: Scale, value: number | null): boolean {
  return value !== null && value >= from && value <= to;
}

function layerOf(place: number, main: number, layers: readonly ScatterLayer[]): ScatterPoint {
  if (place < main) return { layer: null, index: place };
  let index = place - main;
  for (const [layer, { points }] of layers.entries()) {
    if (index < points.length) return { layer, index };
    index -= points.length;
  }
  throw new RangeError(`there is no point ${place}`);
}
