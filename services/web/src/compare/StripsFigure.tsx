import type { QuantityView, TypicalRange, TypicalRanges } from '@tiegel/contract';
import { spacedComposition } from '@tiegel/elements';
import { typicalPlace } from '../alloy/quantities/TypicalStrip.tsx';
import { formatNumber } from '../numbers/formatNumber.ts';
import { Figure } from '../plot/Figure.tsx';
import { linearScale } from '../plot/linearScale.ts';
import { PlotSvg } from '../plot/PlotSvg.tsx';
import { SvgNotation } from '../plot/SvgNotation.tsx';
import { useWidth } from '../plot/useWidth.ts';
import { unitText } from '../server/lookup.ts';
import type { Compared } from './useCompared.ts';

interface StripsFigureProps {
  alloys: readonly Compared[];
  quantities: readonly QuantityView[];
  typical: TypicalRanges;
  currency: string | undefined;
}

const pitch = 34;
const top = 40;
/** places on a strip: units of the middle half of the published alloys to either side */
const reach = 3;

/** Each quantity a strip on the scale of the published alloys, each alloy a letter on it. */
export function StripsFigure({ alloys, quantities, typical, currency }: StripsFigureProps) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const shown = quantities.flatMap((quantity) => {
    const range = typical[quantity.id];
    const some = alloys.some(({ values }) => values[quantity.id] != null);
    return range && range.high > range.low && some ? [{ quantity, range }] : [];
  });
  const legend = alloys
    .map(({ letter, composition }) => `${letter} ${spacedComposition(composition)}`)
    .join(' · ');
  return (
    <Figure
      title="On the scale of published alloys"
      caption={[
        `${legend}.`,
        'The bar is the middle half of the published alloys, its line the middle one; letters beyond three of its halves stand at the edge with an arrow.',
      ]}
      fileName="comparison"
      table={<StripsTable alloys={alloys} shown={shown} currency={currency} />}
    >
      <div ref={ref}>
        {width > 0 ? <Drawing alloys={alloys} shown={shown} width={width} currency={currency} /> : null}
      </div>
    </Figure>
  );
}

interface Shown {
  quantity: QuantityView;
  range: TypicalRange;
}

interface DrawingProps {
  alloys: readonly Compared[];
  shown: readonly Shown[];
  width: number;
  currency: string | undefined;
}

function Drawing({ alloys, shown, width, currency }: DrawingProps) {
  const narrow = width < 640;
  const left = narrow ? 84 : 320;
  const x = linearScale(-reach, reach, left + 26, width - 20);
  return (
    <PlotSvg width={width} height={top + shown.length * pitch + 8}>
      <text x={x.at(-1)} y={16} textAnchor="middle" className="strip-note">
        {narrow ? '¼' : 'lower quarter'}
      </text>
      <text x={x.at(1)} y={16} textAnchor="middle" className="strip-note">
        {narrow ? '¾' : 'upper quarter'}
      </text>
      {shown.map(({ quantity, range }, at) => {
        const y = top + at * pitch;
        const places = alloys.map(({ letter, values }) => {
          const value = values[quantity.id] ?? null;
          return { letter, value, place: value === null ? null : typicalPlace(value, range) };
        });
        return (
          <g key={quantity.id}>
            <text x={left} y={y + 4} textAnchor="end">
              {narrow ? null : `${quantity.name} `}
              <SvgNotation
                text={`${quantity.symbol}${quantity.unit === '' ? '' : ` (${unitText(quantity.unit, currency)})`}`}
              />
            </text>
            <line x1={x.start} x2={x.end} y1={y} y2={y} className="axis-grid" />
            <rect x={x.at(-1)} y={y - 8} width={x.at(1) - x.at(-1)} height={16} className="strip-half" />
            <line x1={x.at(0)} x2={x.at(0)} y1={y - 8} y2={y + 8} className="axis-line" />
            {spread(places, x.at).map(({ letter, place, px }) => (
              <g key={letter}>
                <circle cx={px} cy={y} r={8.5} className="strip-mark" />
                <text x={px} y={y + 4} textAnchor="middle" className="strip-letter">
                  {letter}
                </text>
                {Math.abs(place) >= reach ? (
                  <text x={px + (place > 0 ? 11 : -11)} y={y + 4} textAnchor="middle">
                    {place > 0 ? '›' : '‹'}
                  </text>
                ) : null}
              </g>
            ))}
          </g>
        );
      })}
    </PlotSvg>
  );
}

/** Letters that would cover each other are moved apart just so far that both can be read. */
function spread(
  places: readonly { letter: string; place: number | null }[],
  at: (place: number) => number,
): { letter: string; place: number; px: number }[] {
  const room = 15;
  const known = places
    .flatMap(({ letter, place }) => (place === null ? [] : [{ letter, place, px: at(place) }]))
    .sort((a, b) => a.px - b.px || (a.letter < b.letter ? -1 : 1));
  for (let i = 1; i < known.length; i++) known[i]!.px = Math.max(known[i]!.px, known[i - 1]!.px + room);
  // What was pushed beyond the end comes back from there.
  let limit = at(reach) + 4;
  for (let i = known.length - 1; i >= 0; i--) {
    known[i]!.px = Math.min(known[i]!.px, limit);
    limit = known[i]!.px - room;
  }
  return known;
}

function StripsTable({ alloys, shown, currency }: Omit<DrawingProps, 'width'>) {
  return (
    <table className="plain-table cards">
      <thead>
        <tr>
          <th scope="col">Quantity</th>
          {alloys.map(({ letter }) => (
            <th key={letter} scope="col" className="number">
              {letter}
            </th>
          ))}
          <th scope="col" className="number">
            Quartiles of the published
          </th>
        </tr>
      </thead>
      <tbody>
        {shown.map(({ quantity: { id, name, unit, decimals }, range }) => (
          <tr key={id}>
            <th scope="row" className="plain">
              {name}
              {unit === '' ? '' : `, ${unitText(unit, currency)}`}
            </th>
            {alloys.map(({ letter, values }) => (
              <td key={letter} className="number" data-label={letter}>
                {formatNumber(values[id], decimals)}
              </td>
            ))}
            <td className="number" data-label="Quartiles">
              {[range.low, range.middle, range.high]
                .map((value) => formatNumber(value, decimals))
                .join(' / ')}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
