import type { ElementRecord } from '@tiegel/elements';
import type { CheckedData } from './checkedData.ts';

/** The valence electrons follow the group (13 and up: s and p electrons alone), 3 for lanthanides. */
function groupNumbers(elements: readonly ElementRecord[]): string[] {
  return elements
    .filter(({ group, valenceElectrons }) => {
      const expected = group === null ? 3 : group > 12 ? group - 10 : group;
      return valenceElectrons !== expected;
    })
    .map(
      ({ symbol, valenceElectrons }) => `${symbol}: ${valenceElectrons} valence electrons against its group`,
    );
}

/**
 * Allen's scale rises along each period from group 1 to 10 and from 12 to 15, and 11 stands above
 * the groups 9 and 12 (Mann et al., JACS 122 (2000) 5132, from memory). No value: La to Yb alone.
 */
function allenScale(elements: readonly ElementRecord[]): string[] {
  const known = elements.filter(({ allenElectronegativity }) => allenElectronegativity !== null);
  const risesTo = (later: number): number[] =>
    [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 13, 14].filter(
      (group) => group < later && (later <= 10 || group >= 12),
    );
  const groupOf = ({ symbol, group }: ElementRecord): number => (symbol === 'Lu' ? 3 : (group ?? 0));
  const unrisen = known.flatMap((later) =>
    known
      .filter(
        (earlier) => earlier.period === later.period && risesTo(groupOf(later)).includes(groupOf(earlier)),
      )
      .filter((earlier) => !(Number(earlier.allenElectronegativity) < Number(later.allenElectronegativity)))
      .map((earlier) => `${later.symbol}: allenElectronegativity is not above that of ${earlier.symbol}`),
  );
  const missing = elements.filter(
    ({ group, symbol, allenElectronegativity }) =>
      (allenElectronegativity === null) !== (group === null && symbol !== 'Lu'),
  );
  return [
    ...unrisen,
    ...missing.map(({ symbol }) => `${symbol}: has or lacks an Allen electronegativity against the rule`),
  ];
}

/** Published digits of Mann et al. (2000), from memory; the table of our source rounds Hf to 1.15. */
const allenInPrint: Record<string, number> = {
  Hf: 1.16,
  Ta: 1.34,
  W: 1.47,
  Re: 1.6,
  Fe: 1.8,
  Ni: 1.88,
  Al: 1.613,
  Cu: 1.85,
};

function allenPrinted(elements: readonly ElementRecord[]): string[] {
  return elements
    .filter(({ symbol }) => Object.hasOwn(allenInPrint, symbol))
    .filter(
      ({ symbol, allenElectronegativity }) =>
        !(Math.abs(Number(allenElectronegativity) - allenInPrint[symbol]!) <= 0.0101),
    )
    .map(({ symbol }) => `${symbol}: allenElectronegativity is not the printed one`);
}

export function valence({ elements }: CheckedData): string[] {
  return [...groupNumbers(elements), ...allenScale(elements), ...allenPrinted(elements)];
}
