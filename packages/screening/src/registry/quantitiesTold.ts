import { columnsOf } from '../definition/columnsOf.ts';
import { conditionsOf } from '../definition/conditionsOf.ts';
import { quantities } from '../quantities/index.ts';

/** Every quantity as it is told to people: all but the nodes of its formula, and what the formula reads. */
export const quantitiesTold = () =>
  quantities.map((quantity) => {
    const { formula: _, caution = null, ...rest } = quantity;
    const { elements, pairs } = columnsOf(quantity);
    return {
      ...rest,
      caution,
      needs: { elements: [...elements], pairs: [...pairs], conditions: conditionsOf(quantity) },
    };
  });
