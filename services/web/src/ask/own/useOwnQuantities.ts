import type { QuantityView } from '@tiegel/contract';
import { useEffect, useMemo, useState } from 'react';
import type { LetRow } from '../draft/draft.ts';
import { useSettled } from '../useSettled.ts';
import type { ReadExpression } from './readExpressions.ts';
import type { valueOfOwn } from './valueOfOwn.ts';

interface Reader {
  read: (rows: readonly LetRow[]) => ReadExpression[];
  valueOf: typeof valueOfOwn;
}

export interface OwnQuantities {
  /** every expression that has a name, also one that cannot be read yet: what lists offer */
  views: QuantityView[];
  /** for each row of the form; undefined until it is read */
  read: readonly (ReadExpression | undefined)[];
  /** the names that mean something */
  meant: ReadonlySet<string>;
  /** null until what reads formulas is loaded */
  reader: Reader | null;
}

/** The expressions of the form as quantities. What reads them is loaded with the first one. */
export function useOwnQuantities(rows: readonly LetRow[]): OwnQuantities {
  const [reader, setReader] = useState<Reader | null>(null);
  const any = rows.length > 0;
  useEffect(() => {
    if (!any) return;
    let current = true;
    void Promise.all([import('./readExpressions.ts'), import('./valueOfOwn.ts')]).then(
      ([{ readExpressions }, { valueOfOwn }]) => {
        if (current) setReader({ read: readExpressions, valueOf: valueOfOwn });
      },
      // Without it the server alone says what is wrong; the next visit loads it again.
      () => {},
    );
    return () => {
      current = false;
    };
  }, [any]);
  // Half-typed formulas are not called wrong at every key.
  const settled = useSettled(rows);
  const read = useMemo(() => reader?.read(settled) ?? [], [reader, settled]);
  return useMemo(() => {
    const byKey = new Map(settled.map(({ key }, index) => [key, read[index]]));
    const views = rows.filter(({ name }) => name.trim() !== '');
    return {
      views: views.map(({ key, name }) => byKey.get(key)?.view ?? unreadView(name.trim())),
      read: rows.map(({ key }) => byKey.get(key)),
      meant: new Set(read.flatMap((one) => (one.view ? [one.view.id] : []))),
      reader,
    };
  }, [rows, settled, read, reader]);
}

/** An expression that cannot be read (yet): a name alone. */
function unreadView(name: string): QuantityView {
  return {
    ...{
      id: name,
      name,
      symbol: '',
      unit: '',
      notation: '',
      meaning: '',
      range: {},
      decimals: 3,
      caution: null,
    },
    source: { authors: 'One’s own', year: null, where: 'the specification', checked: 'ours, no source' },
    needs: { elements: [], pairs: [], conditions: [] },
  };
}
