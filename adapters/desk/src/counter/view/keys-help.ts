import { html, type TemplateResult } from 'lit-html';
import { keyView } from '../../view/key.ts';
import { keyOf, unknownInField } from '../keys.ts';
import type { Shown } from './shown.ts';

/** What each key does, and the switch that turns single keys off. */
export function keysHelp({ words, act, hasKeys }: Shown): TemplateResult {
  const rows: readonly (readonly [string, string])[] = [
    ['1 … 9', words.keyNumber],
    [keyOf.take, words.keyTake],
    [`${keyOf['dont-know']}  ${unknownInField}`, words.keyDontKnow],
    [keyOf.cannot, words.keyCannot],
    [keyOf.correct, words.keyCorrect],
    [keyOf.how, words.keyHow],
    [keyOf.kit, words.keyKit],
    [keyOf.new, words.newReturn],
    [keyOf.next, words.nextReturn],
    [keyOf.aside, words.putAside],
    [keyOf.danger, words.danger],
    [keyOf.scan, words.keyScan],
    [keyOf.leave, words.keyLeave],
  ];
  return html`<section class="report">
    <h2 id="asked" tabindex="-1">${words.keysHelp}</h2>
    <p>${words.keysIntro}</p>
    <table>
      ${rows.map(
        ([key, what]) =>
          html`<tr>
            <th scope="row"><kbd>${key}</kbd></th>
            <td>${what}</td>
          </tr>`,
      )}
    </table>
    <div class="keys row">
      ${backKey({ words, act })}
      ${keyView({
        label: hasKeys ? words.keysOn : words.keysOff,
        isPicked: hasKeys,
        press: act.switchKeys,
      })}
    </div>
  </section>`;
}

/** The key that leads back to the counter. */
export function backKey({ words, act }: Pick<Shown, 'words' | 'act'>): TemplateResult {
  return keyView({
    label: words.backToCounter,
    at: keyOf.leave,
    isMain: true,
    press: () => {
      act.go('counter');
    },
  });
}
