import { useId } from 'react';
import { useKept } from '../frame/useKept.ts';
import { type Clash, rowAt, type Whose } from './changesOnto.ts';
import type { MeltDraft, WeighedRow } from './meltDraft.ts';
import { phaseInWords } from './phaseInWords.ts';

interface ClashesProps {
  /** where what is chosen is kept until it is taken, for a reload */
  place: string;
  clashes: readonly Clash[];
  onChosen: (chosen: Record<string, Whose>) => void;
}

/** What two people changed to different values: each is decided before anything is saved. */
export function Clashes({ place: kept, clashes, onChosen }: ClashesProps) {
  const [chosen, setChosen] = useKept<Record<string, Whose>>(kept, {});
  const id = useId();
  const open = clashes.filter(({ place }) => chosen[place] === undefined).length;
  return (
    <fieldset className="note note-warning melt-clashes">
      <legend className="unseen">What you both changed</legend>
      <p>
        <b>You both changed the same.</b> Choose what stands; the other is not saved.
      </p>
      {clashes.map(({ place, mine, theirs }) => (
        <fieldset key={place} className="row">
          <legend>{placeInWords(place)}</legend>
          {(
            [
              ['mine', `yours: ${inWords(place, mine)}`],
              ['theirs', `theirs: ${inWords(place, theirs)}`],
            ] as const
          ).map(([whose, words]) => (
            <label key={whose} className="choice">
              <input
                type="radio"
                name={`${id} ${place}`}
                checked={chosen[place] === whose}
                onChange={() => setChosen({ ...chosen, [place]: whose })}
              />
              {words}
            </label>
          ))}
        </fieldset>
      ))}
      <p className="row">
        <button type="button" aria-disabled={open > 0} onClick={() => open > 0 || onChosen(chosen)}>
          Take what is chosen
        </button>
        <span role="status">{open === 0 ? '' : open === 1 ? 'One to choose.' : `${open} to choose.`}</span>
      </p>
    </fieldset>
  );
}

const names: Partial<Record<string, string>> = {
  name: 'Name of the melt',
  date: 'Day of the melt',
  charge: 'Charge sheet',
  loss: 'Losses, wt.%',
  ingot: 'Ingot, g',
  process: 'Process',
  anneal: 'Anneal',
  phases: 'Phases',
  methods: 'Methods of observation',
  hardness: 'Hardness, HV',
  density: 'Density, g/cm³',
  notes: 'Notes',
};

function placeInWords(place: string): string {
  const row = rowAt(place);
  return row === null
    ? (names[place] ?? place)
    : `Weighed: ${row === '' ? 'a material without a name' : row}`;
}

function inWords(place: string, value: unknown): string {
  if (rowAt(place) !== null) return rowInWords(value as WeighedRow | undefined);
  if (place === 'anneal') {
    const { annealed, annealTemperature, annealHours, cooling } = value as MeltDraft;
    return annealed ? `${annealTemperature} K, ${annealHours} h, cooling: ${cooling}` : 'none';
  }
  if (Array.isArray(value)) return value.map(phaseInWords).join(', ') || 'nothing';
  if (value !== null && typeof value === 'object') return Object.entries(value).flat().join(' ') || 'nothing';
  return value === undefined || value === '' ? 'nothing' : String(value);
}

function rowInWords(row: WeighedRow | undefined): string {
  if (row === undefined) return 'not weighed';
  const { mass, contains, amounts, purity } = row;
  const parts = [`${mass || '?'} g`, contains && `${contains} ${amounts}`, purity && `purity ${purity} wt.%`];
  return parts.filter(Boolean).join(', ');
}
