import { multiplyUnits, PLAIN_NUMBER, raiseUnit, type Unit } from './unit.ts';

const joule = { kg: 1, m: 2, s: -2 };
const pascal = { kg: 1, m: -1, s: -2 };

/**
 * The units that columns, constants, conditions and quantities are written in. Per cent is the
 * number 0.01, so that 100 % is 1 and 100 · ratio is a percentage only if the 100 says so.
 * @source eV, u: CODATA 2018 (eV exact)
 */
const known: Readonly<Record<string, Unit>> = {
  '1': PLAIN_NUMBER,
  '%': { scale: 0.01, exponents: {} },
  'at.%': { scale: 0.01, exponents: {} },
  kg: { scale: 1, exponents: { kg: 1 } },
  g: { scale: 1e-3, exponents: { kg: 1 } },
  u: { scale: 1.6605390666e-27, exponents: { kg: 1 } },
  m: { scale: 1, exponents: { m: 1 } },
  cm: { scale: 1e-2, exponents: { m: 1 } },
  µm: { scale: 1e-6, exponents: { m: 1 } },
  pm: { scale: 1e-12, exponents: { m: 1 } },
  L: { scale: 1e-3, exponents: { m: 3 } },
  s: { scale: 1, exponents: { s: 1 } },
  K: { scale: 1, exponents: { K: 1 } },
  mol: { scale: 1, exponents: { mol: 1 } },
  J: { scale: 1, exponents: joule },
  kJ: { scale: 1e3, exponents: joule },
  eV: { scale: 1.602176634e-19, exponents: joule },
  Pa: { scale: 1, exponents: pascal },
  MPa: { scale: 1e6, exponents: pascal },
  GPa: { scale: 1e9, exponents: pascal },
  V: { scale: 1, exponents: { kg: 1, m: 2, s: -3, A: -1 } },
  /** the cube root of Miedema's density unit, which has no place in the SI */
  'du⅓': { scale: 1, exponents: { 'du⅓': 1 } },
  currency: { scale: 1, exponents: { currency: 1 } },
};

/**
 * Reads a unit as it is printed: 'J/(mol K)', 'g/cm3', '1/s', '' for a plain number. Factors are
 * separated by spaces, a slash divides by the one factor or bracket behind it, digits behind a
 * symbol are its power.
 * @throws Error naming what cannot be read
 */
export function parseUnit(text: string): Unit {
  const pieces = text.match(/[/()]|[^\s/()]+/g) ?? [];
  let place = 0;

  function product(): Unit {
    let unit = PLAIN_NUMBER;
    let power = 1;
    for (; place < pieces.length && pieces[place] !== ')'; place++) {
      const piece = pieces[place]!;
      if (piece === '/') {
        power = -1;
        continue;
      }
      unit = multiplyUnits(unit, raiseUnit(piece === '(' ? bracket() : factor(piece), power));
      power = 1;
    }
    return unit;
  }

  function bracket(): Unit {
    place++;
    const unit = product();
    if (pieces[place] !== ')') throw new Error(`The unit "${text}" lacks a closing bracket.`);
    return unit;
  }

  function factor(piece: string): Unit {
    const [, symbol = '', power = '1'] = /^(.+?)([2-9])?$/.exec(piece) ?? [];
    const unit = known[symbol];
    if (!unit) throw new Error(`The unit "${text}" holds "${piece}", which is not known.`);
    return raiseUnit(unit, Number(power));
  }

  const unit = product();
  if (place < pieces.length) throw new Error(`The unit "${text}" has a bracket too many.`);
  return unit;
}
