import {
  atMost,
  choose,
  condition,
  constant,
  divide,
  type Expression,
  plus,
  squareRoot,
  within,
} from '../formula/expression.ts';

/** The temperatures at which the slope was found, K. */
export const hallPetchTemperatures = { min: 77, max: 673 } as const;

/** 494 MPa/√(d/µm), d the grain size; 0 where no grain size is given, which is bound as infinite. */
const boundaries = divide(
  constant(494, 'MPa'),
  squareRoot(divide(condition('grainSize'), constant(1, 'µm'))),
);

/**
 * A strength of the lattice (MPa) with what grain boundaries add: + 494 MPa/√(d/µm), the Hall–Petch
 * slope of CoCrFeMnNi. It was found from 77 to 673 K: outside them there is no value where a grain
 * size is given. Without one the strength is left as it is.
 * @source from memory of Otto et al., Acta Mater. 61 (2013) 5743
 */
export function withGrainBoundaries(lattice: Expression): Expression {
  const temperature = condition('serviceTemperature');
  const { min, max } = hallPetchTemperatures;
  const added = within(
    atMost(constant(min, 'K'), temperature),
    within(atMost(temperature, constant(max, 'K')), plus(lattice, boundaries)),
  );
  return choose(atMost(boundaries, 0), lattice, added);
}
