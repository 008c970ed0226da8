import type { TerminalTexts } from './terminal-words.ts';

/** The terminal's words in Polish. */
export const pl: TerminalTexts = {
  title: (flow) => `KEYTURN: ${flow}`,
  goingOn: (at, answers) =>
    `Dalszy ciąg sprawy z ${at}. Dotychczasowe odpowiedzi: ${String(answers)}.`,
  soFar: 'Co już wiadomo',
  torn: 'Ostatni wiersz pliku został ucięty podczas zapisu, dlatego ta odpowiedź zostanie zadana ponownie.',
  demo: 'POKAZ. Nikt nie odpowiada, więc odtwarzana jest zmyślona sprawa: pojazd, jego usterka i wszystkie liczby są zmyślone. Aby mieć własną sprawę, należy uruchomić program w terminalu albo podać mu wiersze do czytania.',
  demoEnd: 'To był pokaz, ze zmyślonym pojazdem i zmyślonymi liczbami.',
  kept: (file, command) => `Sprawa jest zapisana w ${file}. Dalszy ciąg poleceniem:\n${command}`,
  closedKept: (file) => `Sprawa jest zapisana w ${file}.`,
  notKept: (reason) =>
    `Sprawy nie można teraz zapisać w pliku (${reason}). Można iść dalej; przy każdej odpowiedzi zapis jest ponawiany.`,
  until: (time) => `Czekanie kończy się o ${time}.`,
  notYet: (time, minutes) =>
    `Jeszcze nie: zostało ${String(minutes)} min, do ${time}. Jeśli czas już minął, proszę napisać „gotowe”.`,
  offer: (letters) => `(${letters} aby wybrać, albo innymi słowami; ? – pomoc)`,
  prompt: {
    choice: (count) =>
      `(1${['', '', ' lub 2'][count] ?? ` do ${String(count)}`}, albo słowo; ? – pomoc)`,
    choices: (count) =>
      `(jedno lub kilka od 1 do ${String(count)}, np. 1 3, albo słowa; ? – pomoc)`,
    date: (count) => `(dzień, na przykład 2026-01-31, albo od 1 do ${String(count)}; ? – pomoc)`,
    reading: (unit) => `(wynik w ${unit}, albo kilka pomiarów z nazwą; ? – pomoc)`,
    lamp: '(co pokazuje lampka; ? – pomoc)',
    work: '(1 lub „gotowe”, gdy zrobione; ? – pomoc)',
    confirm: '(1 tak, albo 2 nie mogę; ? – pomoc)',
    wait: '(1 lub „gotowe”, gdy czas minął, Enter – zegar; ? – pomoc)',
    closed: '(Enter – wyjście, albo „wstecz”, albo „poprawka” z błędną odpowiedzią)',
    resume: '(1 lub „już po wszystkim”, gdy można bezpiecznie iść dalej; ? – pomoc)',
  },
  expected: 'oczekiwane',
  dontKnow: 'nie wiem',
  helpNow: 'Zawsze można napisać',
  help: [
    ['dlaczego', 'po co jest pytanie i co znaczyłaby każda odpowiedź'],
    ['liczby', 'każdy pomiar z niepewnością, czego oczekiwać, i źródła'],
    ['wstecz', 'cofnąć ostatnią odpowiedź i odpowiedzieć jeszcze raz'],
    ['poprawka spoczynek 12,1', 'poprawić wcześniejszą odpowiedź'],
    ['nie wiem', 'zostaje otwarte, a sprawa toczy się dalej'],
    ['nie mogę', 'to niemożliwe albo niebezpieczne; szukamy innej drogi'],
    ['spoczynek 12,5, 170 A', 'kilka pomiarów w jednym wierszu, z nazwą lub jednostką'],
    ['mam miernik cęgowy', 'zmienił się sprzęt pod ręką'],
    ['powtórz', 'pytanie jeszcze raz'],
    ['człowiek', 'przekazać sprawę'],
    ['stop', 'odłożyć sprawę; zostaje zapisana i można do niej wrócić'],
    ['English, Deutsch, …', 'dalej w innym języku'],
    ['dym, zapach paliwa, ranny', 'każde zagrożenie, własnymi słowami, w każdej chwili'],
  ],
};
