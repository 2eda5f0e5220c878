import { readFileSync } from 'node:fs';

/** What the plain search knows of an element; missing is null. Units in the names of the columns of the file. */
export interface ReferenceElement {
  mass: number;
  density: number;
  melting: number | null;
  radius: number;
  pauling: number;
  allen: number | null;
  valence: number;
  price: number | null;
}

/** Elements by symbol, and pair enthalpies in kJ/mol by 'A-B' in both orders. */
export interface ReferenceData {
  elements: Map<string, ReferenceElement>;
  enthalpies: Map<string, number>;
}

const folder = new URL('../../fixtures/independent/', import.meta.url);

/** Reads the copies of the published tables that stand in test/fixtures/independent, and nothing of packages/. */
export function referenceData(): ReferenceData {
  const prices = new Map(rows('prices.csv').map(([symbol, price]) => [symbol, Number(price)]));
  const elements = rows('elements.csv').map(
    ([symbol, mass, density, melting, radius, pauling, allen, valence]): [string, ReferenceElement] => [
      symbol!,
      {
        mass: Number(mass),
        density: Number(density),
        melting: orNull(melting),
        radius: Number(radius),
        pauling: Number(pauling),
        allen: orNull(allen),
        valence: Number(valence),
        price: prices.get(symbol) ?? null,
      },
    ],
  );
  const enthalpies = rows('pair-enthalpies.csv').flatMap(([a, b, value]): [string, number][] => [
    [`${a}-${b}`, Number(value)],
    [`${b}-${a}`, Number(value)],
  ]);
  return { elements: new Map(elements), enthalpies: new Map(enthalpies) };
}

function rows(file: string): string[][] {
  const [, ...lines] = readFileSync(new URL(file, folder), 'utf8').trim().split('\n');
  return lines.map((line) => line.split(','));
}

function orNull(text: string | undefined): number | null {
  return text === undefined || text === '' ? null : Number(text);
}
