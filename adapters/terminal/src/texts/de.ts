import type { TerminalTexts } from './terminal-words.ts';

/** The terminal's words in German. */
export const de: TerminalTexts = {
  title: (flow) => `KEYTURN: ${flow}`,
  goingOn: (at, answers) => `Der Fall vom ${at} geht weiter. Antworten bisher: ${String(answers)}.`,
  soFar: 'Was bisher bekannt ist',
  torn: 'Die letzte Zeile der Datei wurde beim Schreiben abgeschnitten, darum wird diese Antwort noch einmal gefragt.',
  demo: 'VORFÜHRUNG. Niemand antwortet, darum läuft ein erfundener Fall: Fahrzeug, Fehler und alle Zahlen sind erfunden. Rufen Sie das Programm in einem Terminal auf oder geben Sie ihm Zeilen zu lesen, um Ihren eigenen Fall zu haben.',
  demoEnd: 'Das war die Vorführung, mit erfundenem Fahrzeug und erfundenen Zahlen.',
  kept: (file, command) => `Der Fall ist in ${file} aufbewahrt. Weiter geht es mit:\n${command}`,
  closedKept: (file) => `Der Fall ist in ${file} aufbewahrt.`,
  notKept: (reason) =>
    `Der Fall kann gerade nicht in seine Datei geschrieben werden (${reason}). Sie können weitermachen; es wird mit jeder Antwort neu versucht.`,
  until: (time) => `Das Warten ist um ${time} vorbei.`,
  notYet: (time, minutes) =>
    `Noch nicht: noch ${String(minutes)} min, bis ${time}. Sagen Sie „fertig“, wenn die Zeit schon um ist.`,
  offer: (letters) => `(${letters} zum Auswählen, oder sagen Sie es anders; ? für Hilfe)`,
  prompt: {
    choice: (count) =>
      `(1${['', '', ' oder 2'][count] ?? ` bis ${String(count)}`}, oder ein Wort; ? für Hilfe)`,
    choices: (count) =>
      `(eins oder mehrere von 1 bis ${String(count)}, etwa 1 3, oder Wörter; ? für Hilfe)`,
    date: (count) => `(ein Tag wie 2026-01-31, oder 1 bis ${String(count)}; ? für Hilfe)`,
    reading: (unit) => `(der Wert in ${unit}, oder mehrere Messwerte mit Namen; ? für Hilfe)`,
    lamp: '(was die Lampe zeigt; ? für Hilfe)',
    work: '(1 oder „fertig“, wenn es getan ist; ? für Hilfe)',
    confirm: '(1 ja, oder 2 kann nicht; ? für Hilfe)',
    wait: '(1 oder „fertig“, wenn die Zeit um ist, Eingabetaste für die Uhr; ? für Hilfe)',
    closed: '(Eingabetaste zum Beenden, oder „zurück“, oder „Korrektur“ mit der falschen Antwort)',
    resume: '(1 oder „vorbei“, wenn es gefahrlos weitergeht; ? für Hilfe)',
  },
  expected: 'erwartet',
  dontKnow: 'weiß nicht',
  helpNow: 'Sie können jederzeit eingeben',
  help: [
    ['warum', 'wozu die Frage dient und was jede Antwort bedeuten würde'],
    ['Zahlen', 'jeder Messwert mit seiner Unsicherheit, was zu erwarten ist, und die Quellen'],
    ['zurück', 'die letzte Antwort zurücknehmen und neu gefragt werden'],
    ['Korrektur Ruhe 12,1', 'eine frühere Antwort berichtigen'],
    ['weiß nicht', 'es bleibt offen, und der Fall geht weiter'],
    ['kann nicht', 'es geht nicht oder ist nicht sicher; ein anderer Weg wird gesucht'],
    ['Ruhe 12,5, 170 A', 'mehrere Messwerte in einer Zeile, mit Namen oder Einheit'],
    ['ich habe eine Stromzange', 'Ihre Ausrüstung hat sich geändert'],
    ['wiederholen', 'die Frage noch einmal'],
    ['Mensch', 'den Fall übergeben'],
    ['stopp', 'den Fall beiseitelegen; er bleibt erhalten und geht später weiter'],
    ['English, polski, …', 'in einer anderen Sprache weiter'],
    ['Rauch, Benzingeruch, verletzt', 'jede Gefahr, in Ihren Worten, jederzeit'],
  ],
};
