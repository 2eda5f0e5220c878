import type { ImportVersion } from '@tiegel/contract';
import { Link } from 'wouter';
import { FaultList } from '../../frame/FaultList.tsx';
import { formatInstant } from '../../numbers/formatInstant.ts';
import { formatCount } from '../../numbers/formatNumber.ts';
import { countsInWords } from './fateWords.ts';
import { kindOf } from './importKinds.ts';
import { useForce } from './useStoreImport.ts';

/** One import in a list: what it is, when, how it changed what stood before, whether it holds, and how to change that. */
export function ImportLine({ version }: { version: ImportVersion }) {
  const { number, kind, at, rows, counts, searches } = version;
  return (
    <li className="import-line">
      <span>
        <Link href={`/data/imports/${number}`}>{importName(version)}</Link>{' '}
        <span className="quiet">
          {kindOf(kind).one}, {formatInstant(at)}
        </span>
      </span>
      <span>
        {rows === 1 ? '1 row' : `${formatCount(rows)} rows`}: {countsInWords(counts)}
        {'. '}
        <span className="quiet">{searchesInWords(searches)}</span>
      </span>
      <ForceButton version={version} />
    </li>
  );
}

/** '12 · Offer of spring' */
export function importName({ number, name }: Pick<ImportVersion, 'number' | 'name'>): string {
  return name === '' ? `Import ${number}` : `${number} · ${name}`;
}

export function searchesInWords(searches: number): string {
  if (searches === 0) return 'No search has used it.';
  return searches === 1 ? '1 search used it.' : `${formatCount(searches)} searches used it.`;
}

/** Whether an import holds: of some kinds a newer one takes the place of one that nobody withdrew. */
function standing({ inForce, withdrawnAt }: ImportVersion): string {
  if (inForce) return '● in force';
  return withdrawnAt === null ? '○ newer ones hold' : '○ withdrawn';
}

/** Whether an import is in force, and the button that changes it. */
export function ForceButton({ version }: { version: ImportVersion }) {
  const force = useForce(version.number);
  const withdrawn = version.withdrawnAt !== null;
  return (
    <span className="row import-force">
      <b>{standing(version)}</b>
      <button
        type="button"
        aria-label={`${withdrawn ? 'Bring back' : 'Withdraw'}: ${importName(version)}`}
        aria-disabled={force.isPending}
        onClick={() => force.mutate(withdrawn)}
      >
        {withdrawn ? 'Bring back' : 'Withdraw'}
      </button>
      <FaultList error={force.error} what="Nothing was changed." />
    </span>
  );
}
