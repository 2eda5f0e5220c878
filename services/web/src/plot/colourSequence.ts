const tones = 12;
const steps = 256;

/**
 * The sequence of colours for a third quantity, from low to high, as 256 colours that a canvas
 * takes: the tones of styles/tokens.css with even steps of lightness in between, which follow the
 * published map cividis and stay in order for colour-blind eyes and in print without colour.
 * Others in the dark than in the light.
 * @source Nuñez, Anderton & Renslow, PLoS ONE 13 (2018) e0199239 (the map, from memory)
 */
export function colourSequence(dark: boolean): string[] {
  const canvas = document.createElement('canvas');
  canvas.width = steps;
  canvas.height = 1;
  const pen = canvas.getContext('2d', { willReadFrequently: true })!;
  const gradient = pen.createLinearGradient(0, 0, steps, 0);
  for (let tone = 0; tone < tones; tone += 1) {
    gradient.addColorStop(tone / (tones - 1), tokenColour(`--share-${tone}`, dark));
  }
  pen.fillStyle = gradient;
  pen.fillRect(0, 0, steps, 1);
  const { data } = pen.getImageData(0, 0, steps, 1);
  return Array.from({ length: steps }, (_, step) => {
    const [red, green, blue] = data.subarray(4 * step, 4 * step + 3);
    return `rgb(${red} ${green} ${blue})`;
  });
}

/** Place of a value in a sequence of so many colours. */
export function stepOf(value: number, from: number, to: number): number {
  if (!(to > from)) return Math.floor(steps / 2);
  return Math.max(0, Math.min(steps - 1, Math.floor(((value - from) / (to - from)) * steps)));
}

/** The colour that a token has on the screen where that is dark, otherwise in the light. */
export function tokenColour(token: string, dark: boolean): string {
  const probe = document.createElement('span');
  probe.className = dark ? '' : 'on-paper';
  probe.style.color = `var(${token})`;
  // A canvas is drawn with our colours, also where the reader's system sets those of the page.
  probe.style.setProperty('forced-color-adjust', 'none');
  probe.hidden = true;
  document.body.append(probe);
  const { color } = getComputedStyle(probe);
  probe.remove();
  return color;
}
