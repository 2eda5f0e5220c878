import { parseUnit } from './parseUnit.ts';
import { multiplyUnits, PLAIN_NUMBER, raiseUnit, sameUnit, type Unit } from './unit.ts';

/** A unit and how people write it; '' is a plain number. */
export interface WrittenUnit {
  unit: Unit;
  text: string;
}

/**
 * The unit of a part of a typed formula; 'any' where a typed number multiplies, divides or stands
 * alone, for such a number may carry any unit: 8 in density/8 is meant as 8 g/cm3.
 */
export type PartUnit = WrittenUnit | 'any';

export const plain: WrittenUnit = { unit: PLAIN_NUMBER, text: '' };

/** A unit as it is printed; one that nobody knows is a unit of its own, comparable with itself alone. */
export function writtenUnit(text: string): WrittenUnit {
  try {
    return { unit: parseUnit(text), text };
  } catch {
    return { unit: { scale: 1, exponents: { [text]: 1 } }, text };
  }
}

export function productUnit(left: PartUnit, right: PartUnit): PartUnit {
  if (left === 'any' || right === 'any') return 'any';
  const text = left.text === '' || right.text === '' ? left.text + right.text : `${left.text} ${right.text}`;
  return named(multiplyUnits(left.unit, right.unit), text);
}

export function quotientUnit(left: PartUnit, right: PartUnit): PartUnit {
  if (left === 'any' || right === 'any') return 'any';
  const text = right.text === '' ? left.text : `${left.text || '1'}/${bracketed(right.text)}`;
  return named(multiplyUnits(left.unit, raiseUnit(right.unit, -1)), text);
}

export function raisedUnit(of: PartUnit, exponent: number): PartUnit {
  if (of === 'any') return 'any';
  const text = of.text === '' || exponent === 1 ? of.text : `${bracketed(of.text)}^${exponent}`;
  return named(raiseUnit(of.unit, exponent), text);
}

/** The unit that two parts share which are added or compared; null where their units differ. */
export function commonUnit(left: PartUnit, right: PartUnit): PartUnit | null {
  if (left === 'any') return right;
  if (right === 'any') return left;
  return sameUnit(left.unit, right.unit) ? left : null;
}

export function isPlain(of: PartUnit): boolean {
  return of === 'any' || sameUnit(of.unit, PLAIN_NUMBER);
}

/** For messages: 'g/cm3', 'a plain number'. */
export function unitInWords(of: PartUnit): string {
  return of === 'any' || of.text === '' ? 'a plain number' : of.text;
}

/** Without a text where everything cancels. */
function named(unit: Unit, text: string): WrittenUnit {
  return sameUnit(unit, PLAIN_NUMBER) ? plain : { unit, text };
}

const bracketed = (text: string) => (/[\s/^]/.test(text) ? `(${text})` : text);
