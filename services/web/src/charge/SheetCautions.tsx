import type { Caution, ChargeSheet } from '@tiegel/charge';
import { inLocale } from '../numbers/inLocale.ts';

/** Kinds of the process, which are told in whole; those of the elements are told by kind, in whole on demand. */
const ofProcess = new Set<string>(['boils before all is molten', 'evaporates', 'heat of mixing', 'powder']);

/** What to beware of. On paper the hazards of the elements stand by kind, each in one line. */
export function SheetCautions({ cautions }: Pick<ChargeSheet, 'cautions'>) {
  const process = cautions.filter(({ kind }) => ofProcess.has(kind));
  const recorded = cautions.filter(({ kind }) => !ofProcess.has(kind));
  return (
    <section aria-labelledby="sheet-cautions-head" className="sheet-cautions note note-warning">
      <h3 id="sheet-cautions-head">
        <span aria-hidden="true">⚠ </span>Cautions
      </h3>
      <p>
        <b>Reminders, not a safety assessment.</b> {cautions[0]?.follow ?? ''}
      </p>
      <ul className="sheet-caution-list">
        {process.map(({ kind, text }) => (
          <li key={text}>
            <b>{sentence(kind)}.</b> {inLocale(text)}
          </li>
        ))}
      </ul>
      <dl className="sheet-kinds">
        {byKind(recorded).map(([kind, of]) => (
          <div key={kind}>
            <dt>{sentence(kind)}</dt>
            <dd>{[...new Set(of.flatMap(({ about }) => about))].join(', ')}</dd>
          </div>
        ))}
      </dl>
      {recorded.length > 0 ? (
        <details className="screen-only">
          <summary>What each of these means</summary>
          <ul className="sheet-caution-list">
            {recorded.map(({ kind, text }) => (
              <li key={kind + text}>{inLocale(text)}</li>
            ))}
          </ul>
        </details>
      ) : null}
    </section>
  );
}

function byKind(cautions: readonly Caution[]): [string, Caution[]][] {
  const kinds = new Map<string, Caution[]>();
  for (const one of cautions) kinds.set(one.kind, [...(kinds.get(one.kind) ?? []), one]);
  return [...kinds];
}

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
