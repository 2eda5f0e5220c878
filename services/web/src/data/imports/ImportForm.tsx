import { useQuery } from '@tanstack/react-query';
import type { ImportKind } from '@tiegel/contract';
import { type ChangeEvent, type DragEvent, useRef, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useSettled } from '../../ask/useSettled.ts';
import { FaultList } from '../../frame/FaultList.tsx';
import { useKeptText } from '../../frame/useKeptText.ts';
import { useTitle } from '../../frame/useTitle.ts';
import { previewQuery } from '../dataQueries.ts';
import { useAddress } from '../useAddress.ts';
import { FormatHelp } from './FormatHelp.tsx';
import { importKinds, kindOf } from './importKinds.ts';
import { PreviewPanel } from './PreviewPanel.tsx';
import { readTextFile } from './readTextFile.ts';
import { useStoreImport } from './useStoreImport.ts';

/** Brings in rows of one's own: choose what they are, write, drop or choose a file, see what becomes of each, store. */
export function ImportForm() {
  useTitle('Bring in your own data');
  const [address, change] = useAddress();
  const kind = kindOf(address.get('kind'));
  return (
    <section className="column" aria-labelledby="import-head">
      <h2 id="import-head">Bring in your own data</h2>
      <fieldset className="import-kinds">
        <legend className="unseen">What it is</legend>
        {importKinds.map(({ id, name }) => (
          <label key={id} className="choice">
            <input
              type="radio"
              name="kind"
              checked={kind.id === id}
              onChange={() => change({ kind: id, fate: null })}
            />
            {name}
          </label>
        ))}
      </fieldset>
      <p className="read">{kind.rule} Searches that ran keep the data that they ran with.</p>
      <KindForm key={kind.id} id={kind.id} />
    </section>
  );
}

function KindForm({ id }: { id: ImportKind }) {
  const kind = kindOf(id);
  const [, navigate] = useLocation();
  const [text, setText] = useKeptText(`import.${id}`);
  const [name, setName] = useKeptText(`import.${id}.name`);
  const [wrong, setWrong] = useState('');
  const [over, setOver] = useState(false);
  const file = useRef<HTMLInputElement>(null);
  const settled = useSettled(text);
  const preview = useQuery(previewQuery(id, settled));
  const store = useStoreImport(({ number }) => {
    setText('');
    setName('');
    navigate(`/data/imports/${number}`);
  });
  const fresh = settled === text && !preview.isPlaceholderData && !preview.isFetching;

  const take = async (chosen: File | undefined) => {
    if (!chosen) return;
    const read = await readTextFile(chosen);
    if ('wrong' in read) return setWrong(read.wrong);
    setWrong('');
    setText(read.text);
    if (name === '') setName(chosen.name.replace(/\.(csv|txt)$/i, ''));
  };
  const onFile = (event: ChangeEvent<HTMLInputElement>) => {
    void take(event.target.files?.[0]);
    event.target.value = '';
  };
  const onDrop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    void take(event.dataTransfer.files[0]);
  };

  return (
    <form
      className="column"
      onSubmit={(event) => {
        event.preventDefault();
        if (fresh && preview.data?.storable) store.mutate({ kind: id, name, text });
      }}
    >
      <FormatHelp kind={kind} onExample={() => setText(kind.example)} />
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a file may be dropped here; the button beside does the same by keys */}
      <div
        className={over ? 'import-text import-over' : 'import-text'}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={onDrop}
      >
        <div className="row">
          <label htmlFor="import-rows">Rows as CSV</label>
          <button type="button" onClick={() => file.current?.click()}>
            Choose a file …
          </button>
          <span className="quiet">or drop it here, or write or paste the rows.</span>
          {text === '' ? null : (
            <button type="button" className="button-plain" onClick={() => setText('')}>
              Empty the field
            </button>
          )}
          <input
            ref={file}
            type="file"
            accept=".csv,.txt,text/csv"
            aria-label="File"
            onChange={onFile}
            hidden
          />
        </div>
        <textarea
          id="import-rows"
          className="mono"
          rows={8}
          spellCheck={false}
          autoComplete="off"
          placeholder={kind.example}
          value={text}
          aria-describedby={wrong ? 'import-wrong' : undefined}
          onChange={(event) => setText(event.target.value)}
        />
        <span role="alert" className="fault" id="import-wrong">
          {wrong}
        </span>
      </div>
      {text.trim() === '' ? (
        <p className="quiet">What becomes of each row is shown here before anything is stored.</p>
      ) : (
        <>
          <FaultList
            error={preview.error}
            what="What becomes of the rows is not known. Nothing was stored; what you entered is kept."
          />
          {preview.data ? <PreviewPanel preview={preview.data} stale={!fresh} /> : null}
          <div className="row">
            <label htmlFor="import-name">Name of this import</label>
            <input
              id="import-name"
              type="text"
              size={30}
              maxLength={120}
              autoComplete="off"
              placeholder="may stay empty"
              value={name}
              onChange={(event) => setName(event.target.value)}
            />
            <button
              type="submit"
              className="button-main"
              aria-disabled={!(fresh && preview.data?.storable) || store.isPending}
              aria-describedby="import-ready"
            >
              Store {preview.data?.storable ? rowsToStore(preview.data.rows.length) : 'the rows'}
            </button>
            <span id="import-ready" className="quiet" role="status">
              {readiness(preview.data?.storable, fresh, preview.error !== null)}
            </span>
          </div>
          <FaultList
            error={store.error}
            what="Nothing was stored; what you entered is kept."
            unsure="Whether the rows were stored is not known; what you entered is kept. Store them again when the server answers: they are stored once."
          />
        </>
      )}
      <p>
        <Link href="/data/imports">What was brought in before</Link>
      </p>
    </form>
  );
}

function rowsToStore(count: number): string {
  return count === 1 ? '1 row' : `${count} rows`;
}

function readiness(storable: boolean | undefined, fresh: boolean, failed: boolean): string {
  if (failed) return '';
  if (!fresh || storable === undefined) return 'Reading the rows …';
  return storable ? '' : 'All rows are stored or none: mend what is refused first.';
}
