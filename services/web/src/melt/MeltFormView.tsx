import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { FaultText } from '../ask/faults/FaultText.tsx';
import { FaultsContext } from '../ask/faults/faultsContext.ts';
import { sheetsQuery } from '../charge/savedSheet.ts';
import { ServerProblem } from '../server/request.ts';
import { AsWeighed } from './AsWeighed.tsx';
import { MeltNaming, MeltObservations, MeltProcess } from './MeltFields.tsx';
import type { MeltForm } from './useMeltForm.ts';
import { WeighedRows } from './WeighedRows.tsx';

/** The form of a melt; `children` are what can be done with it. */
export function MeltFormView({ form, children }: { form: MeltForm; children: ReactNode }) {
  const { data: sheets } = useQuery(sheetsQuery);
  const { written, sheetError } = form;
  const faults = new Map(form.faults);
  if (sheetError) {
    const remedy =
      sheetError instanceof ServerProblem
        ? sheetError.faults.map((one) => one.remedy).join(' ')
        : 'What its materials are is not known until it does; this page asks again by itself. What you enter is kept.';
    faults.set('/charge', [`${sheetError.message} ${remedy}`]);
  }
  return (
    <FaultsContext value={faults}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: nothing to press, it only hears which field was left */}
      <div className="melt-form" onBlur={({ target }) => form.leave(target.id)}>
        <MeltNaming form={form} sheets={(sheets ?? []).map(({ number }) => number)} />
        <section aria-labelledby="melt-weighed-head">
          <h2 id="melt-weighed-head">Weighed</h2>
          <WeighedRows form={form} />
          <FaultText pointer="/weighed" />
          {[...faults.keys()]
            .filter((pointer) => pointer.startsWith('/loss'))
            .map((pointer) => (
              <FaultText key={pointer} pointer={pointer} />
            ))}
          {written.melt ? (
            <AsWeighed composition={written.melt.composition} nominal={written.melt.nominal} />
          ) : null}
        </section>
        <section aria-labelledby="melt-process-head">
          <h2 id="melt-process-head">Melted and annealed</h2>
          <MeltProcess form={form} />
        </section>
        <section aria-labelledby="melt-seen-head">
          <h2 id="melt-seen-head">Observed and measured</h2>
          <MeltObservations form={form} />
        </section>
        {children}
      </div>
    </FaultsContext>
  );
}

/** How many things are said to stand in the way of sending a form, in words; '' where none is. */
export function inTheWay({ faults, sheetError }: MeltForm): string {
  const count = faults.size + (sheetError ? 1 : 0);
  return count === 0 ? '' : `${count === 1 ? 'One thing' : `${count} things`} to mend above.`;
}
