/** The ways to look at what a search kept. */
export const resultViews = [
  { id: 'table', name: 'Table' },
  { id: 'scatter', name: 'Scatter' },
  { id: 'distributions', name: 'Distributions' },
  { id: 'elements', name: 'Elements' },
  { id: 'systems', name: 'Systems' },
  { id: 'unexplored', name: 'Unexplored' },
] as const;
export type ResultView = (typeof resultViews)[number]['id'];

/** Which published alloys lie over a scatter: those made of the pool, all, or none. */
export const publishedLayers = ['pool', 'all', 'none'] as const;
export type PublishedLayer = (typeof publishedLayers)[number];

/** A rectangle of a scatter, in the values of its axes. */
export interface Brush {
  x: [number, number];
  y: [number, number];
}

/** Which values are better; 'none': neither side is. */
export type Wish = 'low' | 'high' | 'none';
export type PlotScale = 'linear' | 'log';

/** What a scatter shows; null where nothing was chosen: see usualPlot. */
export interface PlotState {
  x: string | null;
  y: string | null;
  /** 'none' for no third quantity */
  colour: string | null;
  published: PublishedLayer;
  /** which values of the axes are better, for the Pareto front */
  wishes: [Wish | null, Wish | null];
  /** whether the axes are logarithmic; null: where the values ask for it */
  scales: [PlotScale | null, PlotScale | null];
  brush: Brush | null;
}

const keys = ['x', 'y', 'colour', 'published', 'better', 'scales', 'brush'];

export function readPlot(address: URLSearchParams): PlotState {
  const published = address.get('published') as PublishedLayer;
  const [x, y] = (address.get('better') ?? '').split(',');
  const [scaleX, scaleY] = (address.get('scales') ?? '').split(',');
  return {
    x: address.get('x'),
    y: address.get('y'),
    colour: address.get('colour'),
    published: publishedLayers.includes(published) ? published : 'pool',
    wishes: [wishIn(x), wishIn(y)],
    scales: [scaleIn(scaleX), scaleIn(scaleY)],
    brush: brushIn(address.get('brush')),
  };
}

/** Writes a plot into an address, in the place of the one that stood there; what is usual is left out. */
export function writePlot(address: URLSearchParams, plot: PlotState): URLSearchParams {
  const { x, y, colour, published, wishes, scales, brush } = plot;
  for (const key of keys) address.delete(key);
  if (x !== null) address.set('x', x);
  if (y !== null) address.set('y', y);
  if (colour !== null) address.set('colour', colour);
  if (published !== 'pool') address.set('published', published);
  if (wishes.some((wish) => wish !== null)) address.set('better', wishes.map((wish) => wish ?? '').join(','));
  if (scales.some((scale) => scale !== null))
    address.set('scales', scales.map((scale) => scale ?? '').join(','));
  if (brush !== null) address.set('brush', [...brush.x, ...brush.y].join(','));
  return address;
}

function wishIn(text: string | undefined): Wish | null {
  return text === 'low' || text === 'high' || text === 'none' ? text : null;
}

function scaleIn(text: string | undefined): PlotScale | null {
  return text === 'linear' || text === 'log' ? text : null;
}

function brushIn(text: string | null): Brush | null {
  const numbers = (text ?? '').split(',').map((part) => (part.trim() === '' ? Number.NaN : Number(part)));
  if (numbers.length !== 4 || !numbers.every(Number.isFinite)) return null;
  const [left, right, bottom, top] = numbers as [number, number, number, number];
  return left <= right && bottom <= top ? { x: [left, right], y: [bottom, top] } : null;
}
