import type { GridFractions, SearchSpecification } from '@tiegel/contract';
import { effectivePool, partsOfBounds } from '@tiegel/contract/terms';
import { mostSystemsKept } from '../outcome/bestOfSystems.ts';
import type { Grid } from './grid.ts';
import { possibleSizes } from './possibleSizes.ts';
import { systemNumbering } from './systemNumbering.ts';

/** The grid that a checked specification describes. Bounds off the step are rounded inwards. */
export function gridOf(specification: SearchSpecification): Grid {
  const { elements, fractions, components, keepPerSystem } = specification;
  const symbols = effectivePool(elements);
  const bounds = symbols.map((symbol) =>
    fractions === 'equimolar' ? { lowest: 1, highest: 1 } : partsWithin(fractions, symbol),
  );
  const allowed: Grid = {
    symbols,
    required: symbols.map((symbol) => elements.require.includes(symbol)),
    components: { min: components.min, max: Math.min(components.max, symbols.length) },
    total: fractions === 'equimolar' ? null : stepsInWhole(fractions.step),
    lowest: bounds.map((one) => one.lowest),
    highest: bounds.map((one) => one.highest),
    wholeSystems: false,
  };
  const grid = { ...allowed, components: possibleSizes(allowed) };
  return { ...grid, wholeSystems: keepPerSystem > 1 && systemNumbering(grid).count > mostSystemsKept };
}

function stepsInWhole(step: number): number {
  return Math.round(100 / step);
}

function partsWithin(fractions: GridFractions, symbol: string): { lowest: number; highest: number } {
  const { step, min, max } = { ...fractions, ...fractions.each[symbol] };
  const parts = partsOfBounds({ step, min, max });
  return parts === null
    ? { lowest: 1, highest: 0 }
    : { lowest: parts.least, highest: Math.min(parts.most, stepsInWhole(step)) };
}
