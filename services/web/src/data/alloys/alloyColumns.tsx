import type { KnownAlloyView } from '@tiegel/contract';
import { formatComposition, spacedComposition } from '@tiegel/elements';
import { Link } from 'wouter';
import { ShareBar } from '../../composition/ShareBar.tsx';
import { Prose } from '../../words/Prose.tsx';
import type { TableColumn } from '../table/tableColumn.ts';

const words = { symbol: '', unit: '', meaning: '', holds: 'words' } as const;

/** The columns of the table of alloys; a row is headed by its composition, which leads to the page of the alloy. */
export const alloyColumns: readonly TableColumn<KnownAlloyView>[] = [
  {
    ...{ ...words, id: 'composition', name: 'Composition', unit: 'at.%', width: 27 },
    value: ({ composition }) => formatComposition(composition),
    cell: ({ composition }) => (
      <span className="data-composition">
        <ShareBar composition={composition} />
        <span>{spacedComposition(composition, 1)}</span>
      </span>
    ),
  },
  {
    ...{ ...words, id: 'own', name: 'Yours', width: 6 },
    value: ({ own }) => (own ? 'yes' : null),
    cell: ({ own, import: number }) =>
      own ? <Link href={number === null ? '/data/imports' : `/data/imports/${number}`}>● yours</Link> : '',
  },
  {
    ...{ ...words, id: 'name', name: 'Name', width: 13 },
    value: ({ name }) => name || null,
    cell: ({ name }) => (name ? <Prose text={name} /> : null),
  },
  {
    ...{ ...words, id: 'phases', name: 'Phases', width: 9 },
    value: ({ phases }) => phases ?? 'none reported',
    cell: ({ phases }) => <Prose text={phases ?? 'none reported'} />,
  },
  { ...words, id: 'process', name: 'Made by', width: 8, value: ({ process }) => process },
  {
    ...{ ...words, id: 'source', name: 'Source', width: 22 },
    value: (alloy) => [alloy.source ?? '', ...alloy.doi].filter(Boolean).join(' ') || null,
    cell: (alloy) => <Source alloy={alloy} />,
  },
];

/** DOIs that stand in a row; the rest is counted. */
const most = 2;

function Source({ alloy }: { alloy: KnownAlloyView }) {
  const { doi: dois } = alloy;
  return (
    <span className="data-clamped">
      {dois.slice(0, most).map((doi) => (
        <span key={doi}>
          <a href={`https://doi.org/${doi}`} rel="noreferrer">
            {doi}
          </a>{' '}
        </span>
      ))}
      {dois.length > most ? `and ${dois.length - most} more` : ''}
      {dois.length === 0 ? alloy.source : ''}
    </span>
  );
}
