import { useQuery } from '@tanstack/react-query';
import { formatComposition } from '@tiegel/elements';
import { Link, useLocation, useParams } from 'wouter';
import { keepDraft, keptDraft } from '../charge/chargeDraft.ts';
import { draftOfSheet } from '../charge/draftOfSheet.ts';
import { SheetView } from '../charge/SheetView.tsx';
import { sheetQuery } from '../charge/savedSheet.ts';
import { Failed } from '../frame/Failed.tsx';
import { Printed } from '../frame/Printed.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { formatInstant } from '../numbers/formatInstant.ts';

/** A charge sheet as it was saved under its number. */
export function ChargeSheetPage() {
  const { number = '' } = useParams<{ number: string }>();
  const { data: sheet, error, refetch } = useQuery(sheetQuery(number));
  const [, navigate] = useLocation();
  useTitle(`Charge sheet ${number}`);
  if (error && !sheet) {
    return (
      <Failed
        error={error}
        what={`Charge sheet ${number}`}
        onRetry={() => void refetch()}
        list={{ to: '/charge-sheets', name: 'all charge sheets' }}
      />
    );
  }
  if (!sheet) return <Waiting what="Fetching the charge sheet" />;
  const asTemplate = () => {
    keepDraft(draftOfSheet(sheet, keptDraft()));
    navigate(`/charge?alloy=${formatComposition(sheet.composition)}`);
  };
  const { prices } = sheet;
  return (
    <div className="charge-page">
      <div className="row screen-only">
        <h1>Charge sheet {sheet.number}</h1>
        <Link href="/charge-sheets" className="button">
          Saved sheets
        </Link>
        <Link href={`/melts/new?charge=${sheet.number}`} className="button">
          Record its melt
        </Link>
        <button type="button" onClick={asTemplate}>
          Begin a new one like this
        </button>
        <button type="button" onClick={() => window.print()}>
          Print
        </button>
      </div>
      <SheetView
        sheet={sheet}
        title={
          <>
            <span className="print-inline">Charge sheet</span> {sheet.number}
            {sheet.name === '' ? '' : ` · ${sheet.name}`}
          </>
        }
      >
        <p>
          Saved {formatInstant(sheet.savedAt)}
          {sheet.by === null ? '' : ` by ${sheet.by}`}. Data version {sheet.dataVersion}, price list{' '}
          {prices ? `of ${prices.date}${prices.invented ? ' (invented for demonstration)' : ''}` : 'none'}. A
          saved sheet is never changed.
        </p>
        <Printed />
      </SheetView>
    </div>
  );
}
