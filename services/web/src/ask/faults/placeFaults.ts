import type { Fault } from '@tiegel/contract';
import { nameInSentence } from '@tiegel/contract/terms';
import { conditionNames } from '@tiegel/screening';
import { asSentence } from '../../words/asSentence.ts';
import { type Draft, marked } from '../draft/draft.ts';
import type { Written } from '../draft/specificationOf.ts';
import { remedyHere } from './remedyHere.ts';

/** What is wrong, by the field of the form that it stands at; '' is the form as a whole. */
export type PlacedFaults = ReadonlyMap<string, readonly string[]>;

/**
 * Brings each fault to the field that its pointer names, or to the nearest one above it.
 * A number that could not be read goes before what the server says of its absence.
 * `quantities` names what the server calls by its id.
 */
export function placeFaults(
  draft: Draft,
  written: Written,
  faults: readonly Fault[],
  quantities: readonly { id: string; name: string }[] = [],
): PlacedFaults {
  const fields = new Set(fieldsOf(draft));
  const placed = new Map<string, string[]>();
  const add = (pointer: string, text: string) => {
    const place = nearestField(inForm(pointer, written), fields);
    placed.set(place, [...(placed.get(place) ?? []), text]);
  };
  for (const [pointer, text] of Object.entries(written.unclear)) add(pointer, text);
  for (const one of faults) {
    const { pointer } = one;
    const unread = Object.keys(written.unclear).some(
      (one) => one === pointer || one.startsWith(`${pointer}/`),
    );
    if (!unread) add(pointer, wordsOf(one, draft, quantities));
  }
  return placed;
}

/** A fault as the form says it: quantities by their names, and what a field is for rather than its key. */
function wordsOf(fault: Fault, { lets }: Draft, quantities: readonly { id: string; name: string }[]): string {
  const { code, detail } = fault;
  if (code === 'specification/anchor-missing') return 'Write this value, which combining needs.';
  const own = lets.find(({ name }) => name !== '' && detail.includes(`"${name}"`));
  if (code === 'quantity/unknown' && own) {
    return `“${own.name}” has no value yet: mend its formula, under the expressions of one’s own.`;
  }
  const named = quantities.reduce(
    (text, { id, name }) => text.replace(new RegExp(`\\b${id}\\b`, 'g'), nameInSentence(id, name)),
    `${withFieldNamed(fault)} ${remedyHere(fault)}`,
  );
  return asSentence(
    named,
    lets.map(({ name }) => name),
  );
}

/** Fields that people know by what they are for, by their keys in a specification. */
const fieldNames: Readonly<Record<string, string>> = {
  'components.min': 'the smallest number of elements',
  'components.max': 'the largest number of elements',
  'fractions.min': 'the smallest share',
  'fractions.max': 'the largest share',
  'fractions.step': 'the step of the shares',
  keep: 'the number of candidates to keep',
  keepPerSystem: 'the number to keep of each system',
};

/** What is wrong, where the contract begins with the key of a field, with the name of that field. */
function withFieldNamed({ pointer, detail }: Fault): string {
  const key = pointer.slice(1).replaceAll('/', '.');
  const name = fieldNames[key];
  return name !== undefined && detail.startsWith(`${key} `) ? name + detail.slice(key.length) : detail;
}

/** Every field of the form, by the JSON pointer of what it writes. */
function fieldsOf(draft: Draft): string[] {
  const bounds = (pointer: string) => [`${pointer}/min`, `${pointer}/max`, pointer];
  const rank = draft.rank.flatMap((row, index) => {
    const own = row.prefer === 'target' ? ['prefer/target', 'within'] : ['from', 'to'];
    const shown =
      draft.rank.length > 1 ? [...own, 'weight', 'shape'] : own.filter((key) => key === 'prefer/target');
    return ['', '/quantity', ...shown.map((key) => `/${key}`)].map((key) => `/rank/${index}${key}`);
  });
  return [
    '/name',
    '/elements',
    ...bounds('/components'),
    '/fractions',
    ...(draft.amounts === 'grid' ? ['/fractions/step', ...bounds('/fractions')] : []),
    ...(draft.amounts === 'grid'
      ? marked(draft, 'pool', 'require').flatMap((symbol) => bounds(`/fractions/each/${symbol}`))
      : []),
    '/limits',
    ...draft.limits.flatMap((_, index) => [...bounds(`/limits/${index}`), `/limits/${index}/quantity`]),
    '/rank',
    ...rank,
    '/lets',
    ...draft.lets.flatMap((_, index) => [`/lets/${index}/name`, `/lets/${index}`]),
    '/keptOnly',
    ...draft.keptOnly.flatMap((_, index) => [...bounds(`/keptOnly/${index}`), `/keptOnly/${index}/quantity`]),
    ...conditionNames.map((name) => `/conditions/${name}`),
    '/conditions',
    '/tally',
    '/front',
    ...draft.front.flatMap((_, index) => [`/front/${index}`, `/front/${index}/quantity`]),
    '/keep',
    '/keepPerSystem',
  ];
}

/** Limits without bounds are not sent: the n-th limit sent may be a later row of the form. Expressions are sent by name. */
function inForm(pointer: string, { limitRows, keptOnlyRows, letRows }: Written): string {
  const [, section, entry = '', ...rest] = pointer.split('/');
  const row =
    section === 'limits'
      ? limitRows[Number(entry)]
      : section === 'keptOnly'
        ? keptOnlyRows[Number(entry)]
        : section === 'lets'
          ? letRows.get(entry.replaceAll('~1', '/').replaceAll('~0', '~'))
          : undefined;
  return row === undefined ? pointer : ['', section, row, ...rest].join('/');
}

function nearestField(pointer: string, fields: ReadonlySet<string>): string {
  let place = pointer;
  while (place !== '' && !fields.has(place)) place = place.slice(0, place.lastIndexOf('/'));
  return place;
}
