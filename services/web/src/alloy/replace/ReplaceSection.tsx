import { useQuery } from '@tanstack/react-query';
import { elementOf } from '@tiegel/elements';
import { useEffect, useMemo, useRef } from 'react';
import { useSettled } from '../../ask/useSettled.ts';
import { FaultList } from '../../frame/FaultList.tsx';
import { Waiting } from '../../frame/Waiting.tsx';
import { substituteQuery } from '../../server/alloyQueries.ts';
import type { AlloyState } from '../state/alloyState.ts';
import type { AlloyView } from '../state/alloyView.ts';
import { PartnerField } from './PartnerField.tsx';
import { SubstituteTable } from './SubstituteTable.tsx';
import './replace.css';

interface ReplaceSectionProps {
  alloy: AlloyState;
  replace: string;
  partners: readonly string[];
  onChange: (part: Partial<AlloyView>) => void;
}

/** An element replaced by every partner and share: what is lost and gained, the most alike first. */
export function ReplaceSection({ alloy, replace, partners, onChange }: ReplaceSectionProps) {
  const { composition, symbols, limits, conditions, space } = alloy;
  const head = useRef<HTMLHeadingElement>(null);
  const there = symbols.includes(replace);
  const asked = useMemo(
    () => ({
      composition,
      replace,
      ...(partners.length > 0 ? { with: partners } : {}),
      limits,
      ...(space === null ? {} : { space }),
      conditions,
    }),
    [composition, replace, partners, limits, space, conditions],
  );
  const settled = useSettled(asked);
  const { data, error, isPlaceholderData } = useQuery(substituteQuery(settled, there));
  const name = elementOf(replace)?.name.toLowerCase() ?? replace;
  const stale = settled !== asked || isPlaceholderData;

  // biome-ignore lint/correctness/useExhaustiveDependencies: whoever asks for an element is brought to its answer
  useEffect(() => {
    head.current?.focus();
  }, [replace]);

  return (
    <section aria-labelledby="replace" className="replace screen-only">
      <div className="row">
        <h2 id="replace" ref={head} tabIndex={-1}>
          {there ? `Replace ${name}` : `${replace} is not in the alloy`}
        </h2>
        <label>
          Element{' '}
          <select
            value={there ? replace : ''}
            onChange={(event) => onChange({ replace: event.target.value, partners: [] })}
          >
            {there ? null : <option value="">choose one</option>}
            {symbols.map((symbol) => (
              <option key={symbol} value={symbol}>
                {symbol}
              </option>
            ))}
          </select>
        </label>
        <button
          type="button"
          className="button-plain"
          onClick={() => onChange({ replace: null, partners: [] })}
        >
          Close
        </button>
      </div>
      <PartnerField
        key={replace}
        replace={replace}
        partners={partners}
        elements={alloy.elements}
        onTake={(symbols) => onChange({ partners: symbols })}
      />
      <FaultList inBackground error={there ? error : null} what="The alloy itself is not touched." />
      {there && !data && !error ? <Waiting what="Trying every other element" /> : null}
      {there && data && !error ? (
        <div className={stale ? 'dimmed' : undefined} aria-busy={stale}>
          <SubstituteTable alloy={alloy} items={data} />
        </div>
      ) : null}
    </section>
  );
}
