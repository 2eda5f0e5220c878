import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { Notation } from '../../src/words/Notation.tsx';

const marked = (text: string) => renderToStaticMarkup(createElement(Notation, { text }));

test('an index is set low, a bracketed power high', () => {
  expect(marked('n_ws^(1/3)')).toBe('n<sub>ws</sub><sup>1/3</sup>');
  expect(marked('Δχ_A')).toBe('Δχ<sub>A</sub>');
  expect(marked('V^(2/3)')).toBe('V<sup>2/3</sup>');
});
