import type { Sheet } from '../sheet.ts';
import { isolated } from '../words/sheet-words-in.ts';
import { escapeCss } from './escape-html.ts';
import { familyNames, type Typeface } from './typeface.ts';

/** The number of a page and of all; from left to right in every language, as figures are. */
function pageOfPages(direction: Sheet['direction']): string {
  const numbers = "counter(page) ' / ' counter(pages)";
  return direction === 'rtl' ? `'\u2066' ${numbers} '\u2069'` : numbers;
}

/**
 * The look of a sheet on paper: black on white, the findings as a printed strip, so that it reads
 * the same from a cheap printer. The page's own size is left to the printer: A4 or Letter. Contextual
 * alternates (`calt`) are off: they have no code point of their own, and an Arabic one could not be
 * copied out of a PDF. The joined forms of letters are not among them. What stands at the very edge
 * of the page's area is cut by a part of a pixel, so that the body keeps off it.
 */
export function sheetCss(
  { direction, kind, title, case: kase }: Sheet,
  typefaces: readonly Typeface[],
): string {
  const [begin, end] = direction === 'rtl' ? ['right', 'left'] : ['left', 'right'];
  // A return has the number of its case in its own foot.
  const belongsTo = kind === 'return' ? title : `${title} · ${isolated(kase.id, direction)}`;
  return `
*{box-sizing:border-box;margin:0;padding:0}
@page{margin:${kind === 'return' ? '7mm 13mm 10mm' : '12mm 14mm 15mm'};
@bottom-${begin}{content:'${escapeCss(belongsTo)}';font:8pt ${familyNames(typefaces)};color:#3f3a33}
@bottom-${end}{content:${pageOfPages(direction)};font:8pt ${familyNames(typefaces)};color:#3f3a33}}
body{padding-inline:.4mm;font:9.5pt/1.35 ${familyNames(typefaces)};color:#000;background:#fff;font-variant-ligatures:no-contextual;overflow-wrap:anywhere;-webkit-print-color-adjust:exact;print-color-adjust:exact}
@media screen{body{max-width:190mm;margin:0 auto;padding:10mm 4mm}}
ul,ol{list-style:none}
h1{font-size:20pt;line-height:1.1}
h2{font-size:11pt;line-height:1.25;margin-block-end:1.2mm;break-after:avoid}
section{margin-block-start:4.5mm}
svg{display:block;width:100%;height:auto}
svg{font-family:inherit}
header{display:flex;justify-content:space-between;align-items:flex-start;gap:8mm;border-block-end:1.2mm solid #000;padding-block-end:3mm}
.subject{font-size:11pt;color:#3f3a33}
.code{flex:none;inline-size:38mm;font-size:7pt;line-height:1.2;text-align:center;color:#3f3a33}
dl>div{display:flex;gap:2mm}
dt{flex:none;max-inline-size:64%;overflow-wrap:break-word;color:#3f3a33}
dt::after{content:':'}
header dl{margin-block-start:2mm}
.lead{border:.8mm solid #000;padding:2.5mm 3.5mm;break-inside:avoid}
.lead h2{font-size:14pt;line-height:1.2;margin:0}
.lead p{margin-block-start:1mm}
.facts dl{columns:2;column-gap:8mm}
.facts dl>div{break-inside:avoid}
.facts dl>div.long{column-span:all}
.lines,.ranking,.cautions,.picture,.fields{break-inside:avoid}
.fields,footer{break-before:avoid}
.lines li{display:grid;grid-template-columns:3.5mm 1fr}
.lines li+li{margin-block-start:.6mm}
.lines li::before{content:'';margin-block-start:.55em;inline-size:1.8mm;block-size:.5mm;background:#000}
.strip ol{padding-inline:5mm;border-block:.3mm solid #8a8377;border-inline:2.4mm dotted #b9b2a5;-webkit-box-decoration-break:clone;box-decoration-break:clone}
.strip ol>li{display:grid;grid-template-columns:7mm 1fr;gap:0 1mm;padding-block:.9mm;break-inside:avoid}
.strip ol>li+li{border-block-start:.2mm dashed #8a8377}
.strip ol>li.read{grid-template-columns:7mm 1fr 82mm}
.number{color:#3f3a33;font-variant-numeric:tabular-nums}
.name{color:#3f3a33}
.name::after{content:':'}
.strip b{font-weight:700}
.read b{font-size:11pt;white-space:nowrap}
.notes{font-size:7.5pt;line-height:1.3;color:#3f3a33;margin-block-start:.8mm}
.ranking .drawn{inline-size:92mm}
.picture .drawn{inline-size:92mm;margin-inline:auto}
.outcome li,.refund li:last-child{font-weight:700}
.refund li{font-variant-numeric:tabular-nums}
.cautions li{border-inline-start:1mm solid #000;padding-inline-start:2.5mm}
.cautions li+li{margin-block-start:1mm}
.cautions .danger,.cautions .warning{border-inline-start-width:2mm}
.field{display:flex;align-items:flex-end;gap:3mm;min-block-size:9mm}
.field .line{flex:1;min-inline-size:35mm;border-block-end:.3mm solid #000}
footer{margin-block-start:5mm;border-block-start:.3mm solid #8a8377;padding-block-start:1.5mm;font-size:8pt;color:#3f3a33}
.technician .lead h2{font-size:19pt}
.technician .lead p{font-size:12pt}
.rows dl>div{display:grid;grid-template-columns:32mm 1fr;gap:0 3mm;padding-block:2mm;border-block-end:.2mm dashed #8a8377;font-size:12pt;line-height:1.3;break-inside:avoid}
.rows dt{grid-row:1/99;max-inline-size:none;font-weight:700;color:#000}
.rows dd{grid-column:2}
.rows .measured dd{font-variant-numeric:tabular-nums}
.return{font-size:8.2pt;line-height:1.2}
.return section{margin-block-start:1.3mm}
.return h1{font-size:17pt}
.return h2{font-size:9.6pt;margin-block-end:.4mm}
.return header{padding-block-end:1mm}
.return header dl{columns:2;column-gap:8mm;margin-block-start:1.5mm}
.return header div{flex:1}
.return header dd,.return .refund li:last-child{font-weight:700}
.return .code{inline-size:22mm;font-size:6pt}
.return .lead{padding:1mm 3.5mm}
.return .lead h2{font-size:14pt}
.return .terms,.return .seen{font-size:7.6pt;line-height:1.18}
.return .terms dl,.return .seen dl{columns:3;column-gap:5mm}
.return .strip ol>li{padding-block:.2mm}
.return .strip ol>li.read{grid-template-columns:6mm 1fr 62mm;align-items:center}
.return .strip .drawn{margin:0}
.return .read b{font-size:9.6pt}
.return .strip li>div{line-height:1.2}
.return .notes{margin-block-start:.2mm;font-size:7pt;line-height:1.2}
[dir=ltr] .return .notes li{display:inline}
[dir=ltr] .return .notes li+li{margin-inline-start:3mm}
.return .fields{display:grid;grid-template-columns:1fr 1fr;gap:0 8mm}
.return .field{min-block-size:6.5mm}
.return .field .line{min-inline-size:20mm}
.return .rows dl>div{padding-block:1mm;font-size:10pt;grid-template-columns:28mm 1fr}
.return .rows dd+dd{font-size:8.2pt}
.return .fields.again{grid-template-columns:1fr}
.return footer{margin-block-start:1.8mm;padding-block-start:1mm;font-size:7pt}
`;
}
