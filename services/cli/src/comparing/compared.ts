import type { SearchView } from '@tiegel/contract';
import {
  type ComparisonGroup,
  comparisonGroups,
  fixedDecimals,
  onlyDifferent,
  toldOnce,
} from '@tiegel/contract/terms';
import { type Composition, factsFor, type PriceList, withOwnColumn } from '@tiegel/elements';
import { criterionRecords, type Dossier, dossierOf, typicalRange, withOwnNeighbours } from '@tiegel/insight';
import {
  areSameConditions,
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
import { expressionsWith } from './expressionsWith.ts';
import type { Searched } from './searched.ts';
import { searchLines } from './searchLines.ts';

/** An alloy as `screen --json` tells it. */
interface ComparedAlloy extends Dossier {
  composition: Composition;
  quantities: QuantityValues;
  /** in the search that is compared, too; null where it did not keep the alloy */
  rank?: number | null;
}

/** Alloys side by side. */
export interface Compared {
  alloys: ComparedAlloy[];
  /** for a file: every line */
  groups: ComparisonGroup[];
  /** the same for people, told once what is one number on two lines; one line is put for the other before it is asked what differs, for each has a scale of its own */
  groupsForPeople: ComparisonGroup[];
  /** that groups tell of */
  asked: readonly Quantity[];
  conditions: Conditions;
  prices: PriceList;
  /** whose limits and expressions are compared */
  search: SearchView | null;
  /** whether alloys that the search kept have the numbers that it stored */
  asStored: boolean;
}

/**
 * The alloys with all that is said of each, and the lines of the page that sets them side by side.
 * What a search kept has the numbers that it stored, at the prices of its day, unless other conditions are asked for.
 * @param only lines in which they differ
 */
export function compared(
  compositions: readonly Composition[],
  { prices, pairs, columns, alloys: own }: DataInForce,
  given: Conditions,
  only: { differs: boolean },
  search: Searched | null = null,
): Compared {
  const view = search?.view ?? null;
  const { conditions: searched = {}, lets } = view?.specification ?? {};
  const conditions = { ...searched, ...given };
  const asStored = view !== null && areSameConditions(conditions, searched);
  const symbols = new Set(compositions.flatMap((composition) => Object.keys(composition)));
  const facts = columns.reduce(withOwnColumn, factsFor([...symbols], { prices, pairs }));
  const asked = [...quantities, ...ownQuantities({ columns })];
  const valuesAt = screening(facts, [...asked, ...expressionsWith(columns, lets)], conditions);
  const alloys = compositions.map((composition, at) => {
    const dossier = dossierOf(composition, facts, conditions);
    const nearest = withOwnNeighbours(composition, dossier.nearest, own);
    const kept = search?.kept[at] ?? null;
    const stored = asStored ? kept?.quantities : undefined;
    return {
      ...{ composition, quantities: { ...valuesAt(composition), ...stored }, ...dossier, nearest },
      ...(view === null ? {} : { rank: kept?.rank ?? null }),
    };
  });
  const typical = typicalRange(quantities.map(({ id }) => id));
  const groups = comparisonGroups({
    ...{ alloys: alloys.map((alloy) => ({ ...alloy, explanation: alloy })), written },
    quantities: asked.map((quantity) => ({ ...quantity, unit: unitOf(quantity, prices) })),
    ...{ typical, criteria: criterionRecords() },
    asked:
      view === null
        ? []
        : searchLines(view, { alloys: alloys.map((one) => ({ values: one.quantities })), typical, written }),
    cellOf: (quantity, alloy) => ({
      value: isGroundless(quantity, alloy) ? null : (alloy.quantities[quantity.id] ?? null),
      text: marked(quantity, shownValue(quantity.id, alloy.quantities[quantity.id], asked), alloy) ?? '–',
    }),
    silence: (id, { composition, quantities: values }) => silenceInWords(id, composition, values),
  });
  const shown = (all: readonly ComparisonGroup[]) => (only.differs ? onlyDifferent(all) : [...all]);
  return {
    ...{ alloys, groups: shown(groups) },
    groupsForPeople: shown(toldOnce(groups, 'one-phase', 'singlePhaseEstimate')),
    ...{ asked, conditions, prices, search: view, asStored },
  };
}

function written(value: number | null, decimals: number): string {
  return value === null ? '–' : fixedDecimals(value, decimals);
}

/** The same as numbers; what is no number has its words. */
export function comparisonJson({ alloys, groups, conditions, prices, search, asStored }: Compared) {
  const { date, currency, invented } = prices;
  return {
    conditions: Object.fromEntries(
      Object.values(known).map(({ name, default: value }) => [name, conditions[name] ?? value]),
    ),
    prices: { date, currency, invented },
    ...(search === null ? {} : { search: { id: search.id, name: search.name, asStored } }),
    alloys,
    groups: groups.map(({ head, rows }) => ({
      head,
      rows: rows.map(({ id, name, unit, cells, difference }) => ({
        ...{ id, name, unit, difference },
        values: cells.map(({ value }) => value),
        texts: cells.map(({ text }) => text),
        ...(cells.some(({ met }) => met !== undefined) ? { met: cells.map(({ met = null }) => met) } : {}),
      })),
    })),
  };
}
