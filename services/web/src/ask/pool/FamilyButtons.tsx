import { type Element, elements as withData } from '@tiegel/elements';
import { familyTints } from '../../periodic/families.ts';
import type { ElementView } from '../../server/types.ts';
import type { Mark } from '../draft/draft.ts';

interface FamilyButtonsProps {
  elements: readonly ElementView[];
  marks: Readonly<Record<string, Mark>>;
  /** what a click does, in a word: 'picks' */
  does: string;
  onChoose: (symbols: readonly string[]) => void;
}

const order = Object.keys(familyTints) as Element['family'][];

/** The families, which are the legend of the tints, too: a click marks a whole one. */
export function FamilyButtons({ elements, marks, does, onChoose }: FamilyButtonsProps) {
  const known = new Set(elements.map(({ symbol }) => symbol));
  const families = order
    .map((family) => ({
      family,
      symbols: withData
        .filter((one) => one.family === family && known.has(one.symbol))
        .map(({ symbol }) => symbol),
    }))
    .filter(({ symbols }) => symbols.length > 0);
  return (
    <fieldset className="legend" aria-label={`A whole family: a click ${does} it`}>
      {families.map(({ family, symbols }) => {
        const count = symbols.filter((symbol) => symbol in marks).length;
        return (
          <button
            key={family}
            type="button"
            className={`family tint-${familyTints[family]}`}
            title={symbols.join(' ')}
            onClick={() => onChoose(symbols)}
          >
            {family}
            {count > 0 ? (
              <span>
                ({count}
                <span className="unseen"> marked</span>)
              </span>
            ) : null}
          </button>
        );
      })}
    </fieldset>
  );
}
