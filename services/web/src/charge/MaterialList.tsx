import { useQuery } from '@tanstack/react-query';
import { type Fault, ProblemError } from '@tiegel/contract/terms';
import { type ChangeEvent, useRef, useState } from 'react';
import { Link } from 'wouter';
import { materialsQuery } from '../data/dataQueries.ts';
import { readTextFile } from '../data/imports/readTextFile.ts';
import type { ChargeDraft } from './chargeDraft.ts';
import { draftOfList, withMaterials } from './draftOfList.ts';
import { materialsOf } from './materialsOf.ts';
import type { ChargeForm } from './useChargeDraft.ts';

/** Reads a list of materials from a file, in this browser; what stood in the form can be brought back. */
export function MaterialList({ form }: { form: ChargeForm }) {
  const file = useRef<HTMLInputElement>(null);
  const [faults, setFaults] = useState<readonly Pick<Fault, 'pointer' | 'detail' | 'remedy'>[]>([]);
  const [replaced, setReplaced] = useState<ChargeDraft | null>(null);
  const { data: stored } = useQuery(materialsQuery);
  const own = stored?.filter((material) => material.own) ?? [];
  const take = (next: ChargeDraft) => {
    setReplaced(form.draft);
    setFaults([]);
    form.change(next);
  };
  const read = async (list: File) => {
    const file = await readTextFile(list);
    if ('wrong' in file) return setFaults([{ pointer: '', detail: file.wrong, remedy: '' }]);
    try {
      take(draftOfList(file.text, form.draft));
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      setFaults(error.faults);
    }
  };
  const onFile = (event: ChangeEvent<HTMLInputElement>) => {
    const [list] = event.target.files ?? [];
    if (list) void read(list);
    event.target.value = '';
  };
  return (
    <details>
      <summary>Use a list of materials</summary>
      <p className="read">
        A CSV file with the columns material, contains, amounts, purity, price, currency, melting; only the
        first is needed. It is then all there is to charge from; materials of the data stand beside the
        metals.
      </p>
      <p className="row">
        <button type="button" onClick={() => file.current?.click()}>
          Choose a list …
        </button>
        {own.length > 0 ? (
          <button type="button" onClick={() => take(withMaterials(materialsOf(own), form.draft))}>
            Take {own.length === 1 ? 'the one' : `the ${own.length}`} of the data
          </button>
        ) : null}
        <Link href="/data/materials">Materials of the data</Link>
        <input
          ref={file}
          type="file"
          accept=".csv,text/csv"
          aria-label="List of materials"
          onChange={onFile}
          hidden
        />
      </p>
      {faults.length > 0 ? (
        <div className="note note-danger" role="alert">
          <ul>
            {faults.map(({ pointer, detail, remedy }) => (
              <li key={pointer + detail}>
                {detail} {remedy}
              </li>
            ))}
          </ul>
          <p>The list was not taken; the form is as it was.</p>
        </div>
      ) : null}
      {replaced ? (
        <p className="note row" role="status">
          The list took the place of what stood in the form.
          <button
            type="button"
            onClick={() => {
              const { elements, masters, currency } = replaced;
              form.change({ elements, masters, currency });
              setReplaced(null);
            }}
          >
            Bring back what stood there
          </button>
        </p>
      ) : null}
    </details>
  );
}
