import { type ComparisonGroup, comparisonGroups, onlyDifferent, printedUnit } from '@tiegel/contract/terms';
import { type Composition, factsFor, type PriceList, withOwnColumn } from '@tiegel/elements';
import { criterionRecords, type Dossier, dossierOf, typicalRange, withOwnNeighbours } from '@tiegel/insight';
import {
  conditions as known,
  ownQuantities,
  type Quantity,
  type QuantityValues,
  quantities,
  screening,
  silenceInWords,
} from '@tiegel/screening';
import type { Conditions } from '../input/conditionOptions.ts';
import type { DataInForce } from '../input/dataInForce.ts';
import { shownValue, unitOf } from '../output/quantityColumn.ts';
import { isGroundless, marked } from '../output/trustMarks.ts';

/** An alloy as `screen --json` tells it. */
interface ComparedAlloy extends Dossier {
  composition: Composition;
  quantities: QuantityValues;
}

/** Alloys side by side. */
export interface Compared {
  alloys: ComparedAlloy[];
  groups: ComparisonGroup[];
  /** that groups tell of */
  asked: readonly Quantity[];
  conditions: Conditions;
  prices: PriceList;
}

/**
 * The alloys with all that is said of each, and the lines of the page that sets them side by side.
 * @param only lines in which they differ
 */
export function compared(
  compositions: readonly Composition[],
  { prices, pairs, columns, alloys: own }: DataInForce,
  conditions: Conditions,
  only: { differs: boolean },
): Compared {
  const symbols = new Set(compositions.flatMap((composition) => Object.keys(composition)));
  const facts = columns.reduce(withOwnColumn, factsFor([...symbols], { prices, pairs }));
  const asked = [...quantities, ...ownQuantities({ columns })];
  const valuesAt = screening(facts, asked, conditions);
  const alloys = compositions.map((composition) => {
    const dossier = dossierOf(composition, facts, conditions);
    const nearest = withOwnNeighbours(composition, dossier.nearest, own);
    return { composition, quantities: valuesAt(composition), ...dossier, nearest };
  });
  const groups = comparisonGroups({
    ...{ alloys: alloys.map((alloy) => ({ ...alloy, explanation: alloy })), written },
    quantities: asked.map((quantity) => ({ ...quantity, unit: printedUnit(unitOf(quantity, prices)) })),
    typical: typicalRange(quantities.map(({ id }) => id)),
    criteria: criterionRecords(),
    cellOf: (quantity, alloy) => ({
      value: isGroundless(quantity, alloy) ? null : (alloy.quantities[quantity.id] ?? null),
      text: marked(quantity, shownValue(quantity.id, alloy.quantities[quantity.id], asked), alloy) ?? '–',
    }),
    silence: (id, { composition, quantities: values }) => silenceInWords(id, composition, values),
  });
  return { alloys, groups: only.differs ? onlyDifferent(groups) : groups, asked, conditions, prices };
}

function written(value: number | null, decimals: number): string {
  return value?.toFixed(decimals) ?? '–';
}

/** The same as numbers; what is no number has its words. */
export function comparisonJson({ alloys, groups, conditions, prices }: Compared) {
  const { date, currency, invented } = prices;
  return {
    conditions: Object.fromEntries(
      Object.values(known).map(({ name, default: value }) => [name, conditions[name] ?? value]),
    ),
    prices: { date, currency, invented },
    alloys,
    groups: groups.map(({ head, rows }) => ({
      head,
      rows: rows.map(({ id, name, unit, cells, difference }) => ({
        ...{ id, name, unit, difference },
        values: cells.map(({ value }) => value),
        texts: cells.map(({ text }) => text),
      })),
    })),
  };
}
