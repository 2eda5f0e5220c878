import { expect, test } from 'vitest';
import { piecesOf } from '../../src/words/Prose.tsx';

/** Pieces as a text, with what is set low in braces. */
const set = (text: string) =>
  piecesOf(text)
    .map((piece) => (piece.low ? `{${piece.text}}` : piece.text))
    .join('');

test.each([
  ['57 % CrNi + 27 % CrFe3 + 5 % Cu', '57 % CrNi + 27 % CrFe{3} + 5 % Cu'],
  ['Nearest is Al0.15Cr0.5Cu0.25Fe0.5Ni, 19 %', 'Nearest is Al{0.15}Cr{0.5}Cu{0.25}Fe{0.5}Ni, 19 %'],
  ['Cr35Cu5Fe20Ni35V5 (at.%).', 'Cr{35}Cu{5}Fe{20}Ni{35}V{5} (at.%).'],
  ['FCC+L12+Sec. in 1 of 3', 'FCC+L1{2}+second phase in 1 of 3'],
  ['FCC+Sec.', 'FCC+second phase'],
  ['sigma+BCC', 'σ+BCC'],
])('%s is printed as %s', (text, printed) => {
  expect(set(text)).toBe(printed);
});

test('what is no formula stays as it is', () => {
  const texts = [
    'B2, C14 and AZ91 beside Ti-6Al-4V, Nickel superalloy 718',
    'Guo & Liu 2011: FCC+BCC; CoCrFeMnNi in 17 of 20',
    'CRC2020 and doi 10.1016/j.matchar.2019.109792',
  ];
  for (const text of texts) expect(set(text)).toBe(text);
});
