import { stepOf } from './colourSequence.ts';
import type { Places } from './nearestPoint.ts';

/** Above so many points single ones can no longer be told apart: cells are drawn instead. */
export const pointsDrawnSingly = 15_000;
const cell = 3; // px

export interface Drawing {
  places: Places;
  /** of each point; null: coloured by how many there are, or all alike */
  colour: readonly (number | null)[] | null;
  colourRange: readonly [number, number];
  sequence: readonly string[];
  /** for points without a value of the colour, and where there is no colour */
  plain: string;
  width: number;
  height: number;
}

/**
 * Draws points on a canvas of `width` × `height` px, the last first, so that the best ranked lie
 * on top. Up to `pointsDrawnSingly` each by itself; more as cells: the mean of the third quantity
 * in each, or, without one, how many points lie there, on a logarithmic scale. Returns the fullest
 * cell's count, null where points are drawn singly.
 */
export function drawPoints(canvas: HTMLCanvasElement, drawing: Drawing): number | null {
  const { width, height, places } = drawing;
  const density = window.devicePixelRatio || 1;
  canvas.width = Math.round(width * density);
  canvas.height = Math.round(height * density);
  const pen = canvas.getContext('2d')!;
  pen.scale(density, density);
  if (places.x.length <= pointsDrawnSingly) {
    drawSingly(pen, drawing);
    return null;
  }
  return drawCells(pen, drawing);
}

function drawSingly(pen: CanvasRenderingContext2D, drawing: Drawing): void {
  const { places, colour, colourRange, sequence, plain } = drawing;
  const count = places.x.length;
  const radius = count < 500 ? 4 : count < 3000 ? 3 : 2;
  for (let point = count - 1; point >= 0; point -= 1) {
    const [x, y] = [places.x[point]!, places.y[point]!];
    if (Number.isNaN(x)) continue;
    const value = colour?.[point] ?? null;
    pen.fillStyle = value === null ? plain : sequence[stepOf(value, ...colourRange)]!;
    pen.beginPath();
    pen.arc(x, y, radius, 0, 2 * Math.PI);
    pen.fill();
  }
}

function drawCells(pen: CanvasRenderingContext2D, drawing: Drawing): number {
  const { places, colour, colourRange, sequence, plain, width, height } = drawing;
  const columns = Math.ceil(width / cell) + 1;
  const cells = columns * (Math.ceil(height / cell) + 1);
  const counts = new Uint32Array(cells);
  const valued = new Uint32Array(cells);
  const sums = new Float64Array(cells);
  let most = 0;
  for (let point = 0; point < places.x.length; point += 1) {
    const [x, y] = [places.x[point]!, places.y[point]!];
    if (!(x >= 0 && y >= 0 && x <= width && y <= height)) continue;
    const at = Math.floor(y / cell) * columns + Math.floor(x / cell);
    counts[at]! += 1;
    most = Math.max(most, counts[at]!);
    const value = colour?.[point] ?? null;
    if (value === null) continue;
    valued[at]! += 1;
    sums[at]! += value;
  }
  const fullest = Math.log(most + 1);
  for (let at = 0; at < cells; at += 1) {
    if (counts[at] === 0) continue;
    if (colour === null) pen.fillStyle = sequence[stepOf(Math.log(counts[at]! + 1), 0, fullest)]!;
    else if (valued[at] === 0) pen.fillStyle = plain;
    else pen.fillStyle = sequence[stepOf(sums[at]! / valued[at]!, ...colourRange)]!;
    pen.fillRect((at % columns) * cell, Math.floor(at / columns) * cell, cell, cell);
  }
  return most;
}
