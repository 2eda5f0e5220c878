/** What a search assumes beside composition. Formulas name it by `condition(name)`. */
export interface Condition {
  name: ConditionName;
  /** The field's term, sentence case. */
  label: string;
  unit: string;
  /** Used where nothing else is said; null is none. */
  default: number | null;
  /** What may be asked for, inclusive. */
  range: { min: number; max: number };
}

export const conditionNames = ['annealTemperature', 'serviceTemperature', 'strainRate', 'grainSize'] as const;
export type ConditionName = (typeof conditionNames)[number];

/**
 * The conditions, their units, defaults and allowed ranges. A grain size of none stands for a
 * crystal without boundaries: it is bound as +Infinity, so that a term k/√d is 0 there.
 */
export const conditions: Readonly<Record<ConditionName, Condition>> = {
  annealTemperature: {
    name: 'annealTemperature',
    label: 'Anneal temperature',
    unit: 'K',
    default: 1273.15,
    range: { min: 4, max: 3500 },
  },
  serviceTemperature: {
    name: 'serviceTemperature',
    label: 'Service temperature',
    unit: 'K',
    default: 293.15,
    range: { min: 4, max: 3500 },
  },
  strainRate: {
    name: 'strainRate',
    label: 'Strain rate',
    unit: '1/s',
    default: 1e-3,
    range: { min: 1e-8, max: 1e4 },
  },
  grainSize: {
    name: 'grainSize',
    label: 'Grain size',
    unit: 'µm',
    default: null,
    range: { min: 0.1, max: 10_000 },
  },
};

/** The condition of this name; a formula that names another is a mistake in the formula. */
export function conditionNamed(name: string): Condition {
  const found = conditionNames.find((known) => known === name);
  if (!found) throw new Error(`No condition is named "${name}".`);
  return conditions[found];
}

/** The number that a formula computes with: the value given, else the default, else +Infinity for none. */
export function conditionValue(name: string, given: Readonly<Record<string, number>>): number {
  return given[name] ?? conditionNamed(name).default ?? Number.POSITIVE_INFINITY;
}

/** Whether both mean the same: what is not given has its default. */
export function areSameConditions(
  one: Readonly<Record<string, number>>,
  other: Readonly<Record<string, number>>,
): boolean {
  return conditionNames.every((name) => {
    const usual = conditions[name].default;
    return (one[name] ?? usual) === (other[name] ?? usual);
  });
}
