import { type KeyboardEvent, type PointerEvent, type RefObject, useRef, useState } from 'react';
import type { Scale } from './linearScale.ts';
import { type Direction, nearestPoint, nextPoint, type Places } from './nearestPoint.ts';
import type { ScatterBrush } from './scatterData.ts';

interface Hands {
  places: Places;
  /** how many of the places are main points, in the order of rank: the first ones */
  main: number;
  scales: { x: Scale; y: Scale };
  stage: RefObject<HTMLDivElement | null>;
  brush: ScatterBrush | null;
  onBrush: (brush: ScatterBrush | null) => void;
  onOpen: (place: number) => void;
  onMark: (place: number) => void;
}

/** How near the pointer must come to a point, and how far it must go to draw a rectangle, px. */
const reach = 14;
const drawn = 5;
const directions: Record<string, Direction> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};

/** Pointer and keys of a scatter: which point they are at, and the rectangle that they draw. */
export function useScatterHands(hands: Hands) {
  const { places, main, scales, stage, brush, onBrush, onOpen, onMark } = hands;
  const [at, setAt] = useState<number | null>(null);
  const [drag, setDrag] = useState<ScatterBrush | null>(null);
  const start = useRef<{ x: number; y: number } | null>(null);
  /** a point was clicked: it stays until the pointer leaves, so that other points on the way to its readout are not read */
  const held = useRef(false);
  /** the point at which Shift began to stretch a rectangle */
  const anchor = useRef<number | null>(null);

  const placeOf = (event: PointerEvent) => {
    const box = stage.current!.getBoundingClientRect();
    return { x: event.clientX - box.x, y: event.clientY - box.y };
  };
  const between = (one: { x: number; y: number }, other: { x: number; y: number }): ScatterBrush => ({
    x: rounded(scales.x, one.x, other.x),
    y: rounded(scales.y, one.y, other.y),
  });
  const pointPlace = (point: number) => ({ x: places.x[point]!, y: places.y[point]! });

  const onPointerMove = (event: PointerEvent<HTMLDivElement>) => {
    const here = placeOf(event);
    const from = start.current;
    if (from && Math.hypot(here.x - from.x, here.y - from.y) > drawn) setDrag(between(from, here));
    else if (!from && !held.current) {
      const near = nearestPoint(places, here.x, here.y, reach);
      // What was read stays while the pointer crosses empty ground, so that its link can be reached.
      if (near !== null) setAt(near);
    }
  };
  const onPointerDown = (event: PointerEvent<HTMLDivElement>) => {
    if (event.button !== 0) return;
    anchor.current = null;
    if (event.pointerType === 'touch')
      return setAt(nearestPoint(places, placeOf(event).x, placeOf(event).y, 2 * reach));
    start.current = placeOf(event);
    event.currentTarget.setPointerCapture(event.pointerId);
  };
  const onPointerUp = (event: PointerEvent<HTMLDivElement>) => {
    if (drag) {
      held.current = false;
      onBrush(drag);
    } else if (start.current) {
      const near = nearestPoint(places, placeOf(event).x, placeOf(event).y, reach);
      held.current = near !== null;
      if (near !== null) setAt(near);
      else if (brush) onBrush(null);
    }
    start.current = null;
    setDrag(null);
  };
  const onPointerCancel = () => {
    start.current = null;
    setDrag(null);
  };
  const onPointerLeave = () => {
    held.current = false;
  };

  const go = (to: number | null, stretch: boolean) => {
    if (to === null || Number.isNaN(places.x[to])) return;
    if (stretch) {
      anchor.current ??= at ?? to;
      onBrush(between(pointPlace(anchor.current), pointPlace(to)));
    } else anchor.current = null;
    setAt(to);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const direction = directions[event.key];
    const first = firstThere(places);
    if (event.key === 'Escape') {
      anchor.current = null;
      onBrush(null);
    } else if (event.key === 'Enter' && at !== null) onOpen(at);
    else if (event.key === ' ' && at !== null) onMark(at);
    else if (direction)
      go(at === null ? first : nextPoint(places, at, direction), event.shiftKey && at !== null);
    else if (event.key === 'Home') go(first, false);
    else if (event.key === 'PageDown') go(Math.min(main - 1, (at ?? -1) + 1), false);
    else if (event.key === 'PageUp') go(Math.max(0, (at ?? 1) - 1), false);
    else return;
    event.preventDefault();
  };

  return {
    at,
    drag,
    handlers: { onPointerMove, onPointerDown, onPointerUp, onPointerCancel, onPointerLeave, onKeyDown },
  };
}

/** The best ranked point that is drawn. */
function firstThere(places: Places): number | null {
  const found = places.x.findIndex((x) => !Number.isNaN(x));
  return found < 0 ? null : found;
}

/** Both values in order, rounded outwards to a thousandth of the axis, so that a point on the rim stays inside and an address short. */
function rounded(scale: Scale, one: number, other: number): [number, number] {
  const hold = (place: number) => Math.max(scale.from, Math.min(scale.to, scale.valueAt(place)));
  const [low, high] = [hold(one), hold(other)].sort((a, b) => a - b) as [number, number];
  // On a logarithmic axis what lies low needs finer steps than the axis is long.
  const length = scale.kind === 'logarithmic' ? Math.max(low, scale.from) : scale.to - scale.from;
  const decimals = Math.max(0, Math.min(12, Math.ceil(-Math.log10(length / 1000))));
  const unit = 10 ** -decimals;
  return [
    Number((Math.floor(low / unit) * unit).toFixed(decimals)),
    Number((Math.ceil(high / unit) * unit).toFixed(decimals)),
  ];
}
