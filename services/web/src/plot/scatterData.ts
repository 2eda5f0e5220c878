/** A quantity along an axis or as a colour: how it is called, and its value for each point. */
export interface ScatterAxis {
  /** with unit: see axisTitle */
  title: string;
  values: readonly (number | null)[];
  /** equal factors at equal distances; only where every value is above 0 */
  logarithmic?: boolean;
}

/** Points of another kind over the main ones, with a mark of their own. */
export interface ScatterLayer {
  name: string;
  mark: 'diamond' | 'triangle' | 'tick';
  points: readonly { x: number; y: number }[];
}

/** A rectangle in the values of the axes. */
export interface ScatterBrush {
  x: [number, number];
  y: [number, number];
}

/** One point: of the main ones (layer null) by its place among them, or of a layer. */
export interface ScatterPoint {
  layer: number | null;
  index: number;
}
