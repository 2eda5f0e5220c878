import type { PairView } from '@tiegel/contract';
import { focusField } from '../ask/faults/faultsContext.ts';
import { FaultList } from '../frame/FaultList.tsx';
import { Printed } from '../frame/Printed.tsx';
import { Waiting } from '../frame/Waiting.tsx';
import type { PricesView } from '../server/types.ts';
import type { Charged } from './chargeOf.ts';
import { SavedBefore } from './SavedBefore.tsx';
import { SheetView } from './SheetView.tsx';
import { TextField } from './TextField.tsx';
import type { ChargeForm } from './useChargeDraft.ts';
import { useSaveSheet } from './useSaveSheet.ts';

interface LiveSheetProps {
  charged: Charged;
  form: ChargeForm;
  /** undefined: not known yet */
  prices: PricesView | undefined;
  pricesError: unknown;
  /** undefined: not known yet */
  pairs: readonly PairView[] | undefined;
  pairsError: unknown;
}

/** The sheet of the form as it stands, or what stands in its way; to be printed, or kept under a number. */
export function LiveSheet({ charged, form, prices, pricesError, pairs, pairsError }: LiveSheetProps) {
  const { sheet, faults, body } = charged;
  const { saving, before, saveAnother } = useSaveSheet(body);
  const disabled = saving.isPending || before !== null;
  if (prices === undefined && !pricesError) return <Waiting what="Fetching the prices" />;
  // Cautions without the pair values of one's own would be those of another charge.
  if (pairs === undefined && !pairsError) return <Waiting what="Fetching the pair values" />;
  if (sheet === null) return <InTheWay faults={faults} />;
  return (
    <>
      {pricesError && prices === undefined ? (
        <p className="note note-warning screen-only" role="status">
          The price list could not be fetched: masses are right, the cost is of what you typed alone.
        </p>
      ) : null}
      {pairsError && pairs === undefined ? (
        <p className="note note-warning screen-only" role="status">
          The pair values could not be fetched: the heat of mixing in the cautions is by those of the program,
          whatever values of your own are in force.
        </p>
      ) : null}
      <SheetView sheet={sheet} title={form.draft.name.trim() || 'Charge sheet'}>
        <p>
          Not saved: no number.{' '}
          {prices
            ? `Prices of ${prices.date}${prices.invented ? ', invented for demonstration' : ''}, where none was typed.`
            : ''}
        </p>
        <Printed />
      </SheetView>
      <div className="charge-form screen-only">
        <TextField
          pointer="/name"
          label="What it is for"
          value={form.draft.name}
          onChange={(name) => form.change({ name })}
        />
        <p className="row">
          <button
            type="button"
            className="button-main"
            aria-disabled={disabled}
            onClick={() => disabled || saving.mutate()}
          >
            {saving.isPending ? 'Saving …' : 'Save with a number'}
          </button>
          <button type="button" onClick={() => window.print()}>
            Print
          </button>
        </p>
        <SavedBefore before={before} saveAnother={saveAnother} />
        <FaultList
          error={saving.error}
          what="The sheet was not saved; what you entered is kept in this browser."
          unsure="Whether the sheet was saved is not known; what you entered is kept in this browser. Save it again when the server answers: it gets one number."
        />
      </div>
    </>
  );
}

function InTheWay({ faults }: { faults: Charged['faults'] }) {
  const named = [...faults].flatMap(([pointer, texts]) => texts.map((text) => ({ pointer, text })));
  return (
    <div className="note note-danger" role="status">
      <p>
        <b>No charge sheet yet.</b> What stands in its way:
      </p>
      <ul>
        {named.map(({ pointer, text }) => (
          <li key={pointer + text}>
            {document.getElementById(`field${pointer.replaceAll('/', '-')}`) ? (
              <button type="button" className="button-plain" onClick={() => focusField(pointer)}>
                {text}
              </button>
            ) : (
              text
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
