import { readFileSync } from 'node:fs';
import { valueFor } from '@tiegel/screening';
import { describe, expect, test } from 'vitest';

/**
 * Values of known alloys from test/fixtures/worked-values.csv, each with its tolerance, its source and
 * its status, which is the weight that it carries: worked-values.md says what each status means.
 */
interface Row {
  alloy: string;
  descriptor: string;
  published: number;
  tolerance: number;
  status: string;
  source: string;
  agrees: boolean;
}

/** The quantities by their names in the file; γ is no quantity yet. */
const ids: Record<string, string> = {
  dS: 'configurationalEntropy',
  dH: 'mixingEnthalpy',
  delta: 'sizeMismatch',
  Tm: 'meltingTemperature',
  Omega: 'omega',
  VEC: 'valenceElectronConcentration',
  dChi: 'electronegativitySpread',
  Lambda: 'lambda',
  density: 'density',
};

function readRows(): Row[] {
  const [, ...lines] = readFileSync(new URL('../fixtures/worked-values.csv', import.meta.url), 'utf8')
    .trim()
    .split('\n');
  return lines.map((line) => {
    const fields = [...line.matchAll(/("[^"]*"|[^,]*)(?:,|$)/g)].map(([, field]) =>
      field!.replaceAll('"', ''),
    );
    const [alloy, , descriptor, , published, tolerance, status, source, , , agrees] = fields;
    return {
      alloy: alloy!,
      descriptor: descriptor!,
      published: Number(published),
      tolerance: Number(tolerance),
      status: status!,
      source: source!,
      agrees: agrees === 'yes',
    };
  });
}

const rows = readRows().filter(({ descriptor }) => descriptor in ids);
const title = ({ alloy, descriptor, published, tolerance, status, source }: Row) =>
  `${alloy}: ${descriptor} ${published} ± ${tolerance} (${status}; ${source})`;
const distance = ({ alloy, descriptor, published }: Row) =>
  Math.abs(valueFor(ids[descriptor]!, alloy)! - published);

describe('published values are met', () => {
  test.for(rows.filter(({ agrees }) => agrees).map((row) => [title(row), row] as const))('%s', ([, row]) => {
    // A hair of room: the printed digits and their tolerance are decimals.
    expect(distance(row)).toBeLessThanOrEqual(row.tolerance * (1 + 1e-9));
  });
});

// Another radius set (Kittel, Teatum) stands behind these; worked-values.md gives δ by radius set. If one of
// them is met one day, the radii have been changed, and every threshold on δ with them.
describe('values of another radius set are not met', () => {
  const others = rows.filter(({ agrees }) => !agrees);
  test.for(others.map((row) => [title(row), row] as const))('%s', ([, row]) => {
    expect(row.descriptor).toBe('delta');
    expect(distance(row)).toBeGreaterThan(row.tolerance);
  });
  test('there are three', () => {
    expect(others.map(({ alloy }) => alloy).sort()).toEqual(['AlCoCrCuFeNi', 'HfNbTaTiZr', 'ZrHfTiCuNi']);
  });
});

// Means of the CRC melting points of the elements, K, typed from memory: Al 933.47, Co 1768, Cr 2180,
// Fe 1811, Ni 1728. The file has no melting temperature of these two.
test.for([
  ['CoCrFeNi', (1768 + 2180 + 1811 + 1728) / 4],
  ['AlCoCrFeNi', (933.47 + 1768 + 2180 + 1811 + 1728) / 5],
] as const)('%s: T_m is the mean %d K (arithmetic)', ([alloy, mean]) => {
  expect(valueFor('meltingTemperature', alloy)).toBeCloseTo(mean, 9);
});

test('the six reference alloys are covered for ΔS, ΔH, VEC, Ω, δ, and T_m where one is printed', () => {
  const covered = new Set(
    rows.filter(({ agrees }) => agrees).map(({ alloy, descriptor }) => `${alloy} ${descriptor}`),
  );
  for (const alloy of ['CoCrFeMnNi', 'CoCrFeNi', 'AlCoCrFeNi', 'NbMoTaW', 'NbMoTaVW', 'HfNbTaTiZr']) {
    for (const descriptor of ['dS', 'dH', 'VEC', 'Omega', 'delta'])
      expect(covered).toContain(`${alloy} ${descriptor}`);
  }
  for (const alloy of ['CoCrFeMnNi', 'NbMoTaW', 'NbMoTaVW', 'HfNbTaTiZr'])
    expect(covered).toContain(`${alloy} Tm`);
});
