import { spacedComposition } from '@tiegel/elements';
import { GAS_CONSTANT_J_PER_MOL_K } from '@tiegel/screening';
import { useMemo } from 'react';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { Axis } from '../../plot/Axis.tsx';
import { Figure } from '../../plot/Figure.tsx';
import { linearScale } from '../../plot/linearScale.ts';
import { PlotSvg } from '../../plot/PlotSvg.tsx';
import { useWidth } from '../../plot/useWidth.ts';
import type { AlloyState } from '../state/alloyState.ts';
import { entropyScale, type OnScale } from './entropyScale.ts';
import './entropy.css';

const rowHeight = 24;
const top = 34;
const bottom = 46;
/** J/(mol K): from here on people speak of high entropy. */
const usual = 1.5 * GAS_CONSTANT_J_PER_MOL_K;

/** The alloy on the scale of configurational entropy, beside alloys in daily use: a figure for a talk. */
export function EntropyFigure({ alloy }: { alloy: AlloyState }) {
  const scale = useMemo(() => entropyScale(alloy.composition), [alloy.composition]);
  const [ref, width] = useWidth<HTMLDivElement>();
  const name = spacedComposition(alloy.composition, alloy.decimals);
  return (
    <section aria-labelledby="entropy">
      <h2 id="entropy">How mixed it is, beside alloys in daily use</h2>
      <p className="read-small">
        Configurational entropy says how evenly the atoms are mixed: {inWords(scale)} It is no measure of
        quality, and a high one makes no single phase.
      </p>
      <Figure
        title={`Configurational entropy of ${name} beside conventional alloys`}
        caption={[
          'Entropies of the random solution of the whole composition: precipitates, order and carbides, which conventional alloys live by, lower them.',
          'Nominal compositions of the conventional alloys are from memory. In brackets: equal shares of how many elements have this entropy.',
        ]}
        fileName={`entropy-${name.replaceAll(' ', '')}`}
        table={<EntropyTable scale={scale} name={name} />}
      >
        <div ref={ref}>{width > 0 ? <Drawing scale={scale} name={name} width={width} /> : null}</div>
      </Figure>
    </section>
  );
}

function inWords(scale: readonly OnScale[]): string {
  const own = scale.find(({ name }) => name === null)!;
  const highest = scale.findLast(({ name }) => name !== null)!;
  return (
    `here as evenly as ${formatNumber(own.effectiveElements, 1)} elements in equal shares, ` +
    `in ${highest.name} as ${formatNumber(highest.effectiveElements, 1)}.`
  );
}

interface DrawingProps {
  scale: readonly OnScale[];
  name: string;
  width: number;
}

function Drawing({ scale, name, width }: DrawingProps) {
  const narrow = width < 560;
  const left = Math.min(220, Math.max(184, width * 0.4));
  const most = Math.max(usual * 1.12, ...scale.map(({ entropy }) => entropy * 1.06));
  const x = linearScale(0, most, left, width - 64);
  const height = top + scale.length * rowHeight;
  return (
    <PlotSvg width={width} height={height + bottom}>
      <line x1={x.at(usual)} x2={x.at(usual)} y1={top - 10} y2={height} className="entropy-usual" />
      <text x={x.at(usual)} y={top - 16} textAnchor="middle" className="entropy-usual-name">
        {formatNumber(1.5, 1)} R: ‘high entropy’
      </text>
      {scale.map((one, at) => {
        const y = top + (at + 0.5) * rowHeight;
        const own = one.name === null;
        return (
          <g key={one.name ?? ''} className={own ? 'entropy-own' : 'entropy-other'}>
            <text x={left - 10} y={y + 4} textAnchor="end" className="entropy-name">
              {one.name ?? (narrow ? 'This alloy' : name)}
            </text>
            <line x1={x.at(0)} x2={x.at(one.entropy)} y1={y} y2={y} className="entropy-stem" />
            {own ? (
              <path d={`M${x.at(one.entropy)} ${y - 7} l7 7 l-7 7 l-7 -7 Z`} className="entropy-mark" />
            ) : (
              <circle cx={x.at(one.entropy)} cy={y} r={4.5} className="entropy-mark" />
            )}
            <text x={x.at(one.entropy) + 12} y={y + 4} className="entropy-value rimmed">
              {formatNumber(one.entropy, 1)} ({formatNumber(one.effectiveElements, 1)})
            </text>
          </g>
        );
      })}
      <Axis
        side="bottom"
        scale={x}
        at={height}
        title={narrow ? 'ΔS (J/(mol K))' : 'Configurational entropy ΔS (J/(mol K))'}
        most={narrow ? 4 : 8}
      />
    </PlotSvg>
  );
}

function EntropyTable({ scale, name }: { scale: readonly OnScale[]; name: string }) {
  return (
    <table className="plain-table">
      <thead>
        <tr>
          <th scope="col">Alloy</th>
          <th scope="col">Designation</th>
          <th scope="col" className="number">
            Entropy (J/(mol K))
          </th>
          <th scope="col" className="number">
            Effective elements
          </th>
        </tr>
      </thead>
      <tbody>
        {scale.map((one) => (
          <tr key={one.name ?? ''}>
            <th scope="row" className={one.name === null ? '' : 'plain'}>
              {one.name ?? name}
            </th>
            <td>{one.designation}</td>
            <td className="number">{formatNumber(one.entropy, 2)}</td>
            <td className="number">{formatNumber(one.effectiveElements, 2)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
