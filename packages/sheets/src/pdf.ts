/**
 * Sheets as PDF, printed by a browser: of what makes PDF, browsers alone were found to set Arabic
 * with figures in it rightly. For Node; a page never imports this face, since it prints by itself.
 */
export { printSheet, type PrintBrowser, type PrintOptions } from './print/print-sheet.ts';
export { sheetTypefaces } from './typefaces.ts';
