import type { TypicalRange } from '@tiegel/contract';

/** So many times the middle half fit on the strip. */
const reach = 1.5;

/** Where a value lies in units of the middle half of the published alloys: −1 and 1 are its ends, held at ± 3. */
export function typicalPlace(value: number, { low, middle, high }: TypicalRange): number {
  const half = value < middle ? middle - low : high - middle;
  const place = half === 0 ? Math.sign(value - middle) * 3 : (value - middle) / half;
  return Math.max(-2 * reach, Math.min(2 * reach, place));
}

/** A value on the scale of the published alloys: the bar is their middle half. Decoration beside the number and its words. */
export function TypicalStrip({ value, typical }: { value: number; typical: TypicalRange }) {
  const x = (place: number) => 50 + (place * 46) / (2 * reach);
  const place = typicalPlace(value, typical);
  const beyond = Math.abs(place) >= 2 * reach;
  return (
    <svg className="typical" viewBox="0 0 100 14" aria-hidden="true">
      <line x1="2" x2="98" y1="7" y2="7" className="typical-ground" />
      <rect x={x(-1)} y="4" width={x(1) - x(-1)} height="6" className="typical-half" />
      <line x1={x(0)} x2={x(0)} y1="3" y2="11" className="typical-middle" />
      {beyond ? (
        <path d={place > 0 ? 'M94 2 L100 7 L94 12 Z' : 'M6 2 L0 7 L6 12 Z'} className="typical-mark" />
      ) : (
        <path d={`M${x(place)} 1 l4 6 l-4 6 l-4 -6 Z`} className="typical-mark" />
      )}
    </svg>
  );
}
