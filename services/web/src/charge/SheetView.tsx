import type { ChargeSheet } from '@tiegel/charge';
import type { ReactNode } from 'react';
import { ShareBar } from '../composition/ShareBar.tsx';
import { Shares } from '../composition/Shares.tsx';
import './charge.css';
import { inLocale } from '../numbers/inLocale.ts';
import { SheetCautions } from './SheetCautions.tsx';
import { SheetFacts } from './SheetFacts.tsx';
import { SheetLines } from './SheetLines.tsx';
import { SheetShares } from './SheetShares.tsx';

interface SheetViewProps {
  sheet: ChargeSheet;
  /** the heading */
  title: ReactNode;
  /** what is known of the sheet beside it: when it was saved, from which data */
  children: ReactNode;
}

/** A charge sheet for eyes and paper: one A4 page. */
export function SheetView({ sheet, title, children }: SheetViewProps) {
  return (
    <article className="sheet">
      <header className="sheet-head">
        <h2>{title}</h2>
        <p className="sheet-alloy">
          <Shares composition={sheet.composition} decimals={shownDecimals(sheet.composition)} />
          <span className="quiet"> at.%, after the losses</span>
        </p>
        <ShareBar composition={sheet.composition} labelled />
      </header>
      <SheetFacts sheet={sheet} />
      <div className="sheet-sides">
        <SheetLines sheet={sheet} />
        <SheetShares sheet={sheet} />
      </div>
      <SheetCautions cautions={sheet.cautions} />
      <section aria-labelledby="sheet-notes-head" className="sheet-notes">
        <h3 id="sheet-notes-head">What the numbers mean</h3>
        <ul>
          {sheet.notes.map((note) => (
            <li key={note}>{inLocale(note)}</li>
          ))}
        </ul>
      </section>
      <p className="print-only sheet-hand">
        <span>Weighed by</span> <span>Date</span> <span>Ingot, g</span> <span>Melted in</span>
      </p>
      <footer className="sheet-foot small quiet">{children}</footer>
    </article>
  );
}

/** As many decimals (at most 3) as tell the shares apart from rounder ones. */
function shownDecimals(composition: Readonly<Record<string, number>>): number {
  const shares = Object.values(composition);
  const enough = [0, 1, 2].find((decimals) =>
    shares.every((share) => Math.abs(share - Number(share.toFixed(decimals))) < 1e-6),
  );
  return enough ?? 2;
}
