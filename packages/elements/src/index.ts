export { type CountedAmounts, countedAmounts } from './alloyText/countedAmounts.ts';
export { compositionOf, type Measure } from './composition.ts';
export { type ConventionalAlloy, conventionalAlloys } from './conventionalAlloys.ts';
export { type CsvRow, csvRows } from './csvRows.ts';
export * from './data/columns.ts';
export {
  generalCaution,
  type Hazard,
  type HazardKind,
  hazardSources,
} from './data/hazards.ts';
export type { Family } from './data/periodicTable.ts';
export { type DataSet, dataSets, type SourceCode, sources, type ValueSource } from './data/sources.ts';
export { dataVersionOf } from './dataVersion.ts';
export { demoPrices } from './demoPrices.ts';
export { nearestSymbols, requireElements, symbolFault } from './elementSymbol.ts';
export { elementNumber, type SourcedValue, sourcedValue } from './elementValue.ts';
export { type Facts, factsFor, missingIn } from './facts.ts';
export { formatComposition, spacedComposition } from './formatComposition.ts';
export { hazardsOf } from './hazardsOf.ts';
export { csvLine, csvText } from './own/csvText.ts';
export { type OwnAlloy, ownAlloyKey, ownAlloysCsv, readOwnAlloys } from './own/ownAlloys.ts';
export { type OwnPair, ownPairOf, ownPairOrigin, ownPairSources, pairSources } from './own/ownPairs.ts';
export { type PairValue, pairValuesCsv, readPairValues } from './own/pairValues.ts';
export { type OwnColumn, withOwnColumn } from './ownColumn.ts';
export { pairEnthalpy, pairEnthalpyWith } from './pairEnthalpy.ts';
export { parseAlloy } from './parseAlloy.ts';
export { atomicToWeightPercent, type Composition, weightToAtomicPercent } from './percent.ts';
export { type Element, elementOf, elements, isAvailable, symbols, unavailable } from './periodicTable.ts';
export type { PriceList } from './priceList.ts';
export { ownColumnCsv, readOwnColumn } from './readOwnColumn.ts';
export { priceListCsv, readPriceList } from './readPriceList.ts';
export { type ElementRecord, elementRecords, type PairRecord, pairRecords } from './records.ts';
export { separatorOf } from './separatorOf.ts';
export { tableRows } from './tableRows.ts';
