import type { Shortlist } from '@tiegel/contract';
import { printedUnit } from '@tiegel/contract/terms';
import { atomicToWeightPercent, type PairValue, type PriceList, spacedComposition } from '@tiegel/elements';
import { quantities } from '@tiegel/screening';
import { type ShortlistLine, shortlistLines } from './shortlistLines.ts';

/** What a reader sees of each alloy; everything else is in the program and in the table. */
const shown = [
  'density',
  'meltingTemperature',
  'mixingEnthalpy',
  'sizeMismatch',
  'valenceElectronConcentration',
  'omega',
  'cost',
];

/**
 * A shortlist as one page that opens without the program and loads nothing: no script, no picture,
 * styles inside, black on white, ready for A4. It says when it was made and that it does not change.
 */
export function shortlistPage(
  list: Shortlist,
  prices: PriceList | null,
  pairs: readonly PairValue[] = [],
  now = new Date(),
): string {
  const lines = shortlistLines(list, prices, pairs);
  const name = escaped(list.name.value);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${name}</title>
<style>${styles}</style>
</head>
<body>
<header>
<h1>${name}</h1>
<p>Shortlist of ${lines.length} ${lines.length === 1 ? 'alloy' : 'alloys'}, as of ${now.toISOString().slice(0, 16).replace('T', ' ')} UTC (change ${list.sequence}). This file does not change with the list.</p>
</header>
${lines.map((line) => entrySection(line, prices)).join('\n')}
<footer>
<p>Quantities are means over the elements by published formulas, at the usual conditions; the estimate of one solid solution was learnt from published alloys and knows nothing of processing.${pricesInWords(prices)}</p>
<p>Melting, powders and toxic or volatile elements are dangerous: this list is no instruction. Follow local codes and licensed practice.</p>
</footer>
</body>
</html>
`;
}

function entrySection(line: ShortlistLine, prices: PriceList | null): string {
  const { composition, status, addedBy, addedAt, notes, search } = line;
  const weights = atomicToWeightPercent(composition);
  const symbols = Object.keys(composition).sort();
  const cells = (values: Readonly<Record<string, number>>) =>
    symbols.map((symbol) => `<td>${values[symbol]!.toFixed(2)}</td>`).join('');
  return `<section>
<h2>${escaped(spacedComposition(composition))} <small>at.%</small></h2>
<p><strong>${status.value}</strong>${status.rivals.map(({ value, by }) => ` (${escaped(by)}: ${value})`).join('')} · added by ${escaped(addedBy)}, ${addedAt.slice(0, 10)}${search === null ? '' : ` · from search ${escaped(search)}`}</p>
<table><thead><tr><th></th>${symbols.map((symbol) => `<th scope="col">${symbol}</th>`).join('')}</tr></thead>
<tbody><tr><th scope="row">at.%</th>${cells(composition)}</tr><tr><th scope="row">wt.%</th>${cells(weights)}</tr></tbody></table>
<dl>${quantityItems(line, prices)}</dl>
${notes.length === 0 ? '' : `<ul>${notes.map(({ text, by, at }) => `<li>${escaped(text)} <small>${escaped(by)}, ${at.slice(0, 10)}</small></li>`).join('')}</ul>`}
</section>`;
}

function quantityItems({ quantities: values, phase }: ShortlistLine, prices: PriceList | null): string {
  const currency = prices?.currency ?? 'currency';
  const items = quantities
    .filter(({ id }) => shown.includes(id))
    .map(({ id, name, unit, decimals }) => {
      const value = values[id] ?? null;
      const printed =
        value === null
          ? '–'
          : `${value.toFixed(decimals)} ${printedUnit(unit).replace('currency', currency)}`;
      return `<div><dt>${escaped(name)}</dt><dd>${escaped(printed.trim())}</dd></div>`;
    });
  const estimate = phase.singleSolution === null ? 'no basis' : phase.singleSolution.toFixed(2);
  return [...items, `<div><dt>Estimate of one solid solution</dt><dd>${estimate}</dd></div>`].join('');
}

function pricesInWords(prices: PriceList | null): string {
  if (prices === null) return '';
  return ` Prices of ${prices.date}${prices.invented ? ', invented for demonstration' : ''}.`;
}

function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

const styles = `
@page { size: A4; margin: 16mm }
body { font: 14px/1.45 system-ui, sans-serif; font-variant-numeric: tabular-nums; max-width: 190mm; margin: 1.5rem auto; padding: 0 1rem; color: #111; background: #fff }
h1 { font-size: 20px; margin: 0 0 .25rem } h2 { font-size: 16px; margin: 0 0 .25rem } small { color: #555; font-weight: normal }
section { border-top: 1px solid #bbb; padding: .75rem 0; break-inside: avoid }
table { border-collapse: collapse; margin: .5rem 0 } th, td { padding: .1rem .75rem .1rem 0; text-align: right; font-weight: normal } th[scope=row] { text-align: left; color: #555 }
dl { display: grid; grid-template-columns: repeat(auto-fill, minmax(14rem, 1fr)); gap: .15rem 1rem; margin: .5rem 0 } dl div { display: flex; justify-content: space-between; gap: .5rem } dt { color: #555 } dd { margin: 0 }
footer { border-top: 1px solid #bbb; color: #444; font-size: 12.5px }
`;
