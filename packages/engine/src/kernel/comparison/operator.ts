/** How a value stands to a number. */
export type Operator = '<' | '<=' | '>' | '>=';

/** What holds of −value and −number. */
export const mirrored: Record<Operator, Operator> = { '<': '>', '<=': '>=', '>': '<', '>=': '<=' };

/** What holds where an operator does not, of numbers that are not NaN. */
export const opposite: Record<Operator, Operator> = { '<': '>=', '<=': '>', '>': '<=', '>=': '<' };

export const isUpper = (operator: Operator): boolean => operator === '<' || operator === '<=';
