import type { Outcome, SearchSpecification, Tally } from '@tiegel/contract';
import { prepare, scoreReference } from '@tiegel/engine';
import type { Path } from './paths.ts';
import { planOf, type SearchCase } from './searchCase.ts';

/** The whole search by the reference, as one chunk, or the part that the case is about: what every path must find. */
export function truthOf(of: SearchCase): Outcome {
  const prepared = prepare(planOf(of));
  const { system, from, until } = of.part ?? { system: null, from: 0, until: null };
  const [firstSystem, endSystem] = system === null ? [0, prepared.systems.count] : [system, system + 1];
  const chunk = { ordinal: 0, firstSystem, endSystem, firstPoint: from, endPoint: until, points: 0 };
  return scoreReference(prepared, chunk, { cutOff: null })!;
}

/** What of it a search with a tally says. */
function saidOf(truth: Outcome, tally: Tally): Outcome {
  if (tally === 'each') return truth;
  return { ...truth, passed: tally === 'all' ? truth.passed : null, passedEach: null, outside: null };
}

/** Where a path finds something else than the truth, to the last digit, in words; null where it does not. */
export async function differenceOf(
  of: SearchCase,
  truth: Outcome,
  path: Path,
  tally: Tally,
): Promise<string | null> {
  const specification: SearchSpecification = { ...of.specification, tally };
  const found = await path.run(planOf({ ...of, specification }), of);
  const expected = saidOf(truth, tally);
  const wrong = (Object.keys(expected) as (keyof Outcome)[]).filter(
    (key) => written(found[key]) !== written(expected[key]),
  );
  if (wrong.length === 0) return null;
  const parts = wrong.map((key) => `${key} ${firstDifference(found[key], expected[key])}`);
  return `${of.specification.name} (tally ${tally}), ${path.name}: ${parts.join('; ')}`;
}

/** Exact: also NaN, and which zero it is. */
function written(value: Outcome[keyof Outcome]): string {
  return JSON.stringify(value, (_, part) =>
    part instanceof Float64Array ? [...part].map((one) => (Object.is(one, -0) ? '-0' : String(one))) : part,
  );
}

function firstDifference(found: Outcome[keyof Outcome], expected: Outcome[keyof Outcome]): string {
  if (!(found instanceof Float64Array) || !(expected instanceof Float64Array)) {
    return `${written(found).slice(0, 300)} instead of ${written(expected).slice(0, 300)}`;
  }
  const at = expected.findIndex((one, place) => !Object.is(one, found[place]));
  const from = at - (at % 3);
  return `at ${from / 3} of ${expected.length / 3} (${found.length / 3}): ${found.slice(from, from + 3)} instead of ${expected.slice(from, from + 3)}`;
}
