import type { Sheet } from '../sheet.ts';

/** A sheet as JSON for other programs; `@keyturn/sheets/sheet.schema.json` says its form. */
export function sheetJson(sheet: Sheet): string {
  return `${JSON.stringify(sheet, undefined, 2)}\n`;
}
