import type { Code, Local } from '../emit.ts';
import type { Form } from '../form.ts';

/** A form while the grid is walked: what it is so far, and how it changes. */
export interface FormLevels {
  /** Begins level `level` with the amount in vector `amount`; the levels before stand. */
  begin(level: number, amount: Local): void;
  /** One part more of the level's element. */
  step(level: number): void;
  /** Begins the line, the last element but one, with the amounts in vector `amount`. */
  beginLine(amount: Local): void;
  /** Puts P at the present point of the line on the stack; `amount` are the parts along the line. */
  push(amount: () => void): void;
  stepLine(): void;
  /** Puts on the stack what P is after a level, with all that is left given to the last element. */
  pushValue(level: number): void;
  /** Puts on the stack, for a form of degree 1, its difference for one part along the line. */
  pushSlope(): void;
}

/**
 * The code that builds P of a form up level by level: with the last element's parts put in as the
 * rest of the whole, P is a polynomial in the free amounts, and one part more of an element adds
 * its difference. A form of degree 1 costs one addition a step, one of degree 2 two on the line.
 *
 * @param address of its numbers: constant, differences by element, second differences by pair i ≤ j
 * @param elements of the system
 * @param stride points from one step of the line to the next
 * @param lazy true: on the line it is not stepped but formed where it is asked for
 */
export function formLevels(
  code: Code,
  { degree }: Form,
  address: number,
  elements: number,
  stride: number,
  lazy: boolean,
): FormLevels {
  const free = elements - 1;
  const line = free - 1;
  const vector = () => code.local('v128');
  const load = (place: number): Local => {
    const local = vector();
    code
      .i32(0)
      .access('v128.load', address + 16 * place)
      .set(local);
    return local;
  };
  const constant = load(0);
  const first = degree < 1 ? [] : Array.from({ length: free }, (_, i) => load(1 + i));
  const second: Local[][] = [];
  let place = 1 + free;
  for (let i = 0; i < free && degree === 2; i += 1) {
    second.push([]);
    for (let j = 0; j < free; j += 1) second[i]!.push(j < i ? second[j]![i]! : load(place++));
  }
  /** P, its difference, and the differences of the elements behind, by level. */
  const values = Array.from({ length: line }, vector);
  const differences = degree < 2 ? [] : Array.from({ length: line }, vector);
  const ahead = degree < 2 ? [] : Array.from({ length: line }, () => Array.from({ length: free }, vector));
  const valueBefore = (level: number): Local => (level === 0 ? constant : values[level - 1]!);
  const aheadBefore = (level: number, of: number): Local =>
    level === 0 ? first[of]! : ahead[level - 1]![of]!;
  const current = vector();
  const change = vector();
  const constantChange = vector();
  if (!lazy && degree === 1) {
    code.get(first[line]!);
    if (stride !== 1) code.splat(stride).op('f64x2.mul');
    code.set(constantChange);
  }
  if (!lazy && degree === 2) {
    code
      .get(second[line]![line]!)
      .splat(2 * stride * stride)
      .op('f64x2.mul')
      .set(constantChange);
  }

  /** amount · (difference + second · amount) + value */
  function pushAt(level: number, amount: () => void): void {
    code.get(valueBefore(level));
    if (degree === 0) return;
    amount();
    code.get(degree === 1 ? first[level]! : aheadBefore(level, level));
    if (degree === 2) {
      code.get(second[level]![level]!);
      amount();
      code.op('f64x2.mul', 'f64x2.add');
    }
    code.op('f64x2.mul', 'f64x2.add');
  }

  return {
    begin(level, amount) {
      pushAt(level, () => code.get(amount));
      code.set(values[level]!);
      if (degree < 2) return;
      code.get(aheadBefore(level, level)).get(second[level]![level]!).get(amount).get(amount);
      code.op('f64x2.add').splat(1).op('f64x2.add', 'f64x2.mul', 'f64x2.add').set(differences[level]!);
      for (let of = level + 1; of < free; of += 1) {
        code.get(aheadBefore(level, of)).get(second[level]![of]!).get(amount);
        code.op('f64x2.mul', 'f64x2.add').set(ahead[level]![of]!);
      }
    },
    step(level) {
      if (degree === 0) return;
      const difference = degree === 1 ? first[level]! : differences[level]!;
      code.get(values[level]!).get(difference).op('f64x2.add').set(values[level]!);
      if (degree < 2) return;
      const twice = second[level]![level]!;
      code.get(difference).get(twice).op('f64x2.add').get(twice).op('f64x2.add').set(difference);
      for (let of = level + 1; of < free; of += 1) {
        const one = ahead[level]![of]!;
        code.get(one).get(second[level]![of]!).op('f64x2.add').set(one);
      }
    },
    beginLine(amount) {
      if (lazy) return;
      pushAt(line, () => code.get(amount));
      code.set(current);
      if (degree < 2) return;
      // stride · (difference + second · (2 amount + stride))
      code.get(aheadBefore(line, line)).get(second[line]![line]!);
      code.get(amount).get(amount).op('f64x2.add').splat(stride).op('f64x2.add');
      code.op('f64x2.mul', 'f64x2.add');
      if (stride !== 1) code.splat(stride).op('f64x2.mul');
      code.set(change);
    },
    push(amount) {
      if (lazy) pushAt(line, amount);
      else code.get(current);
    },
    stepLine() {
      if (lazy || degree === 0) return;
      code
        .get(current)
        .get(degree === 1 ? constantChange : change)
        .op('f64x2.add')
        .set(current);
      if (degree === 2) code.get(change).get(constantChange).op('f64x2.add').set(change);
    },
    pushValue: (level) => code.get(values[level]!),
    pushSlope: () => code.get(first[line]!),
  };
}
