import { type FormEvent, useState } from 'react';
import { useKeptText } from '../../frame/useKeptText.ts';
import type { ElementView } from '../../server/types.ts';

interface PartnerFieldProps {
  replace: string;
  partners: readonly string[];
  elements: readonly ElementView[];
  onTake: (symbols: string[]) => void;
}

/** Who may come instead: symbols, each tried alone and all of them together; empty for every other element. */
export function PartnerField({ replace, partners, elements, onTake }: PartnerFieldProps) {
  const [text, setText, settled] = useKeptText(
    `${window.location.pathname} instead of ${replace}`,
    partners.join(' '),
  );
  const [fault, setFault] = useState<string | null>(null);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const wanted = [...new Set(text.split(/[\s,;+]+/).filter(Boolean))];
    const found = wanted.map((one) =>
      elements.find(({ symbol }) => symbol.toLowerCase() === one.toLowerCase()),
    );
    const unknown = wanted.filter((_, at) => !found[at]);
    if (unknown.length > 0)
      setFault(`There are no data of ${unknown.join(', ')}. Write symbols such as Ni, Mn.`);
    else if (found.some((one) => one!.symbol === replace)) setFault(`${replace} cannot replace itself.`);
    else {
      setFault(null);
      settled(text);
      onTake(found.map((one) => one!.symbol));
    }
  };
  return (
    <form className="row" onSubmit={submit}>
      <label htmlFor="partners">By</label>
      <input
        id="partners"
        size={16}
        autoComplete="off"
        placeholder="every other element"
        value={text}
        aria-invalid={fault !== null}
        aria-describedby="partners-note"
        onChange={(event) => setText(event.target.value)}
      />
      <button type="submit">Try these</button>
      <span
        id="partners-note"
        className={fault === null ? 'quiet small' : 'fault'}
        role={fault ? 'alert' : undefined}
      >
        {fault ?? 'Symbols, such as Ni Mn: each is tried alone, and several together in equal parts.'}
      </span>
    </form>
  );
}
