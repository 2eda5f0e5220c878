/** The types of WebAssembly values that the kernel uses. */
type ValueType = 'i32' | 'i64' | 'f64' | 'v128';

const valueTypes: Record<ValueType, number> = { i32: 0x7f, i64: 0x7e, f64: 0x7c, v128: 0x7b };
const NO_RESULT = 0x40;

/** Instructions without an immediate, by their names in the text format. */
const plain = {
  'i32.eqz': [0x45],
  'i32.eq': [0x46],
  'i32.lt_s': [0x48],
  'i32.gt_s': [0x4a],
  'i32.le_s': [0x4c],
  'i32.ge_s': [0x4e],
  'i32.add': [0x6a],
  'i32.sub': [0x6b],
  'i32.mul': [0x6c],
  'i32.and': [0x71],
  'i32.or': [0x72],
  'i32.shl': [0x74],
  'f64.convert_i32_s': [0xb7],
  select: [0x1b],
  drop: [0x1a],
  return: [0x0f],
  'f64x2.splat': [0xfd, 0x14],
  'f64x2.lt': [0xfd, 0x49],
  'f64x2.gt': [0xfd, 0x4a],
  'f64x2.le': [0xfd, 0x4b],
  'f64x2.ge': [0xfd, 0x4c],
  'v128.not': [0xfd, 0x4d],
  'v128.and': [0xfd, 0x4e],
  'v128.andnot': [0xfd, 0x4f],
  'v128.or': [0xfd, 0x50],
  'v128.bitselect': [0xfd, 0x52],
  'v128.any_true': [0xfd, 0x53],
  'f64x2.nearest': [0xfd, 0x94, 0x01],
  'i32x4.extract_lane 0': [0xfd, 0x1b, 0x00],
  'i32x4.trunc_sat_f64x2_s_zero': [0xfd, 0xfc, 0x01],
  'i8x16.narrow_i16x8_s': [0xfd, 0x65],
  'i16x8.narrow_i32x4_s': [0xfd, 0x85, 0x01],
  'i16x8.add': [0xfd, 0x8e, 0x01],
  'i16x8.sub': [0xfd, 0x91, 0x01],
  'i64x2.bitmask': [0xfd, 0xc4, 0x01],
  'i64x2.shl': [0xfd, 0xcb, 0x01],
  'i64x2.shr_u': [0xfd, 0xcd, 0x01],
  'i64x2.add': [0xfd, 0xce, 0x01],
  'i64x2.sub': [0xfd, 0xd1, 0x01],
  'f64x2.abs': [0xfd, 0xec, 0x01],
  'f64x2.neg': [0xfd, 0xed, 0x01],
  'f64x2.sqrt': [0xfd, 0xef, 0x01],
  'f64x2.add': [0xfd, 0xf0, 0x01],
  'f64x2.sub': [0xfd, 0xf1, 0x01],
  'f64x2.mul': [0xfd, 0xf2, 0x01],
  'f64x2.div': [0xfd, 0xf3, 0x01],
  'f64x2.min': [0xfd, 0xf4, 0x01],
  'f64x2.max': [0xfd, 0xf5, 0x01],
  'f64x2.pmin': [0xfd, 0xf6, 0x01],
  'f64x2.pmax': [0xfd, 0xf7, 0x01],
} as const satisfies Record<string, readonly number[]>;

/** Loads and stores, with the exponent of their natural alignment. */
const accesses = {
  'i32.load': { bytes: [0x28], align: 2 },
  'i32.store': { bytes: [0x36], align: 2 },
  'v128.load': { bytes: [0xfd, 0x00], align: 3 },
  'v128.load64_splat': { bytes: [0xfd, 0x0a], align: 3 },
  'v128.store': { bytes: [0xfd, 0x0b], align: 3 },
} as const;

export type PlainInstruction = keyof typeof plain;
type Access = keyof typeof accesses;
/** A local variable of a function. */
export type Local = number & { readonly local: unique symbol };

/** The body of a function without parameters and results, written instruction by instruction. */
export interface Code {
  local(type: ValueType): Local;
  op(...names: PlainInstruction[]): Code;
  get(local: Local): Code;
  set(local: Local): Code;
  /** Sets and keeps on the stack. */
  tee(local: Local): Code;
  i32(value: number): Code;
  /**
   * Both lanes the same number. Loaded once, at the start of the function, from where finish() says:
   * compiled code forms a constant of 128 bits anew by three instructions wherever it stands.
   */
  splat(value: number): Code;
  /** Both lanes the same 64 bits. */
  bits(value: bigint): Code;
  lanes(first: bigint, second: bigint): Code;
  access(name: Access, address: number): Code;
  block(kind: 'block' | 'loop' | 'if'): Code;
  /** An `if` that is seldom entered: its registers are given to what runs always. */
  seldom(): Code;
  otherwise(): Code;
  end(): Code;
  /** To the end of the block, or the start of the loop, that is so many levels out. */
  branch(levels: number, when?: 'if'): Code;
  /**
   * The function as an entry of the code section, where its seldom entered blocks stand in it, and
   * the vectors of the numbers that it expects at its address of numbers, in order.
   */
  finish(): { entry: number[]; seldom: number[]; numbers: number[] };
}

