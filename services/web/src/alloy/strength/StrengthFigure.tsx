import { spacedComposition } from '@tiegel/elements';
import { conditionValue } from '@tiegel/screening';
import { useDeferredValue, useMemo } from 'react';
import { formatNumber, noValue } from '../../numbers/formatNumber.ts';
import { axisRoom } from '../../plot/Axis.tsx';
import { Figure } from '../../plot/Figure.tsx';
import { useWidth } from '../../plot/useWidth.ts';
import { conditionsInWords } from '../conditions/conditionsInWords.ts';
import type { AlloyState } from '../state/alloyState.ts';
import { StrengthPlot } from './StrengthPlot.tsx';
import { type Lattice, type StrengthPoint, strengthCurve } from './strengthCurve.ts';
import './strength.css';
import { Prose } from '../../words/Prose.tsx';

const height = 300;
const lattices: readonly Lattice[] = ['fcc', 'bcc'];
const domainWords = { inside: 'inside', outside: 'outside', 'lower bound': 'lower bound' } as const;

/** Yield strength against temperature, were the alloy one solution: value, domain, measured error, and gaps where there is none. */
export function StrengthFigure({ alloy }: { alloy: AlloyState }) {
  const { composition, facts, conditions, decimals } = alloy;
  const shown = useDeferredValue(composition);
  const bound = useDeferredValue(facts);
  const fits = Object.keys(shown).every((symbol) => bound.symbols.includes(symbol));
  const curves = useMemo(
    () => (fits ? strengthCurve(shown, bound, conditions) : null),
    [fits, shown, bound, conditions],
  );
  const [ref, width] = useWidth<HTMLDivElement>();
  const service = conditionValue('serviceTemperature', conditions);
  return (
    <section aria-labelledby="strength">
      <h2 id="strength">Strength against temperature</h2>
      <p className="read-small">
        Solute strengthening without a fitted constant,{' '}
        {conditionsInWords(conditions, ['strainRate', 'grainSize'])}. Solid line: the alloy is of the kind
        that the model was tested on; dashed: it is not; dotted: a lower bound. The band is the error that was
        measured on published alloys, where anybody measured it. Whether the alloy is one solution strength
        does not tell.
      </p>
      {curves ? (
        <>
          <Reasons alloy={alloy} curves={curves} service={service} />
          <Figure
            title={`Yield strength of ${spacedComposition(composition, decimals)}`}
            caption={[
              `Were it one solution, at ${conditionsInWords(conditions, ['strainRate', 'grainSize'])}.`,
              'Varvenne, Luque & Curtin 2016 (fcc), Maresca & Curtin 2020 (bcc); equations from memory. Solid: inside the domain; dashed: outside; dotted: lower bound; band: measured median error.',
            ]}
            fileName={`strength-${spacedComposition(composition, decimals).replaceAll(' ', '')}`}
            table={<StrengthTable curves={curves} />}
          >
            <div ref={ref}>
              {width > 0 ? (
                <StrengthPlot
                  curves={curves}
                  service={service}
                  width={width}
                  height={height}
                  room={axisRoom}
                />
              ) : null}
            </div>
          </Figure>
        </>
      ) : null}
    </section>
  );
}

interface CurvesProps {
  curves: Record<Lattice, StrengthPoint[]>;
}

/** What is said of each lattice at the service temperature. */
function Reasons({ alloy, curves, service }: CurvesProps & { alloy: AlloyState; service: number }) {
  return (
    <ul className="strength-said">
      {lattices.map((lattice) => {
        const near = curves[lattice].reduce((best, point) =>
          Math.abs(point.temperature - service) < Math.abs(best.temperature - service) ? point : best,
        );
        const value = alloy.values[lattice === 'fcc' ? 'yieldStrengthFcc' : 'yieldStrengthBcc'] ?? null;
        return (
          <li key={lattice}>
            <b>If {lattice}:</b>{' '}
            {value === null
              ? 'no value'
              : `${formatNumber(value, 0)} MPa${near.error === null ? ', error not measured' : `, median error ${formatNumber(100 * near.error, 0)} %`}`}{' '}
            at {formatNumber(service, 0)} K, domain: {domainWords[near.domain]}.{' '}
            <Prose text={near.reason ?? ''} />
          </li>
        );
      })}
    </ul>
  );
}

function StrengthTable({ curves }: CurvesProps) {
  return (
    <table className="plain-table">
      <thead>
        <tr>
          <th scope="col" className="number">
            Temperature (K)
          </th>
          {lattices.map((lattice) => (
            <th key={lattice} scope="col" className="number">
              {lattice} (MPa)
            </th>
          ))}
          {lattices.map((lattice) => (
            <th key={lattice} scope="col">
              {lattice}, domain
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {curves.fcc.map(({ temperature }, at) => (
          <tr key={temperature}>
            <th scope="row" className="number plain">
              {formatNumber(temperature, 0)}
            </th>
            {lattices.map((lattice) => (
              <td key={lattice} className="number">
                {formatNumber(curves[lattice][at]!.value, 0)}
              </td>
            ))}
            {lattices.map((lattice) => (
              <td key={lattice}>
                {curves[lattice][at]!.value === null ? noValue : domainWords[curves[lattice][at]!.domain]}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
