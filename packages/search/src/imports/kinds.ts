import { type Material, type Materials, materialsCsv, readMaterials } from '@tiegel/charge';
import { problem } from '@tiegel/contract/terms';
import {
  type OwnAlloy,
  type OwnColumn,
  ownAlloyKey,
  ownAlloysCsv,
  ownColumnCsv,
  type PairValue,
  type PriceList,
  pairValuesCsv,
  priceListCsv,
  readOwnAlloys,
  readOwnColumn,
  readPairValues,
  readPriceList,
  spacedComposition,
} from '@tiegel/elements';
import { lateQuantities } from '@tiegel/insight/late';
import { ownColumnQuantity, quantities } from '@tiegel/screening';
import { type ImportKindOf, usualKind } from './importKind.ts';

/** A raw material with the currency of its price. */
export interface PricedMaterial extends Material {
  currency: string | null;
}

const joined = (...parts: (string | null | false)[]) =>
  parts.filter((part) => part !== null && part !== false && part !== '').join(', ');

const priceKind: ImportKindOf<PriceList> = {
  ...usualKind,
  id: 'prices',
  read: readPriceList,
  csv: priceListCsv,
  entries: ({ currency, prices }) =>
    Object.entries(prices).map(([symbol, value]) => ({
      key: symbol,
      shown: joined(`${value.pricePerKilogram} ${currency}/kg`, value.date, value.source),
      value,
    })),
};

const columnKind: ImportKindOf<OwnColumn> = {
  id: 'column',
  read(text) {
    const column = readOwnColumn(text);
    refuseTakenName(column);
    return column;
  },
  csv: ownColumnCsv,
  subject: ({ id }) => id,
  name: ({ name }) => name,
  entries: ({ unit, mixing, values }) =>
    Object.entries(values).map(([symbol, value]) => ({
      key: symbol,
      shown: `${value}${unit === '' ? '' : ` ${unit}`}, by ${mixing}`,
      value,
    })),
  alone: (header, row, first) =>
    row.map((field, at) =>
      ['name', 'unit', 'mixing'].includes(header[at] ?? '') ? (first[at] ?? '') : field,
    ),
};

/** Throws expression/name-taken where a quantity has the name of a column. */
export function refuseTakenName(column: OwnColumn): void {
  ownColumnQuantity(column, quantities);
  if (lateQuantities.some(({ id }) => id === column.id))
    throw problem('expression/name-taken', { name: column.id });
}

export const pairKind: ImportKindOf<PairValue[], PairValue> = {
  ...usualKind,
  id: 'pairs',
  read: readPairValues,
  csv: pairValuesCsv,
  entries: (values) =>
    values.map((value) => ({
      key: `${value.a}-${value.b}`,
      shown: joined(`${value.mixingEnthalpy} kJ/mol`, value.source),
      value,
    })),
};

export const materialKind: ImportKindOf<Materials, PricedMaterial> = {
  ...usualKind,
  id: 'materials',
  read: readMaterials,
  csv: materialsCsv,
  entries: ({ materials, currency }) =>
    materials.map((material) => ({
      key: material.name,
      shown: joined(
        `${spacedComposition(material.contains)} wt.%`,
        `${material.purity} wt.% pure`,
        material.price !== null && `${material.price} ${currency}/kg`,
        material.meltingTemperature !== null && `melts at ${material.meltingTemperature} K`,
      ),
      value: { ...material, currency: material.price === null ? null : currency },
    })),
};

const alloyKind: ImportKindOf<OwnAlloy[], OwnAlloy> = {
  ...usualKind,
  id: 'alloys',
  read: readOwnAlloys,
  csv: ownAlloysCsv,
  entries: (alloys) =>
    alloys.map((value) => {
      const { composition, name, phases, process, doi, note } = value;
      const shown = joined(spacedComposition(composition), name, phases ?? 'no phases', process, doi, note);
      return { key: ownAlloyKey(value), shown, value };
    }),
};

/** Every kind by its id. */
export const kinds = {
  prices: priceKind,
  column: columnKind,
  pairs: pairKind,
  materials: materialKind,
  alloys: alloyKind,
} as const;