const words = new DataView(new ArrayBuffer(16));

/** Numbers that a function may have. */
export const mostNumbers = 512;

/**
 * A function body that is being written.
 * @param numbersAt address of the vectors of its numbers
 */
export function functionCode(numbersAt: number): Code {
  const bytes: number[] = [];
  const seldom: number[] = [];
  const numbers = new Map<number, Local>();
  const types: ValueType[] = [];
  const push = (values: readonly number[]): Code => {
    for (const value of values) bytes.push(value);
    return code;
  };
  const vector = (write: () => void): Code => {
    write();
    push([0xfd, 0x0c]);
    for (let at = 0; at < 16; at += 1) bytes.push(words.getUint8(at));
    return code;
  };
  const code: Code = {
    local(type) {
      types.push(type);
      return (types.length - 1) as Local;
    },
    op(...names) {
      for (const name of names) push(plain[name]);
      return code;
    },
    get: (local) => push([0x20, ...unsigned(local)]),
    set: (local) => push([0x21, ...unsigned(local)]),
    tee: (local) => push([0x22, ...unsigned(local)]),
    i32: (value) => push([0x41, ...signed(value)]),
    splat(value) {
      if (Object.is(value, 0)) return code.bits(0n);
      let local = numbers.get(value);
      if (local === undefined) {
        if (numbers.size === mostNumbers) throw new RangeError('A kernel has too many numbers.');
        local = code.local('v128');
        numbers.set(value, local);
      }
      return code.get(local);
    },
    bits: (value) => code.lanes(value, value),
    lanes: (first, second) =>
      vector(() => {
        words.setBigUint64(0, first, true);
        words.setBigUint64(8, second, true);
      }),
    access(name, address) {
      const { bytes: opcode, align } = accesses[name];
      return push([...opcode, align, ...unsigned(address)]);
    },
    block: (kind) => push([{ block: 0x02, loop: 0x03, if: 0x04 }[kind], NO_RESULT]),
    seldom() {
      seldom.push(bytes.length);
      return code.block('if');
    },
    otherwise: () => push([0x05]),
    end: () => push([0x0b]),
    branch: (levels, when) => push([when === 'if' ? 0x0d : 0x0c, ...unsigned(levels)]),
    finish() {
      const runs = runsOf(types).flatMap(([count, type]) => [...unsigned(count), valueTypes[type]]);
      const loads = [...numbers.values()].flatMap((local, at) => [
        ...[0x41, 0, ...accesses['v128.load'].bytes, accesses['v128.load'].align],
        ...[...unsigned(numbersAt + 16 * at), 0x21, ...unsigned(local)],
      ]);
      const head = [...unsigned(runsOf(types).length), ...runs, ...loads];
      return {
        entry: [...unsigned(head.length + bytes.length + 1), ...head, ...bytes, 0x0b],
        seldom: seldom.map((at) => at + head.length),
        numbers: [...numbers.keys()],
      };
    },
  };
  return code;
}

/**
 * A module with one function without parameters and results, exported as `sweep`, on a memory that
 * it imports (host.memory).
 *
 * @source WebAssembly Specification 2.0, binary format (section 5)
 */
export function moduleOf(code: Code): { bytes: Uint8Array<ArrayBuffer>; numbers: number[] } {
  const name = (text: string) => [text.length, ...Array.from(text, (letter) => letter.charCodeAt(0))];
  const section = (id: number, content: number[]) => [id, ...unsigned(content.length), ...content];
  const { entry, seldom, numbers } = code.finish();
  const hints = seldom.flatMap((at) => [...unsigned(at), 1, 0]);
  const bytes = Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(1, [1, 0x60, 0, 0]),
    ...section(2, [1, ...name('host'), ...name('memory'), 2, 0, 1]),
    ...section(3, [1, 0]),
    ...section(7, [1, ...name('sweep'), 0, 0]),
    ...section(0, [...name('metadata.code.branch_hint'), 1, 0, ...unsigned(seldom.length), ...hints]),
    ...section(10, [1, ...entry]),
  ]);
  return { bytes, numbers };
}

/** Neighbours of one type as one declaration. */
function runsOf(types: readonly ValueType[]): [number, ValueType][] {
  const runs: [number, ValueType][] = [];
  for (const type of types) {
    const last = runs.at(-1);
    if (last?.[1] === type) last[0] += 1;
    else runs.push([1, type]);
  }
  return runs;
}

/** LEB128 */
function unsigned(value: number): number[] {
  const bytes: number[] = [];
  let rest = value;
  while (rest >= 128) {
    bytes.push((rest & 127) | 128);
    rest >>>= 7;
  }
  bytes.push(rest);
  return bytes;
}

function signed(value: number): number[] {
  const bytes: number[] = [];
  let rest = value;
  for (;;) {
    const low = rest & 127;
    rest >>= 7;
    if ((rest === 0 && (low & 64) === 0) || (rest === -1 && (low & 64) !== 0)) return [...bytes, low];
    bytes.push(low | 128);
  }
}
