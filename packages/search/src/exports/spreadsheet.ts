import type { Readable } from 'node:stream';
import type { Export } from './export.ts';
import { type ExportColumn, exportColumns, headOf } from './exportColumns.ts';
import { provenanceTexts } from './provenance.ts';
import { type ZipEntry, zipFile } from './zipFile.ts';

/** A sheet has no more rows than this (ECMA-376, as every program has it), one of which is the head. */
export const mostSpreadsheetRows = 2 ** 20 - 1;

/** Cells of a spreadsheet hold no more characters than this. */
const longestText = 32_767;

const namespace = 'http://schemas.openxmlformats.org';
const main = `${namespace}/spreadsheetml/2006/main`;
const relationships = `${namespace}/officeDocument/2006/relationships`;
const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/**
 * Candidates as an Office Open XML workbook, written as its reader takes it: a sheet of candidates
 * with units in its head, which stays in sight, and a sheet of all that they depend on. Numbers in
 * full double precision, an empty cell where there is no value.
 * @source ECMA-376, part 1 (SpreadsheetML; the least that a workbook needs, from memory)
 */
export function spreadsheet(one: Export): Readable {
  return zipFile(parts(one));
}

function* parts({ head, about, rows }: Export): Generator<ZipEntry> {
  const file = (name: string, text: string): ZipEntry => ({ name, text: [declaration, text] });
  yield file('[Content_Types].xml', contentTypes);
  yield file('_rels/.rels', relations([['officeDocument', 'xl/workbook.xml']]));
  yield file('xl/workbook.xml', workbook);
  yield file(
    'xl/_rels/workbook.xml.rels',
    relations([
      ['worksheet', 'worksheets/sheet1.xml'],
      ['worksheet', 'worksheets/sheet2.xml'],
      ['styles', 'styles.xml'],
    ]),
  );
  yield file('xl/styles.xml', styles);
  // What they depend on is small and comes first: whoever stops reading has it.
  yield { name: 'xl/worksheets/sheet2.xml', text: provenanceSheet(about) };
  yield { name: 'xl/worksheets/sheet1.xml', text: candidateSheet(exportColumns(head), rows) };
}

function* candidateSheet(columns: readonly ExportColumn[], rows: Export['rows']): Generator<string> {
  yield declaration;
  yield `<worksheet xmlns="${main}"><sheetViews><sheetView workbookViewId="0" tabSelected="1">`;
  yield '<pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews><cols>';
  for (const [place, { name }] of columns.entries()) {
    const width = name === 'composition' ? 34 : name.length > 2 ? 14 : 8;
    yield `<col min="${place + 1}" max="${place + 1}" width="${width}" customWidth="1"/>`;
  }
  yield '</cols><sheetData><row>';
  for (const column of columns) yield text(headOf(column), 1);
  yield '</row>';
  for (const candidate of rows) {
    yield `<row>${columns.map(({ value }) => cell(value(candidate))).join('')}</row>`;
  }
  yield '</sheetData></worksheet>';
}

function* provenanceSheet(about: Export['about']): Generator<string> {
  yield `${declaration}<worksheet xmlns="${main}"><cols><col min="1" max="1" width="18" customWidth="1"/>`;
  yield '<col min="2" max="2" width="120" customWidth="1"/></cols><sheetData>';
  for (const [key, words] of provenanceTexts(about)) yield `<row>${text(key, 1)}${text(words, 0)}</row>`;
  yield '</sheetData></worksheet>';
}

function cell(value: number | string | null): string {
  if (value === null) return '<c/>';
  return typeof value === 'number' ? `<c><v>${value}</v></c>` : text(value, 0);
}

/** A text in its cell; style 1 is bold. */
function text(words: string, style: 0 | 1): string {
  const escaped = words
    .slice(0, longestText)
    .replace(/[&<>]/g, (sign) => `&#${sign.charCodeAt(0)};`)
    // Control characters have no place in XML, nor have U+FFFE and U+FFFF.
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is meant
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '');
  return `<c s="${style}" t="inlineStr"><is><t xml:space="preserve">${escaped}</t></is></c>`;
}

function relations(all: readonly (readonly [kind: string, target: string])[]): string {
  const each = all.map(
    ([kind, target], place) =>
      `<Relationship Id="rId${place + 1}" Type="${relationships}/${kind}" Target="${target}"/>`,
  );
  return `<Relationships xmlns="${namespace}/package/2006/relationships">${each.join('')}</Relationships>`;
}

const spreadsheetType = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const contentTypes =
  `<Types xmlns="${namespace}/package/2006/content-types">` +
  '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
  '<Default Extension="xml" ContentType="application/xml"/>' +
  `<Override PartName="/xl/workbook.xml" ContentType="${spreadsheetType}.sheet.main+xml"/>` +
  `<Override PartName="/xl/worksheets/sheet1.xml" ContentType="${spreadsheetType}.worksheet+xml"/>` +
  `<Override PartName="/xl/worksheets/sheet2.xml" ContentType="${spreadsheetType}.worksheet+xml"/>` +
  `<Override PartName="/xl/styles.xml" ContentType="${spreadsheetType}.styles+xml"/></Types>`;

const workbook =
  `<workbook xmlns="${main}" xmlns:r="${relationships}"><sheets>` +
  '<sheet name="Candidates" sheetId="1" r:id="rId1"/>' +
  '<sheet name="What they depend on" sheetId="2" r:id="rId2"/></sheets></workbook>';

/** Two styles: plain, and bold for heads. */
const styles =
  `<styleSheet xmlns="${main}"><fonts count="2"><font><sz val="11"/><name val="Calibri"/></font>` +
  '<font><b/><sz val="11"/><name val="Calibri"/></font></fonts>' +
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  '<cellXfs count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>' +
  '<xf numFmtId="0" fontId="1" fillId="0" borderId="0" xfId="0" applyFont="1"/></cellXfs></styleSheet>';
