import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useEffect, useState } from 'react';
import { formatCount } from '../../numbers/formatNumber.ts';
import { entryText, parseNumber } from '../../numbers/parseNumber.ts';
import { unitText } from '../../server/lookup.ts';
import { Candidates } from '../candidates/Candidates.tsx';
import { valuesQuery } from '../lookQueries.ts';
import type { LookProps } from '../lookView.ts';
import type { Marks } from '../marks/useMarks.ts';
import { brushFilters } from './brushFilters.ts';
import type { Brush } from './plotState.ts';
import type { ChosenPlot } from './usualPlot.ts';

/** What a rectangle of the scatter selects, as a table; and the same rectangle by typing. */
export function Selected(props: LookProps & { chosen: ChosenPlot; marks: Marks }) {
  const { search, view, change, chosen } = props;
  const { brush } = view.plot;
  const set = (next: Brush | null) => change({ plot: { ...view.plot, brush: next } });
  const filters = brush && brushFilters(view.filters, brush, chosen.x.id, chosen.y.id);
  return (
    <section className="selected" aria-labelledby="selected-head">
      <h3 id="selected-head">Select by range</h3>
      <BrushFields {...props} brush={brush} onBrush={set} />
      {filters === null ? (
        <p className="quiet">
          Draw a rectangle in the scatter, or write ranges: the candidates in it are listed here.
        </p>
      ) : (
        <>
          <p className="row" role="status">
            <Count id={search.id} filters={filters} />
            <button type="button" onClick={() => change({ filters, plot: { ...view.plot, brush: null } })}>
              Show only these
            </button>
            <button type="button" onClick={() => set(null)}>
              Drop the selection
            </button>
          </p>
          <Candidates
            {...props}
            view={{ ...view, filters, at: 0 }}
            change={(part) => change('filters' in part ? { plot: { ...view.plot, brush: null } } : part)}
          />
        </>
      )}
    </section>
  );
}

function Count({ id, filters }: { id: string; filters: LookProps['view']['filters'] }) {
  const { data } = useQuery(valuesQuery(id, filters, [], 1));
  return <span>{data ? `${formatCount(data.meeting)} selected.` : 'Counting …'}</span>;
}

type Texts = { x: [string, string]; y: [string, string] };

function BrushFields({
  search,
  chosen,
  brush,
  onBrush,
}: LookProps & { chosen: ChosenPlot; brush: Brush | null; onBrush: (brush: Brush) => void }) {
  const [texts, setTexts] = useState<Texts>(textsOf(brush));
  const [fault, setFault] = useState('');
  // A rectangle that is drawn is written into the fields.
  useEffect(() => setTexts(textsOf(brush)), [brush]);
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    const read = brushOf(texts);
    setFault(typeof read === 'string' ? read : '');
    if (typeof read !== 'string') onBrush(read);
  };
  return (
    <form className="row" onSubmit={onSubmit} aria-label="Select by range">
      {(['x', 'y'] as const).map((axis) => {
        const { name, unit } = chosen[axis];
        const written = unitText(unit, search.prices?.currency);
        const called = written === '' ? name : `${name}, ${written}`;
        return (
          <fieldset key={axis} className="row">
            <legend className="unseen">{called}</legend>
            <span aria-hidden="true" className="brush-name">
              {called}
            </span>
            {([0, 1] as const).map((end) => (
              <label key={end} className="row">
                {end === 0 ? 'from' : 'to'}
                <input
                  type="text"
                  inputMode="decimal"
                  size={8}
                  value={texts[axis][end]}
                  aria-invalid={fault ? true : undefined}
                  aria-describedby={fault ? 'brush-fault' : undefined}
                  onChange={(event) => {
                    const side: [string, string] = [...texts[axis]];
                    side[end] = event.target.value;
                    setTexts({ ...texts, [axis]: side });
                  }}
                />
              </label>
            ))}
          </fieldset>
        );
      })}
      <button type="submit">Select</button>
      <span role="alert" className="fault" id="brush-fault">
        {fault}
      </span>
    </form>
  );
}

function textsOf(brush: Brush | null): Texts {
  const pair = (side: [number, number] | undefined): [string, string] => [
    entryText(side?.[0]),
    entryText(side?.[1]),
  ];
  return { x: pair(brush?.x), y: pair(brush?.y) };
}

/** The rectangle that was typed, or what is wrong with it. */
function brushOf(texts: Texts): Brush | string {
  const numbers: number[] = [];
  for (const text of [...texts.x, ...texts.y]) {
    const parsed = parseNumber(text);
    if ('unclear' in parsed) return parsed.unclear;
    if (parsed.value === null) return 'Write both ends of both ranges.';
    numbers.push(parsed.value);
  }
  const [left, right, bottom, top] = numbers as [number, number, number, number];
  if (left > right || bottom > top) return 'A range begins above its end: exchange the two values.';
  return { x: [left, right], y: [bottom, top] };
}
