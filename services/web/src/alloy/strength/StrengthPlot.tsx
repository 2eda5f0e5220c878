import { type KeyboardEvent, type PointerEvent, useState } from 'react';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { Axis, type axisRoom } from '../../plot/Axis.tsx';
import { linearScale, type Scale } from '../../plot/linearScale.ts';
import { PlotSvg } from '../../plot/PlotSvg.tsx';
import { coldest, hottest, type Lattice, type StrengthPoint, stretches } from './strengthCurve.ts';

interface StrengthPlotProps {
  curves: Record<Lattice, StrengthPoint[]>;
  /** K */
  service: number;
  width: number;
  height: number;
  room: typeof axisRoom;
}

const lattices: readonly Lattice[] = ['fcc', 'bcc'];

/** Both curves on one pair of axes; pointer and arrow keys read them out. */
export function StrengthPlot({ curves, service, width, height, room }: StrengthPlotProps) {
  const [at, setAt] = useState<number | null>(null);
  const all = lattices.flatMap((lattice) => curves[lattice]);
  const most = Math.max(100, ...all.map(({ value, error }) => (value ?? 0) * (1 + (error ?? 0))));
  const x = linearScale(0, hottest, room.left, width - room.right);
  // Room above the highest curve for its name.
  const y = linearScale(0, most * 1.12, height - room.bottom, room.top);
  const temperatures = curves.fcc.map(({ temperature }) => temperature);
  const last = temperatures.length - 1;
  const readout = (place: number) =>
    `${formatNumber(temperatures[place]!, 0)} K: ${lattices
      .map((lattice) => {
        const { value, error, domain } = curves[lattice][place]!;
        if (value === null) return `${lattice} no value`;
        const trust = error === null ? '' : `, median error ${formatNumber(100 * error, 0)} %`;
        return `${lattice} ${formatNumber(value, 0)} MPa (${domain}${trust})`;
      })
      .join(', ')}`;
  const onKeyDown = (event: KeyboardEvent) => {
    const now = at ?? -1;
    const to = { ArrowRight: now + 1, ArrowLeft: now - 1, Home: 0, End: last }[event.key];
    if (event.key === 'Escape') setAt(null);
    else if (to !== undefined) setAt(Math.max(0, Math.min(last, to)));
    else return;
    event.preventDefault();
  };
  const onPointerMove = (event: PointerEvent) => {
    const kelvin = x.valueAt(event.clientX - event.currentTarget.getBoundingClientRect().x);
    if (kelvin < coldest || kelvin > hottest) return setAt(null);
    const place = temperatures.findIndex((temperature) => temperature >= kelvin);
    return setAt(place < 0 ? last : place);
  };
  return (
    <>
      <div
        role="slider"
        aria-label="Strength at a temperature"
        aria-valuemin={0}
        aria-valuemax={last}
        aria-valuenow={at ?? 0}
        aria-valuetext={at === null ? 'no temperature chosen' : readout(at)}
        tabIndex={0}
        onKeyDown={onKeyDown}
        onPointerMove={onPointerMove}
        onPointerLeave={() => setAt(null)}
      >
        <PlotSvg width={width} height={height}>
          <Axis
            side="left"
            scale={y}
            at={room.left}
            title="Yield strength (MPa)"
            grid={width - room.right - room.left}
          />
          <Axis side="bottom" scale={x} at={height - room.bottom} title="Temperature (K)" />
          <line
            x1={x.at(service)}
            x2={x.at(service)}
            y1={room.top}
            y2={height - room.bottom}
            className="strength-service"
          />
          <text x={x.at(service) + 5} y={room.top + 10} className="strength-service-name rimmed">
            service
          </text>
          {lattices.map((lattice) => (
            <Curve key={lattice} lattice={lattice} points={curves[lattice]} x={x} y={y} />
          ))}
          {at === null
            ? null
            : lattices.map((lattice) => {
                const { value } = curves[lattice][at]!;
                return value === null ? null : (
                  <circle
                    key={lattice}
                    data-screen-only
                    cx={x.at(temperatures[at]!)}
                    cy={y.at(value)}
                    r={4}
                    className={`strength-point strength-${lattice}`}
                  />
                );
              })}
        </PlotSvg>
      </div>
      <p className="plot-readout small" aria-hidden="true">
        {at === null ? null : readout(at)}
      </p>
    </>
  );
}

function Curve({
  lattice,
  points,
  x,
  y,
}: {
  lattice: Lattice;
  points: readonly StrengthPoint[];
  x: Scale;
  y: Scale;
}) {
  const line = (stretch: readonly StrengthPoint[]) =>
    stretch.map(({ temperature, value }) => `${x.at(temperature)},${y.at(value!)}`).join(' ');
  const bands = stretches(points, ({ error }) => error).filter(({ kind }) => kind !== null);
  const drawn = stretches(points, ({ domain }) => domain);
  const end = drawn[0]?.points[0];
  return (
    <g className={`strength-${lattice}`}>
      {bands.map(({ kind, points: stretch }) => {
        const edge = (sign: 1 | -1) =>
          stretch.map(
            ({ temperature, value }) => `${x.at(temperature)},${y.at(value! * (1 + sign * kind!))}`,
          );
        return (
          <polygon
            key={stretch[0]!.temperature}
            points={[...edge(1), ...edge(-1).reverse()].join(' ')}
            className="strength-band"
          />
        );
      })}
      {drawn.map(({ kind, points: stretch }) => (
        <polyline
          key={stretch[0]!.temperature}
          points={line(stretch)}
          className={`strength-line strength-${kind.replace(' ', '-')}`}
        />
      ))}
      {end ? (
        <text x={x.at(end.temperature) + 10} y={y.at(end.value!) - 9} className="strength-name rimmed">
          {lattice}
        </text>
      ) : null}
    </g>
  );
}
