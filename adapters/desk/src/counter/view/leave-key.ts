import { html, type TemplateResult } from 'lit-html';
import { keyView } from '../../view/key.ts';
import { keyOf } from '../keys.ts';
import type { Shown } from './shown.ts';

/** The key that goes back from what was begun, with nothing changed. */
export function leaveKey({ words, act }: Pick<Shown, 'words' | 'act'>): TemplateResult {
  return html`<div class="keys row">
    ${keyView({
      label: words.leave,
      at: keyOf.leave,
      isSmall: true,
      press: () => {
        act.command('leave');
      },
    })}
  </div>`;
}
