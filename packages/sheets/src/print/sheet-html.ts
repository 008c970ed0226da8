/**
 * A sheet as one HTML file that prints on A4 and Letter: no script, nothing from elsewhere.
 */
import type { Block, Fact, Finding, Picture, Sheet } from '../sheet.ts';
import { escapeHtml } from './escape-html.ts';
import { noteParts } from './note-parts.ts';
import { sheetCss } from './sheet-css.ts';
import { typefaceCss, type Typeface } from './typeface.ts';

/** How the file is made. */
export interface HtmlOptions {
  /**
   * Typefaces put into the file, the first that has a letter taking it.
   *
   * @defaultValue none: those of the machine that shows it
   */
  readonly typefaces?: readonly Typeface[];
}

/** Nothing is loaded and nothing runs, whatever a text of the case may hold. */
const policy =
  "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:; base-uri 'none'; form-action 'none'";

/** The sheet as a whole HTML file. Pure; the same sheet gives the same bytes. */
export function sheetHtml(sheet: Sheet, { typefaces = [] }: HtmlOptions = {}): string {
  const { locale, direction, title, case: kase, kind, foot } = sheet;
  return [
    '<!doctype html>',
    `<html lang="${escapeHtml(locale)}" dir="${direction}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    '<meta name="viewport" content="width=device-width">',
    `<title>${escapeHtml(`${title} ${kase.id}`)}</title>`,
    `<style>${typefaceCss(typefaces)}${sheetCss(sheet, typefaces)}</style>`,
    '</head>',
    `<body class="${kind}">`,
    head(sheet),
    lead(sheet),
    ...sheet.blocks.map(block),
    `<footer>${foot.map((line) => element('p', line)).join('')}</footer>`,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

function element(name: string, text: string, className?: string): string {
  const said = className === undefined ? '' : ` class="${className}"`;
  return `<${name}${said}>${escapeHtml(text)}</${name}>`;
}

function head({ title, subject, head: facts, code }: Sheet): string {
  return [
    '<header>',
    '<div>',
    element('p', subject, 'subject'),
    element('h1', title),
    factList(facts),
    '</div>',
    `<figure class="code">${code.picture.svg}${element('figcaption', code.caption)}</figure>`,
    '</header>',
  ].join('');
}

function lead({ lead: { title, text } }: Sheet): string {
  return `<section class="lead">${element('h2', title)}${text === '' ? '' : element('p', text)}</section>`;
}

/** From so many letters on a fact has a line of its own below the columns: in one of them it is a ribbon. */
const longFact = 60;

function factList(facts: readonly Fact[]): string {
  const rows = facts.map(
    ({ label, text }) =>
      `<div${text.length < longFact ? '' : ' class="long"'}>${element('dt', label)}<dd><bdi>${escapeHtml(text)}</bdi></dd></div>`,
  );
  return `<dl>${rows.join('')}</dl>`;
}

function block(one: Block): string {
  const heading = one.heading === '' ? '' : element('h2', one.heading);
  return `<section class="${one.kind} ${one.id}">${heading}${contents(one)}</section>`;
}

function contents(one: Block): string {
  switch (one.kind) {
    case 'facts':
      return factList(one.facts);
    case 'lines':
      return list(one.lines);
    case 'rows':
      return `<dl>${one.rows.map(({ id, label, lines }) => `<div class="${id}">${element('dt', label)}${lines.map((line) => element('dd', line)).join('')}</div>`).join('')}</dl>`;
    case 'strip':
      return `<ol>${one.findings.map(finding).join('')}</ol>`;
    case 'ranking':
    case 'picture':
      return picture(one.picture);
    case 'cautions':
      return `<ul>${one.cautions.map(({ word, said, text }) => `<li class="${word}">${element('b', `${said}:`)} ${element('span', text)}</li>`).join('')}</ul>`;
    case 'fields':
      return one.fields
        .map(
          ({ label }) => `<p class="field">${element('span', label)}<span class="line"></span></p>`,
        )
        .join('');
  }
}

function list(lines: readonly string[]): string {
  return `<ul>${lines.map((line) => element('li', line)).join('')}</ul>`;
}

function finding({ number, name, said, means, notes, cited, reading }: Finding): string {
  const ruler = reading?.ruler;
  const told = [
    `<p><span class="name">${escapeHtml(name)}</span> <b><bdi>${escapeHtml(said)}</bdi></b></p>`,
    means === '' ? '' : element('p', means, 'means'),
    notes.length === 0
      ? ''
      : `<ul class="notes">${notes.map((note) => `<li>${noteHtml(note, cited)}</li>`).join('')}</ul>`,
  ].join('');
  const printed = String(number).padStart(2, '0');
  return `<li${ruler === undefined ? '' : ' class="read"'}><span class="number">${printed}</span><div>${told}</div>${ruler === undefined ? '' : picture(ruler)}</li>`;
}

/** A note in which what is cited in English is marked so, and kept apart from the words around it. */
function noteHtml(note: string, cited: readonly string[]): string {
  return noteParts(note, cited)
    .map(({ text, isCited }) =>
      isCited ? `<bdi lang="en" dir="ltr">${escapeHtml(text)}</bdi>` : escapeHtml(text),
    )
    .join('');
}

function picture({ svg }: Picture): string {
  return `<div class="drawn">${svg}</div>`;
}
