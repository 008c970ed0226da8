import type { Sheet } from '../sheet.ts';
import { dated } from './dated-pdf.ts';
import { sheetHtml } from './sheet-html.ts';
import { sheetTypefaces } from '../typefaces.ts';

/** What of a browser is used; one started by playwright-core fits. */
export interface PrintBrowser {
  readonly newContext: (options: {
    readonly javaScriptEnabled: boolean;
    readonly offline: boolean;
  }) => Promise<{
    readonly newPage: () => Promise<{
      readonly setContent: (html: string) => Promise<void>;
      readonly evaluate: (expression: string) => Promise<unknown>;
      readonly pdf: (options: {
        readonly format: string;
        readonly printBackground: boolean;
        readonly tagged: boolean;
      }) => Promise<Uint8Array>;
    }>;
    readonly close: () => Promise<void>;
  }>;
}

/** How a sheet is printed. */
export interface PrintOptions {
  readonly browser: PrintBrowser;
  /** @defaultValue A4 */
  readonly paper?: 'A4' | 'Letter';
}

/**
 * Prints a sheet to PDF, tagged so that it can be read aloud, its typefaces within. Its dates are
 * that of the sheet, so that the same sheet printed by the same browser gives the same bytes.
 */
export async function printSheet(
  sheet: Sheet,
  { browser, paper = 'A4' }: PrintOptions,
): Promise<Uint8Array> {
  const html = sheetHtml(sheet, { typefaces: sheetTypefaces(sheet.direction) });
  const context = await browser.newContext({ javaScriptEnabled: false, offline: true });
  try {
    const page = await context.newPage();
    await page.setContent(html);
    // Letters whose typeface is not there yet are left out of what is printed.
    await page.evaluate('document.fonts.ready.then(() => undefined)');
    const pdf = await page.pdf({ format: paper, printBackground: true, tagged: true });
    return dated(pdf, sheet.made);
  } finally {
    await context.close();
  }
}
