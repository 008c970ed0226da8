/** The terminal's own words in one language; what a case says comes from its texts. */
export interface TerminalTexts {
  readonly title: (flow: string) => string;
  readonly goingOn: (at: string, answers: number) => string;
  readonly soFar: string;
  readonly torn: string;
  readonly demo: string;
  readonly demoEnd: string;
  readonly kept: (file: string, command: string) => string;
  readonly closedKept: (file: string) => string;
  readonly notKept: (reason: string) => string;
  readonly until: (time: string) => string;
  readonly notYet: (time: string, minutes: number) => string;
  readonly offer: (letters: string) => string;
  readonly prompt: {
    readonly choice: (count: number) => string;
    readonly choices: (count: number) => string;
    readonly date: (count: number) => string;
    readonly reading: (unit: string) => string;
    readonly lamp: string;
    readonly work: string;
    readonly confirm: string;
    readonly wait: string;
    readonly resume: string;
    readonly closed: string;
  };
  readonly expected: string;
  /** What is typed to say that something is not known. */
  readonly dontKnow: string;
  readonly helpNow: string;
  readonly help: readonly (readonly [typed: string, meaning: string])[];
}
