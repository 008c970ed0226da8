/**
 * The slip of a return as it is printed.
 */
import type { Sheet } from '@keyturn/sheets';
import { fill } from '../../wording.ts';
import type { CounterVoice } from '../counter-voice.ts';
import type { CounterEngine } from '../engine/counter-engine.ts';
import type { CounterBook } from '../store/counter-book.ts';
import type { CounterWords } from '../words/counter-words.ts';
import type { CounterReturn } from './counter-return.ts';

/** What would turn the decision is not for the customer to read. */
const isForCustomer = ({ id }: Sheet['blocks'][number]): boolean => id !== 'change';

/** What still holds where a lead takes the part back, whatever the terms say. */
const keptAsGoodwill = ['measure', 'rights', 'seen', 'found', 'on-vehicle', 'signed'];

/** Writes the slip of a return at an instant, ISO 8601, in the language of the counter. */
export async function slipOf(
  { sitting, name, number, receipt, vehicle, aside, goodwill }: CounterReturn,
  made: string,
  by: { readonly engine: CounterEngine; readonly voice: CounterVoice; readonly book: CounterBook },
): Promise<Sheet> {
  const { timeZone: here } = new Intl.DateTimeFormat().resolvedOptions();
  const whole = await by.engine.slip(sitting, {
    made,
    locale: by.voice.tag,
    timeZone: by.book.shop?.policy['time-zone'] ?? here,
    sold: { name, number, receipt },
    ...(vehicle === null ? {} : { vehicleCode: vehicle.code }),
    ...(aside === null ? {} : { aside }),
  });
  const sheet = { ...whole, blocks: whole.blocks.filter(isForCustomer) };
  return goodwill === null ? sheet : asGoodwill(sheet, by.voice.words, goodwill);
}

/** The slip of a part that a lead takes back, by name; it tells no amount. */
function asGoodwill(sheet: Sheet, words: CounterWords, name: string): Sheet {
  return {
    ...sheet,
    lead: { title: words.goodwillTitle, text: fill(words.byName, { name }) },
    blocks: sheet.blocks.filter(({ id }) => keptAsGoodwill.includes(id)),
  };
}
