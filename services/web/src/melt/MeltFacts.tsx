import type { MeltView } from '@tiegel/contract';
import { Link } from 'wouter';
import { formatNumber } from '../numbers/formatNumber.ts';
import { labelInWords } from './phaseInWords.ts';

/** What was done and seen of a melt, as a list. */
export function MeltFacts({ melt }: { melt: MeltView }) {
  const { anneal, ingot, hardness, density, charge, process, label, methods, notes } = melt;
  const weighed = melt.weighed.reduce((sum, { mass }) => sum + mass, 0);
  return (
    <dl className="melt-facts">
      <Fact name="Phases">
        <b>{labelInWords(label)}</b>
        {methods.length > 0 ? <span className="quiet"> by {methods.join(', ')}</span> : null}
      </Fact>
      <Fact name="Process">{process}</Fact>
      <Fact name="Anneal">
        {anneal === null
          ? 'none'
          : `${formatNumber(anneal.temperature, 0)} K (${formatNumber(anneal.temperature - 273.15, 0)} °C), ${anneal.hours} h, cooling: ${anneal.cooling}`}
      </Fact>
      <Fact name="Hardness">{hardness === null ? 'not measured' : `${formatNumber(hardness, 0)} HV`}</Fact>
      <Fact name="Density">{density === null ? 'not measured' : `${formatNumber(density, 2)} g/cm³`}</Fact>
      <Fact name="Weighed, ingot">
        {formatNumber(weighed, 3)} g
        {ingot === null
          ? ', not weighed after'
          : `, ${formatNumber(ingot, 3)} g (${formatNumber(ingot - weighed, 3)} g)`}
      </Fact>
      <Fact name="Charge sheet">
        {charge === null ? 'none' : <Link href={`/charge-sheets/${charge}`}>{charge}</Link>}
      </Fact>
      {notes === '' ? null : <Fact name="Notes">{notes}</Fact>}
    </dl>
  );
}

function Fact({ name, children }: { name: string; children: React.ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
