import { Slider, SliderThumb, SliderTrack } from 'react-aria-components/Slider';
import type { DragRange } from './dragRange.ts';
import './thumbs.css';

/** One thumb over a distribution. */
export interface Thumb {
  /** what it sets, with the unit: it is read aloud */
  label: string;
  /** null: nothing is set, and the thumb waits at `resting` */
  value: number | null;
  resting: number;
  onChange: (value: number) => void;
}

interface ThumbsProps {
  label: string;
  thumbs: readonly Thumb[];
  range: DragRange;
}

/**
 * Thumbs over a distribution, moved by pointer, arrow keys, Page Up, Page Down, Home and End. None
 * goes past another. Values off the steps stay what they are until their thumb is moved.
 */
export function Thumbs({ label, thumbs, range: { from, to, step } }: ThumbsProps) {
  const places = thumbs.map(({ value, resting }) => snapped(value ?? resting, from, to, step));
  const onChange = (next: number[]) => {
    for (const [index, { onChange: set }] of thumbs.entries()) {
      if (Math.abs(next[index]! - places[index]!) > step / 2) set(plainly(next[index]!));
    }
  };
  return (
    <Slider
      className="thumbs"
      aria-label={label}
      value={places}
      minValue={from}
      maxValue={to}
      step={step}
      formatOptions={{ maximumFractionDigits: 6 }}
      onChange={onChange}
    >
      <SliderTrack className="thumbs-track">
        {thumbs.map(({ label: name, value }, index) => (
          <SliderThumb
            key={name}
            index={index}
            aria-label={value === null ? `${name}, not set yet` : name}
            className={value === null ? 'thumb thumb-free' : 'thumb'}
          />
        ))}
      </SliderTrack>
    </Slider>
  );
}

function snapped(value: number, from: number, to: number, step: number): number {
  const place = from + Math.round((value - from) / step) * step;
  return plainly(Math.min(to, Math.max(from, place)));
}

/** Without the digits that steps in binary leave behind. */
function plainly(value: number): number {
  return Number(value.toPrecision(10));
}
