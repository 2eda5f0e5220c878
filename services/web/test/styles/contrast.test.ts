import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

type Triple = [number, number, number];
type Theme = 'light' | 'dark';

const text = readFileSync(new URL('../../src/styles/tokens.css', import.meta.url), 'utf8');
const colours = new Map(
  [...text.matchAll(/--([\w-]+):\s*light-dark\(oklch\(([^)]*)\),\s*oklch\(([^)]*)\)\)/g)].map(
    ([, name, light, dark]) => [name!, { light: triple(light!), dark: triple(dark!) }] as const,
  ),
);

function triple(numbers: string): Triple {
  return numbers.trim().split(/\s+/).map(Number) as Triple;
}

/** Linear sRGB of an OKLCH colour, clipped. Matrices: Björn Ottosson, "A perceptual color space for image processing" (2020), from memory. */
function linearOf([lightness, chroma, hue]: Triple): Triple {
  const [a, b] = [chroma * Math.cos((hue * Math.PI) / 180), chroma * Math.sin((hue * Math.PI) / 180)];
  const [l, m, s] = [
    (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3,
    (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3,
    (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3,
  ];
  const linear = [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ];
  return linear.map((channel) => Math.min(1, Math.max(0, channel))) as Triple;
}

/** Relative luminance: WCAG 2.2. */
function luminance([red, green, blue]: Triple): number {
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function ratio(...luminances: [number, number]): number {
  const [bright, dim] = luminances.sort((p, q) => q - p);
  return (bright! + 0.05) / (dim! + 0.05);
}

/** A colour laid over another as browsers do it: in gamma-encoded sRGB (IEC 61966-2-1). */
function over(front: Triple, back: Triple, opacity: number): Triple {
  const encode = (value: number) => (value <= 0.0031308 ? 12.92 * value : 1.055 * value ** (1 / 2.4) - 0.055);
  const decode = (value: number) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
  return front.map((channel, index) =>
    decode(opacity * encode(channel) + (1 - opacity) * encode(back[index]!)),
  ) as Triple;
}

const colourOf = (name: string, theme: Theme) => linearOf(colours.get(name)![theme]);

function contrast(one: string, other: string, theme: Theme): number {
  return ratio(luminance(colourOf(one, theme)), luminance(colourOf(other, theme)));
}

const grounds = ['paper', 'tint'];
const families = [...colours.keys()].filter((name) => name.startsWith('family-'));
const pairTints = [...colours.keys()].filter((name) => /^(?:seek|avoid)-/.test(name));
const shares = [...colours.keys()].filter((name) => name.startsWith('share-'));
const textPairs: [string, string][] = [
  ...['ink', 'ink-quiet', 'accent', 'warning', 'danger', 'good'].flatMap((ink) =>
    grounds.map((ground) => [ink, ground] as [string, string]),
  ),
  ...families.flatMap(
    (family) =>
      [
        ['ink', family],
        ['ink-quiet', family],
      ] as [string, string][],
  ),
  ...pairTints.map((tint) => ['ink', tint] as [string, string]),
  ['paper', 'plot-part'],
  ['ink', 'tint-strong'],
  ['accent-strong', 'tint-strong'],
  ['on-accent', 'accent'],
  ['on-accent', 'accent-strong'],
  ['ink', 'accent-tint'],
  ['ink-quiet', 'accent-tint'],
  ['accent', 'accent-tint'],
  ['warning', 'warning-tint'],
  ['danger', 'danger-tint'],
];
const graphicPairs: [string, string][] = [
  ...['edge', 'focus', 'accent', 'plot-whole', 'plot-part', 'plot-chosen', 'plot-layer', ...shares].map(
    (mark) => [mark, 'paper'] as [string, string],
  ),
  ['edge', 'tint'],
  ['focus', 'tint'],
  ['focus', 'accent-tint'],
];

// The two ends of the scale, WCAG 2.2: 21 to 1.
test('the computation gives 21 for black on white', () => {
  expect(ratio(luminance(linearOf([1, 0, 0])), luminance(linearOf([0, 0, 0])))).toBeCloseTo(21, 3);
});

test.each(['light', 'dark'] as const)('%s: text that waits for a newer answer can still be read', (theme) => {
  const stale = Number(text.match(/--stale: ([\d.]+)/)?.[1]);
  const inks = ['ink', 'ink-quiet', 'accent', 'danger'];
  const weak = inks.flatMap((ink) =>
    grounds.flatMap((ground) => {
      const back = colourOf(ground, theme);
      const found = ratio(luminance(over(colourOf(ink, theme), back, stale)), luminance(back));
      return found < 4.5 ? [[ink, ground, found]] : [];
    }),
  );
  expect(weak).toEqual([]);
});

test.each(['light', 'dark'] as const)('%s: every text has a contrast of at least 4.5 to 1', (theme) => {
  const weak = textPairs.filter(([ink, ground]) => contrast(ink, ground, theme) < 4.5);
  expect(weak.map((pair) => [...pair, contrast(...pair, theme)])).toEqual([]);
});

test.each(['light', 'dark'] as const)('%s: running text has at least 7 to 1', (theme) => {
  for (const ground of grounds) expect(contrast('ink', ground, theme)).toBeGreaterThanOrEqual(7);
});

test.each(['light', 'dark'] as const)(
  '%s: every line or sign that tells something has at least 3 to 1',
  (theme) => {
    const weak = graphicPairs.filter(([mark, ground]) => contrast(mark, ground, theme) < 3);
    expect(weak.map((pair) => [...pair, contrast(...pair, theme)])).toEqual([]);
  },
);

test.each(['light', 'dark'] as const)('%s: the tones of shares grow lighter in even steps', (theme) => {
  const lightness = shares.map((name) => colours.get(name)![theme][0]);
  const steps = lightness.slice(1).map((value, index) => value - lightness[index]!);
  expect(Math.min(...steps)).toBeGreaterThan(0.02);
  expect(Math.max(...steps)).toBeLessThan(0.04);
});
