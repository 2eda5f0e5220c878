import { conditionValue, strengthOf } from '@tiegel/screening';
import { formatNumber, noValue } from '../../numbers/formatNumber.ts';
import { unitText } from '../../server/lookup.ts';
import { tied } from '../../words/tied.ts';
import type { AlloyState } from '../state/alloyState.ts';

/** What people ask first, in the words of a workshop. */
const shown: readonly { id: string; label: string; trust: string }[] = [
  { id: 'density', label: 'Density', trust: 'of unmixed volumes' },
  { id: 'meltingTemperature', label: 'Melts near', trust: 'a mean, no liquidus' },
  { id: 'cost', label: 'Raw materials', trust: 'price list, no scrap, no work' },
];

/** A few numbers that need no explanation, each with what to think of it. */
export function KeyNumbers({ alloy }: { alloy: AlloyState }) {
  const { values, quantities, prices } = alloy;
  return (
    <dl className="key-numbers">
      {shown.map(({ id, label, trust }) => {
        const quantity = quantities.find((one) => one.id === id);
        if (!quantity) return null;
        const value = values[id] ?? null;
        const unit = unitText(quantity.unit, prices?.currency);
        return (
          <KeyNumber key={id} label={label} value={formatNumber(value, quantity.decimals)} unit={unit}>
            {value === null ? 'a datum of an element is missing' : trust}
          </KeyNumber>
        );
      })}
      <YieldStrength alloy={alloy} />
    </dl>
  );
}

/** Of the lattice that the estimate finds likelier, else of the one that the valence electrons point to. */
function YieldStrength({
  alloy: { composition, facts, conditions, values, explanation },
}: {
  alloy: AlloyState;
}) {
  const strengths = strengthOf(composition, facts, conditions);
  const { fcc, bcc } = explanation?.phase ?? {};
  const lattice =
    fcc != null && bcc != null
      ? fcc >= bcc
        ? 'fcc'
        : 'bcc'
      : (values.valenceElectronConcentration ?? 0) >= 7.5
        ? 'fcc'
        : 'bcc';
  const { value, domain, error } = strengths[lattice];
  if (Object.keys(composition).length === 1) {
    return (
      <KeyNumber label="Yield strength" value={noValue} unit="">
        the model is of solutes, a pure element has none
      </KeyNumber>
    );
  }
  const trust = [
    `were it ${lattice}, at ${formatNumber(conditionValue('serviceTemperature', conditions) - 273.15, 0)} °C`,
    error === null ? 'error not measured' : `median error ${formatNumber(100 * error, 0)} %`,
    domain === 'inside' ? null : domain === 'outside' ? 'beyond what the model was tested on' : 'or more',
  ].filter((part) => part !== null);
  return (
    <KeyNumber label="Yield strength" value={formatNumber(value, 0)} unit={value === null ? '' : 'MPa'}>
      {value === null ? 'no value' : tied(trust.join(', '))}
    </KeyNumber>
  );
}

interface KeyNumberProps {
  label: string;
  value: string;
  unit: string;
  children: string;
}

function KeyNumber({ label, value, unit, children }: KeyNumberProps) {
  return (
    <div>
      <dt className="small quiet">{label}</dt>
      <dd>
        <b>{value}</b> {unit}
        <span className="key-trust small quiet">{children}</span>
      </dd>
    </div>
  );
}
