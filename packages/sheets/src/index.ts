// The sheets of a case.
export { caseSheet } from './case/case-sheet.ts';
export { technicianNote } from './case/technician-note.ts';
export { returnSlip } from './case/return-slip.ts';
export { fittingRecord } from './case/fitting-record.ts';
export { readyFrom } from './case/looked-at-again.ts';
export { sheetOf } from './case/sheet-of.ts';
export type { OnVehicle, SheetOptions, Sold } from './case/sheet-options.ts';
export type { Block, Fact, Finding, Picture, Sheet, SheetKind, SheetReading } from './sheet.ts';

// A sheet to print, to read and for machines.
export { sheetHtml, type HtmlOptions } from './print/sheet-html.ts';
export { noteParts, type NotePart } from './print/note-parts.ts';
export { sheetText } from './print/sheet-text.ts';
export { sheetJson } from './print/sheet-json.ts';

// The findings of a case as a short code, and back.
export { encodeFindings } from './code/encode-findings.ts';
export { decodeFindings } from './code/decode-findings.ts';
export { replayFindings, type ReplayedCase } from './code/replay-findings.ts';
export { CodeError } from './code/code-error.ts';
export type { CodedFindings } from './code/found.ts';
