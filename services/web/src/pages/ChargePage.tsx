import { useQuery } from '@tanstack/react-query';
import { useEffect, useMemo, useState } from 'react';
import { Link, useSearchParams } from 'wouter';
import { alloyQuestion } from '../alloy/entry/alloyQuestion.ts';
import { readAlloyText } from '../alloy/entry/readAlloyText.ts';
import { FaultsContext } from '../ask/faults/faultsContext.ts';
import { NumberField } from '../ask/fields/NumberField.tsx';
import { chargeOf, currencyOf } from '../charge/chargeOf.ts';
import '../charge/charge.css';
import { ElementMaterials } from '../charge/ElementMaterials.tsx';
import { LiveSheet } from '../charge/LiveSheet.tsx';
import { MasterAlloys } from '../charge/MasterAlloys.tsx';
import { MaterialList } from '../charge/MaterialList.tsx';
import { TextField } from '../charge/TextField.tsx';
import { totalInWords } from '../charge/totalInWords.ts';
import { useChargeDraft } from '../charge/useChargeDraft.ts';
import { useTitle } from '../frame/useTitle.ts';
import { ownPairs } from '../server/ownPairs.ts';
import { pairsQuery, pricesQuery } from '../server/queries.ts';

/** What to weigh for a batch: alloy, batch, materials, and the sheet that follows while somebody types. */
export function ChargePage() {
  useTitle('Charge sheet');
  const [address, setAddress] = useSearchParams();
  const [written, setWritten] = useState(address.get('alloy') ?? '');
  const form = useChargeDraft();
  const prices = useQuery(pricesQuery);
  const pairs = useQuery(pairsQuery);
  const list = prices.data ?? null;
  const own = useMemo(() => ownPairs(pairs.data ?? []), [pairs.data]);
  const alloy = useMemo(() => (written.trim() === '' ? null : readAlloyText(written)), [written]);
  const composition = alloy?.composition ?? null;
  const charged = useMemo(
    () => (composition === null ? null : chargeOf(composition, form.draft, list, own)),
    [composition, form.draft, list, own],
  );

  useEffect(() => {
    setAddress(written.trim() === '' ? {} : { alloy: written.trim() }, { replace: true });
  }, [written, setAddress]);

  const faults = new Map(charged?.faults ?? []);
  if (alloy?.faults)
    faults.set(
      '/composition',
      alloy.faults.map(({ detail, remedy }) => `${detail} ${remedy}`),
    );
  const currency = currencyOf(form.draft, list) ?? 'currency';
  return (
    <FaultsContext value={faults}>
      <div className="charge-page">
        <div className="charge-form screen-only">
          <div className="row">
            <h1>Charge sheet</h1>
            <Link href="/charge-sheets" className="button">
              Saved sheets
            </Link>
          </div>
          <div className="charge-alloy">
            <TextField
              pointer="/composition"
              label="Alloy, at.%"
              placeholder="Co20Cr20Fe20Mn20Ni20"
              value={written}
              onChange={setWritten}
            />
            <span className="quiet small" role="status">
              {composition === null ? '' : `${totalInWords(written)} ${alloyQuestion(written)}`.trim()}
            </span>
          </div>
          <p className="row">
            <NumberField
              pointer="/mass"
              label="Batch mass"
              unit="g"
              value={form.draft.mass}
              onChange={(mass) => form.change({ mass })}
            />
            <NumberField
              pointer="/resolution"
              label="One step of the balance"
              unit="g"
              value={form.draft.resolution}
              onChange={(resolution) => form.change({ resolution })}
            />
          </p>
          {composition === null ? (
            <p className="read">
              Write the alloy that is to be melted, or open a candidate of a search and go on from there. What
              is on your shelf, purities and prices, is kept in this browser.
            </p>
          ) : (
            <section aria-labelledby="materials-head" className="column">
              <h2 id="materials-head">Raw materials</h2>
              <ElementMaterials symbols={Object.keys(composition)} form={form} prices={list} />
              <h3>Master alloys and other materials</h3>
              <MasterAlloys form={form} currency={currency} />
              <MaterialList form={form} />
            </section>
          )}
        </div>
        {charged === null ? null : (
          <LiveSheet
            charged={charged}
            form={form}
            prices={prices.data}
            pricesError={prices.error}
            pairs={pairs.data}
            pairsError={pairs.error}
          />
        )}
      </div>
    </FaultsContext>
  );
}
