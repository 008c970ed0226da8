/** Something given to `outcomes` cannot be used; the message says which file, where and why. */
export class OutcomesError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'OutcomesError';
  }
}
