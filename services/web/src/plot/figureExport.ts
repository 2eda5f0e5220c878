/** The properties of style that a drawing needs when it leaves the page. */
const carried = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linejoin',
  'stroke-linecap',
  'stroke-opacity',
  'paint-order',
  'opacity',
  'font-family',
  'font-size',
  'font-weight',
  'text-anchor',
  'visibility',
];
const margin = 16;
const lineHeight = 17;
const charactersPerPixel = 1 / 6.2;

/** What a figure is when it leaves the page. */
export interface FigureText {
  title: string;
  /** lines under the figure: what is shown, of how many, from which data */
  caption: readonly string[];
}

/**
 * A figure of a page (the SVG in `frame`, with what canvases under it show) as the text of an SVG
 * file that stands by itself: colours and type as attributes, on white, title above, caption below.
 * Parts marked data-screen-only stay behind. Throws RangeError where there is no SVG.
 */
export function figureExport(frame: HTMLElement, { title, caption }: FigureText): string {
  const drawn = frame.querySelector('svg');
  if (!drawn) throw new RangeError('the figure holds no drawing');
  const { width, height } = drawn.getBoundingClientRect();
  const copy = drawn.cloneNode(true) as SVGSVGElement;
  carryStyle(drawn, copy);
  for (const left of copy.querySelectorAll('[data-screen-only]')) left.remove();
  const style = getComputedStyle(drawn);
  const ink = plainColour(style.color);
  const lines = caption.flatMap((line) => wrapped(line, Math.floor((width - 2) * charactersPerPixel)));
  const top = margin + 26;
  const total = { width: width + 2 * margin, height: top + height + 14 + lines.length * lineHeight + margin };
  const text = (words: string, y: number, size: number, weight: number) =>
    `<text x="${margin}" y="${y}" fill="${ink}" font-family="${escaped(style.fontFamily)}" font-size="${size}" font-weight="${weight}">${escaped(words)}</text>`;
  const images = [...frame.querySelectorAll('canvas')].map((canvas) => {
    const box = canvas.getBoundingClientRect();
    const origin = drawn.getBoundingClientRect();
    return `<image x="${margin + box.x - origin.x}" y="${top + box.y - origin.y}" width="${box.width}" height="${box.height}" href="${canvas.toDataURL('image/png')}"/>`;
  });
  copy.setAttribute('x', String(margin));
  copy.setAttribute('y', String(top));
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(height));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${total.width}" height="${total.height}" viewBox="0 0 ${total.width} ${total.height}">`,
    `<title>${escaped(title)}</title>`,
    `<rect width="100%" height="100%" fill="#ffffff"/>`,
    text(title, margin + 12, 15, 600),
    ...images,
    new XMLSerializer().serializeToString(copy),
    ...lines.map((line, place) => text(line, top + height + 24 + place * lineHeight, 12, 400)),
    '</svg>',
  ].join('\n');
}

/** The same as a PNG of twice the size, sharp in print and on a wall. */
export async function figureImage(svg: string): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = 2 * image.naturalWidth;
    canvas.height = 2 * image.naturalHeight;
    canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) =>
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('The picture could not be made.')))),
    );
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** Lets the browser save a file. */
export function saveFile(content: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  // The browser has taken the address by then; it would hold the file until the page is left.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

function carryStyle(from: Element, to: Element): void {
  const style = getComputedStyle(from);
  for (const property of carried) {
    const value = style.getPropertyValue(property);
    if (value !== '')
      to.setAttribute(property, /^(?:fill|stroke)$/.test(property) ? plainColour(value) : value);
  }
  to.removeAttribute('class');
  to.removeAttribute('style');
  for (const [place, child] of [...from.children].entries()) carryStyle(child, to.children[place]!);
}

const known = new Map<string, string>();

/** A colour as #rrggbb or #rrggbbaa: drawing programs do not know oklch(). What is no colour ('none') stays. */
function plainColour(colour: string): string {
  if (!colour.includes('(')) return colour;
  const found = known.get(colour);
  if (found !== undefined) return found;
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 1;
  const pen = canvas.getContext('2d')!;
  pen.fillStyle = colour;
  pen.fillRect(0, 0, 1, 1);
  const [red, green, blue, alpha] = pen.getImageData(0, 0, 1, 1).data;
  const bytes = alpha === 255 ? [red, green, blue] : [red, green, blue, alpha];
  const plain = `#${bytes.map((byte) => byte!.toString(16).padStart(2, '0')).join('')}`;
  known.set(colour, plain);
  return plain;
}

function wrapped(text: string, length: number): string[] {
  const lines = [''];
  for (const word of text.split(' ')) {
    const line = lines.at(-1)!;
    if (line !== '' && line.length + 1 + word.length > length) lines.push(word);
    else lines[lines.length - 1] = line === '' ? word : `${line} ${word}`;
  }
  return lines;
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
