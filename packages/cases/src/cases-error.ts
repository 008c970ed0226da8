/** Why a store could not do what was asked. */
export type CasesErrorCode =
  /** No room is left where the store is kept. */
  | 'full'
  /** The store may be read only. */
  | 'read-only'
  /** What is kept there is damaged. */
  | 'damaged'
  /** Another program held the store for too long. */
  | 'busy'
  /** The store cannot be reached, or not be made. */
  | 'unreachable'
  /** The store was made by a newer version. */
  | 'newer'
  /** A change that no store could keep. */
  | 'not-a-change'
  /** The store has been closed. */
  | 'closed';

/** A store could not do what was asked; nothing of it was kept. */
export class CasesError extends Error {
  readonly code: CasesErrorCode;

  constructor(code: CasesErrorCode, message: string, cause?: unknown) {
    super(message, { cause });
    this.name = 'CasesError';
    this.code = code;
  }
}
