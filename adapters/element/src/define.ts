/**
 * The element made known to a page.
 */
import { KeyturnCase, type ElementSetup } from './keyturn-case.ts';

/** Defines `<keyturn-case>`; a second script in the same page changes nothing. */
export function defineKeyturnCase(setup: ElementSetup): void {
  if (customElements.get('keyturn-case') !== undefined) return;
  customElements.define(
    'keyturn-case',
    class extends KeyturnCase {
      protected override readonly setup: ElementSetup = setup;
    },
  );
}
