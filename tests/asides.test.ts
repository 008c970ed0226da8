/**
 * What is said beside what matters is no fact and no kit, and takes nothing from what is told with
 * it: texts from common practice, no source; none of them is among what is learned from.
 */
import { describe, expect, test } from 'vitest';
import { understandIn } from './support/understand-in.ts';

/** The answers that are understood: `place=home, kit=voltmeter+helper`, or nothing. */
function told(locale: string, check: string | null, text: string): string {
  const understood = understandIn[locale]!(check, text);
  if (understood.type !== 'input') return '';
  return understood.inputs
    .flatMap((input) => (input.type === 'answers' ? input.answers : []))
    .map(({ check: id, value }) =>
      'value' in value ? `${id}=${value.value}` : `${id}=${value.join('+')}`,
    )
    .join(', ');
}

describe('a word or two amid talk of other things tell nothing', () => {
  test.each([
    ['en', 'the ice cream is a lost cause'],
    ['es', 'la comadre me está guardando sitio en la fila'],
    ['de', 'dienstbeginn war vor zehn minuten'],
    ['fr', "je suis infirmière à domicile, mes patients m'attendent"],
    ['pl', 'w serwisie obiecali auto zastępcze'],
    ['ar', 'أول سيارة بحياتي اشتريتها من تعبي'],
  ])('%s: "%s"', (locale, text) => {
    expect(told(locale, null, text)).toBe('');
  });
});

describe('who is spoken of is no helper', () => {
  test.each([
    ['en', 'my daughter has her driving theory at noon, ironic i know'],
    ['es', 'hoy es el examen de oposición de mi hija'],
    ['de', 'mein sohn hat gleich führerscheinprüfung und ich soll ihn bringen'],
    ['fr', "on fête l'Aïd chez mes parents à Sfax"],
    ['pl', 'kupiłem od sąsiada z naprzeciwka'],
    ['ar', 'مباراة ابني الأولى بالأكاديمية'],
  ])('%s: "%s"', (locale, text) => {
    expect(told(locale, 'kit', text)).toBe('');
  });
});

describe('what is told beside talk of other things is heard', () => {
  test.each([
    ['en', 'my boss is going mad and the car only clicks', 'complaint=rapid-clicking'],
    ['en', 'so annoyed, left the lights on all night like an idiot', 'history=lights-left-on'],
    ['es', 'me dejé las luces puestas toda la noche soy un desastre', 'history=lights-left-on'],
    ['de', 'hab das licht angelassen ich depp, muss zum flughafen', 'history=lights-left-on'],
    ['fr', "j'ai laissé les phares allumés toute la nuit comme un idiot", 'history=lights-left-on'],
    ['pl', 'zostawiłem światła na całą noc jak głupi', 'history=lights-left-on'],
    ['ar', 'متأخر عن الدوام والسيارة بس تطقطق', 'complaint=rapid-clicking'],
  ])('%s: "%s"', (locale, text, means) => {
    expect(told(locale, null, text)).toContain(means);
  });

  test.each([
    ['en', 'spare key, some spanners and jump leads', 'kit=boost-source+second-key+hand-tools'],
    ['en', 'no tools but my brother can help', 'kit=helper'],
    ['de', 'die frau kann den schlüssel drehen', 'kit=helper'],
    ['es', 'mi cuñado con unas pinzas', 'kit=boost-source+helper'],
  ])('%s, of kit: "%s"', (locale, text, means) => {
    expect(told(locale, 'kit', text)).toBe(means);
  });
});
