import { fault, nearest, ProblemError } from '@tiegel/contract/terms';
import { quantities } from '@tiegel/screening';

const closed = quantities.map(({ id }) => id);

/** Throws quantity/unknown for each of the ids, a list at `pointer`, that no quantity has, `own` ones included. */
export function namesIn(ids: readonly string[], pointer: string, own: readonly string[] = []): void {
  const known = [...closed, ...own];
  const faults = ids.flatMap((id, place) => {
    if (known.includes(id)) return [];
    const near = nearest(id, known);
    const values = { id, known: known.join(', ') };
    return [fault('quantity/unknown', near === null ? values : { ...values, near }, `${pointer}/${place}`)];
  });
  if (faults.length > 0) throw new ProblemError(faults);
}
