import type { Element } from '@tiegel/elements';
import { formatNumber, noValue } from '../numbers/formatNumber.ts';
import { unitText } from '../server/lookup.ts';
import type { ElementView } from '../server/types.ts';
import { elementProperties, propertyOf } from './elementProperties.ts';
import { familyTints } from './families.ts';

/** The element under the pointer or the keyboard, with all its numbers; says why one cannot be chosen. */
export function ElementReadout({
  element,
  facts,
  lacks,
}: {
  element: Element;
  facts: ElementView | undefined;
  /** what the search needs of it and nobody knows, in words; '' for nothing */
  lacks: string;
}) {
  return (
    <div className="readout">
      <p className="readout-name">
        <b>{element.symbol}</b> {element.name.toLowerCase()} · {element.atomicNumber} ·{' '}
        <span className={`readout-family tint-${familyTints[element.family]}`}>{element.family}</span>
      </p>
      {lacks ? (
        <p className="readout-lacks">
          {element.name} {lacks}: an alloy with it could not be judged.
        </p>
      ) : null}
      {facts ? (
        <Numbers facts={facts} />
      ) : (
        <p className="quiet">
          Cannot be chosen: the project has no data of {element.name.toLowerCase()} (radius,
          electronegativity, pair enthalpies), so nothing could be computed with it.
        </p>
      )}
    </div>
  );
}

function Numbers({ facts }: { facts: ElementView }) {
  const properties = elementProperties([facts]).filter(({ id }) => id !== 'price');
  return (
    <>
      <dl className="readout-numbers">
        {properties.map(({ id, name, unit, decimals }) => (
          <div key={id}>
            <dt>{name}</dt>
            <dd>
              {formatNumber(propertyOf(facts, id), decimals)} {unitText(unit, null)}
            </dd>
          </div>
        ))}
      </dl>
      {facts.meltingTemperature === null ? (
        <p className="quiet">Melting temperature: {noValue} (sublimes)</p>
      ) : null}
    </>
  );
}
