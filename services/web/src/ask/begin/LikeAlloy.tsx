import { useMutation } from '@tanstack/react-query';
import { symbols } from '@tiegel/elements';
import { type FormEvent, useId } from 'react';
import { useKept } from '../../frame/useKept.ts';
import { entryText, parseNumber } from '../../numbers/parseNumber.ts';
import type { Draft } from '../draft/draft.ts';
import { neighbourhood } from './neighbourhood.ts';
import { readPartners } from './readPartners.ts';

interface LikeAlloyProps {
  onFill: (part: Partial<Draft>) => void;
}

/** What is wrong in each field, and what is asked of an alloy that was taken. */
type Faults = Partial<Record<'alloy' | 'within' | 'partners' | 'question', string>>;

/** A known alloy spans a neighbourhood: its elements and chosen partners, shares within some at.% of its own. */
export function LikeAlloy({ onFill }: LikeAlloyProps) {
  const [typed, setTyped] = useKept('ask.like', { alloy: '', within: entryText(5), partners: '' });
  const fill = useMutation({
    mutationFn: async () => {
      const [{ readAlloyText }, { alloyQuestion }] = await Promise.all([
        import('../../alloy/entry/readAlloyText.ts'),
        import('../../alloy/entry/alloyQuestion.ts'),
      ]);
      const alloy = readAlloyText(typed.alloy);
      const within = parseNumber(typed.within);
      const { partners, unknown } = readPartners(typed.partners, symbols);
      const faults: Faults = {
        ...(alloy.faults
          ? { alloy: alloy.faults.map(({ detail, remedy }) => `${detail} ${remedy}`).join(' ') }
          : {}),
        ...('unclear' in within
          ? { within: within.unclear }
          : within.value === null || within.value < 0.2 || within.value > 50
            ? { within: `Write a number from ${entryText(0.2)} to 50, in at.%.` }
            : {}),
        ...(unknown.length > 0
          ? { partners: `${unknown.join(', ')}: write symbols of elements that have data, such as Mo, V.` }
          : {}),
      };
      if (Object.keys(faults).length > 0 || !alloy.composition || 'unclear' in within) return faults;
      onFill(neighbourhood({ composition: alloy.composition, within: within.value!, partners }));
      return { question: alloyQuestion(typed.alloy) };
    },
  });
  const faults = fill.data ?? {};
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    fill.mutate();
  };
  const set = (part: Partial<typeof typed>) => {
    fill.reset();
    setTyped({ ...typed, ...part });
  };

  return (
    <form className="begin-way" onSubmit={onSubmit} aria-label="Alloys like this one">
      <h3>Alloys like this one</h3>
      <Field
        label="Alloy, in at.%"
        value={typed.alloy}
        fault={faults.alloy}
        placeholder="Al10Cr20Fe35Mn10Ni25"
        onChange={(alloy) => set({ alloy })}
        size={24}
      />
      <Field
        label="Shares within ±"
        unit="at.%"
        value={typed.within}
        fault={faults.within}
        onChange={(within) => set({ within })}
        size={5}
      />
      <Field
        label="Partners that may come in"
        value={typed.partners}
        fault={faults.partners}
        placeholder="none"
        onChange={(partners) => set({ partners })}
        size={12}
      />
      <p className="row">
        <button type="submit">Fill elements and shares</button>
        <span className="small quiet">Limits and ranking stay.</span>
      </p>
      <p className="small" role="status">
        {faults.question}
      </p>
    </form>
  );
}

interface FieldProps {
  label: string;
  value: string;
  fault: string | undefined;
  onChange: (text: string) => void;
  size: number;
  unit?: string;
  placeholder?: string;
}

function Field({ label, value, fault, onChange, size, unit, placeholder }: FieldProps) {
  const id = useId();
  return (
    <span className="number-field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        spellCheck={false}
        size={size}
        value={value}
        placeholder={placeholder}
        onChange={(event) => onChange(event.target.value)}
        aria-invalid={fault ? true : undefined}
        aria-describedby={fault ? `${id}-fault` : undefined}
      />
      {unit ? <span className="quiet">{unit}</span> : null}
      {fault ? (
        <span className="fault" id={`${id}-fault`}>
          {fault}
        </span>
      ) : null}
    </span>
  );
}
