import type { Facts } from '@tiegel/contract';

type Conditions = Readonly<Record<string, number>>;

/**
 * Keeps what `make` prepares of facts, of something to be computed and of conditions, for as long as
 * the facts live. Binding costs a hundred times what evaluating does, and whoever asks for one
 * composition after another hands in the same facts. Facts are never changed once they are made.
 */
export function preparedOnce<Asked, Prepared>(
  keyOf: (asked: Asked) => unknown,
  make: (facts: Facts, asked: Asked, conditions: Conditions) => Prepared,
): (facts: Facts, asked: Asked, conditions: Conditions) => Prepared {
  const ofFacts = new WeakMap<Facts, Map<unknown, Map<string, Prepared>>>();
  return (facts, asked, conditions) => {
    const ofAsked = entryOf(ofFacts, facts, () => new Map<unknown, Map<string, Prepared>>());
    const ofConditions = entryOf(ofAsked, keyOf(asked), () => new Map<string, Prepared>());
    return entryOf(ofConditions, JSON.stringify(conditions), () => make(facts, asked, conditions));
  };
}

interface Entries<Key, Value> {
  get(key: Key): Value | undefined;
  set(key: Key, value: Value): unknown;
}

function entryOf<Key, Value>(entries: Entries<Key, Value>, key: Key, make: () => Value): Value {
  const known = entries.get(key);
  if (known !== undefined) return known;
  const made = make();
  entries.set(key, made);
  return made;
}
