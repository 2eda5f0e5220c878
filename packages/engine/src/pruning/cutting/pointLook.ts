import { pointValues } from '../../blocks/pointValues.ts';
import type { PointList } from '../../grid/pointList.ts';
import type { KeptPoints } from '../../outcome/keptPoints.ts';
import type { Prepared } from '../../prepared/prepare.ts';
import { keyOf } from '../../prepared/ranking.ts';

/** Points gathered before they are looked at. */
const capacity = 128;

/** Looks at single points of one system after another: the canonical values decide. */
export interface PointLook {
  /** Turns to a system, which was entered in `kept`; its points are numbered by `numberOf`. */
  enter(system: readonly number[], total: number, numberOf: (parts: ArrayLike<number>) => number): void;
  /** Takes a point, in the order of the system's elements. */
  take(parts: Int32Array): void;
  /** Looks at what was taken and offers what passes; how many passed since the last time. */
  finish(): number;
}

/** Prepares to look at points of a plan's grid, which are offered to `kept`. */
export function pointLook({
  program,
  limits,
  scoreOutput,
  ranking,
  grid,
}: Prepared): (kept: KeptPoints) => PointLook {
  const valuesOf = pointValues(program);
  const most = grid.components.max;
  const list: PointList = {
    count: 0,
    starts: new Int32Array(capacity + 1),
    members: new Int32Array(capacity * most),
    parts: new Int32Array(capacity * most),
    wholes: new Int32Array(capacity),
  };
  let elements = 1;
  let numberOf: (parts: ArrayLike<number>) => number = () => 0;

  return (kept) => {
    let passed = 0;
    // A chunk that was stopped leaves points that nobody looked at.
    list.count = 0;

    function passes(values: readonly Float64Array[], at: number): boolean {
      for (const { output, least, greatest } of limits) {
        const value = values[output]![at]!;
        if (!(value >= least && value <= greatest)) return false;
      }
      return true;
    }

    function flush(): void {
      const values = valuesOf(list);
      const scores = values[scoreOutput]!;
      let worst = kept.worstKey();
      for (let at = 0; at < list.count; at += 1) {
        if (!passes(values, at)) continue;
        passed += 1;
        const score = Number.isFinite(scores[at]) ? scores[at]! : Number.NaN;
        if (keyOf(score, ranking.prefer) > worst) continue;
        kept.offer(score, numberOf(list.parts.subarray(at * elements, (at + 1) * elements)));
        worst = kept.worstKey();
      }
      list.count = 0;
    }

    return {
      enter(system, total, numbering) {
        elements = system.length;
        numberOf = numbering;
        for (let at = 0; at <= capacity; at += 1) list.starts[at] = at * elements;
        for (let at = 0; at < capacity; at += 1) list.members.set(system, at * elements);
        list.wholes.fill(total);
      },
      take(parts) {
        const start = list.count * elements;
        for (let at = 0; at < elements; at += 1) list.parts[start + at] = parts[at]!;
        list.count += 1;
        if (list.count === capacity) flush();
      },
      finish() {
        if (list.count > 0) flush();
        const counted = passed;
        passed = 0;
        return counted;
      },
    };
  };
}
