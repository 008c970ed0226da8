/** A text is no code of findings that can be used here. */
export class CodeError extends Error {
  /**
   * What is wrong: nothing was given, it is something else, a newer version wrote it, letters of it
   * are wrong or missing, or it speaks of a flow or a finding that is not known here.
   */
  readonly code: 'empty' | 'foreign' | 'too-new' | 'damaged' | 'other-flow' | 'unknown-finding';

  constructor(code: CodeError['code'], message: string) {
    super(message);
    this.name = 'CodeError';
    this.code = code;
  }
}
