import type { PublishedOver } from '@tiegel/contract';
import type { ScatterLayer } from '../../plot/scatterData.ts';
import type { PublishedLayer } from './plotState.ts';

/** A point over the candidates: an alloy that was published, brought in, or melted here. */
export interface LayerPoint {
  x: number;
  y: number;
  /** 'published CoCrFeNi', 'own alloy “trial 7”', 'own melt “First trial”' */
  words: string;
  composition: Record<string, number>;
  phases: string | null;
  doi: string | null;
  /** id of a melt */
  melt: string | null;
}

export interface AlloyLayer extends ScatterLayer {
  points: readonly LayerPoint[];
}

/** The layers over a scatter of two quantities: published alloys and those brought in as chosen, and every melt recorded here. Only layers with points. */
export function layersOf(
  answer: PublishedOver | undefined,
  which: PublishedLayer,
  x: string,
  y: string,
): AlloyLayer[] {
  if (!answer) return [];
  const [placeX, placeY] = [answer.quantities.indexOf(x), answer.quantities.indexOf(y)];
  const at = (values: readonly (number | null)[], point: Omit<LayerPoint, 'x' | 'y'>): LayerPoint[] => {
    const [valueX, valueY] = [values[placeX] ?? null, values[placeY] ?? null];
    return valueX === null || valueY === null ? [] : [{ x: valueX, y: valueY, ...point }];
  };
  const chosen = answer.items.filter(({ inPool }) => which === 'all' || (which === 'pool' && inPool));
  const published = chosen.flatMap(({ formula, composition, phases, doi, own, values }) => {
    const words = own ? `own alloy “${formula}”` : `published ${formula}`;
    return at(values, { words, composition, phases, doi: doi[0] ?? null, melt: null });
  });
  const melts = answer.melts.flatMap(({ id, name, composition, phases, values }) =>
    at(values, { words: `own melt “${name}”`, composition, phases, doi: null, melt: id }),
  );
  const layers: AlloyLayer[] = [
    {
      name: `Published${chosen.some(({ own }) => own) ? ' and own' : ''} alloys`,
      mark: 'diamond',
      points: published,
    },
    { name: 'Own melts', mark: 'triangle', points: melts },
  ];
  return layers.filter(({ points }) => points.length > 0);
}
