import { formatNumber } from '../../numbers/formatNumber.ts';
import { kelvinInWords } from '../conditions/kelvinInWords.ts';
import { Dimmed } from '../Dimmed.tsx';
import { OwnPairSources } from '../quantities/OwnPairSources.tsx';
import type { AlloyState } from '../state/alloyState.ts';
import { ModeBars } from './ModeBars.tsx';
import { PairMap } from './PairMap.tsx';
import './competes.css';
import { Prose } from '../../words/Prose.tsx';

const never = 'at no temperature';
const lacking = 'No statement: an enthalpy or a parameter of the model is not known for an element.';

/** What competes with one solid solution: demixing, order, compounds; and which pairs of atoms seek each other. */
export function CompetesSection({ alloy }: { alloy: AlloyState }) {
  const { explanation } = alloy;
  if (!explanation) return null;
  const { demixing, ordering, compounds, affinity } = explanation;
  return (
    <section aria-labelledby="competes">
      <h2 id="competes">What competes with one solution</h2>
      <Dimmed alloy={alloy}>
        <div className="competes">
          <div>
            <h3>Demixing</h3>
            {demixing ? (
              <>
                <p>
                  <Prose text={demixing.words} />
                </p>
                <Numbers
                  numbers={[
                    [
                      'Temperature',
                      demixing.temperature === null ? never : kelvinInWords(demixing.temperature),
                    ],
                    ['Over the melting temperature', formatNumber(demixing.ratioToMelting, 2)],
                  ]}
                />
                <ModeBars mode={demixing.mode} one="one way" other="the other way" what="What leaves what" />
                <p className="small quiet">
                  <Prose text={demixing.trust} />
                </p>
              </>
            ) : (
              <p>{lacking}</p>
            )}
          </div>
          <div>
            <h3>Order</h3>
            {ordering ? (
              <>
                <p>
                  <Prose text={ordering.words} />
                </p>
                <Numbers
                  numbers={[
                    [
                      'Temperature',
                      ordering.temperature === null ? never : kelvinInWords(ordering.temperature),
                    ],
                    ['Over the melting temperature', formatNumber(ordering.ratioToMelting, 2)],
                  ]}
                />
                <ModeBars mode={ordering.mode} one="first sublattice" other="second" what="Who sits where" />
                <p className="small quiet">
                  <Prose text={ordering.trust} />
                </p>
              </>
            ) : (
              <p>{lacking}</p>
            )}
          </div>
          <div>
            <h3>Compounds</h3>
            {compounds ? (
              <>
                <p>
                  <Prose text={compounds.words} />
                </p>
                <Numbers
                  numbers={[
                    [
                      'Solution above its competitor (hull distance)',
                      `${formatNumber(compounds.hullDistance, 1)} ± 10 kJ/mol`,
                    ],
                    [
                      'Free energy of the solution',
                      `${formatNumber(compounds.solutionFreeEnergy, 1)} kJ/mol`,
                    ],
                    ['Enthalpy of what competes', `${formatNumber(compounds.competingEnthalpy, 1)} kJ/mol`],
                    ['At the anneal', kelvinInWords(compounds.temperature)],
                  ]}
                />
                <ul className="competing">
                  {compounds.competing.map(({ formula, fraction }) => (
                    <li key={formula}>
                      <b>
                        <Prose text={formula} />
                      </b>{' '}
                      {formatNumber(100 * fraction, 0)} % of the atoms
                    </li>
                  ))}
                </ul>
                <p className="small quiet">
                  <Prose text={compounds.trust} />
                </p>
              </>
            ) : (
              <p>{lacking}</p>
            )}
          </div>
        </div>
        {affinity && affinity.pairs.length > 0 ? <PairMap affinity={affinity} /> : null}
        <OwnPairSources alloy={alloy} />
      </Dimmed>
    </section>
  );
}

function Numbers({ numbers }: { numbers: readonly (readonly [label: string, value: string])[] }) {
  return (
    <dl className="record-list">
      {numbers.map(([label, value]) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
