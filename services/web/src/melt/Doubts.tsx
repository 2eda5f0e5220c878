import type { MeltView } from '@tiegel/contract';
import { inLocale } from '../numbers/inLocale.ts';

/** What is probably a slip in a melt that was recorded: whoever takes it as evidence should know. */
export function Doubts({ doubts }: Pick<MeltView, 'doubts'>) {
  if (doubts.length === 0) return null;
  return (
    <section className="note note-warning" aria-label="What is doubtful">
      <p>It was recorded all the same, and is probably a slip:</p>
      <ul>
        {doubts.map(({ pointer, text }) => (
          <li key={pointer + text}>{inLocale(text)}</li>
        ))}
      </ul>
    </section>
  );
}
