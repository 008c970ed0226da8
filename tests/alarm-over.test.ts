/**
 * How a danger ends, in every language: it is over when somebody says so or that all are safe, never
 * because its warning was read; and one that never was is taken back with what it forbade.
 */
import { openCase, positionOf, turn, type Case } from '@keyturn/core';
import { hearLine, type Heard } from '@keyturn/conversation';
import { createSpeaker } from '@keyturn/language';
import { shippedFlow } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';

const at = '2026-01-01T08:00:00Z';

/** A driver at home, in one language, who hears of a danger and types. */
function spokenTo(locale: string) {
  const { chart, texts } = shippedFlow('no-start', locale);
  const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
  const context = { place: 'home', vehicle: { fuel: 'petrol' } };
  const answers = [{ check: 'scene', value: ['safe'] }];
  const opened = openCase(chart, { id: 'c', at, context, answers }).case;
  const raised = (interrupt: string): Case =>
    turn(chart, opened, { at, input: { type: 'interrupt', interrupt } }).case;
  const say = (kase: Case, line: string): Heard =>
    hearLine({ chart, speaker }, { case: kase, offers: [] }, { at, line });
  const resumed = (kase: Case): Case => turn(chart, kase, { at, input: { type: 'resume' } }).case;
  return { raised, resumed, say, speaker };
}

/** What is said of a danger in each language. */
const said: Readonly<
  Record<
    string,
    {
      readonly read: readonly string[];
      readonly over: readonly string[];
      readonly never: readonly string[];
      readonly neverSmoke: readonly string[];
      readonly noMore: readonly string[];
    }
  >
> = {
  en: {
    read: ['ok', 'yes', 'okay thanks', 'thanks', 'got it', 'done', 'carry on', 'is it over?'],
    over: [
      'it is over',
      'yes, it is over',
      'ok, we are all safe',
      'everyone is safe',
      'the smoke is gone',
    ],
    never: [
      'false alarm',
      'sorry, false alarm',
      'nonsense, it is a diesel',
      'that was wrong',
      'I never said that',
    ],
    neverSmoke: ['there was no smoke, it was the neighbours bbq', 'there never was any smoke'],
    noMore: ['no more smoke', 'there is no smoke', 'there was no fire, the smoke is gone'],
  },
  es: {
    read: ['ok', 'sí', 'vale, gracias', 'gracias', 'entendido', 'hecho', 'seguimos', '¿ya pasó?'],
    over: ['ya pasó', 'sí, ya pasó', 'estamos todos a salvo', 'los bomberos dicen que es seguro'],
    never: ['falsa alarma', 'fue una falsa alarma', 'tonterías, es diésel', 'eso no es verdad'],
    neverSmoke: ['no hubo humo, era la barbacoa del vecino', 'nunca hubo humo'],
    noMore: ['no hay humo'],
  },
  de: {
    read: [
      'ok',
      'ja',
      'okay danke',
      'danke',
      'verstanden',
      'alles klar',
      'weiter',
      'erledigt',
      'ist es vorbei?',
    ],
    over: [
      'es ist vorbei',
      'ja, es ist vorbei',
      'wir sind alle in Sicherheit',
      'der Rauch ist weg',
    ],
    never: ['Fehlalarm', 'war ein Fehlalarm', 'Quatsch, ist ein Diesel', 'das war falsch'],
    neverSmoke: ['es gab keinen Rauch, das war der Grill vom Nachbarn', 'da war nie Rauch'],
    noMore: ['kein Rauch mehr', 'es ist kein Rauch da'],
  },
  fr: {
    read: [
      'ok',
      'oui',
      'd’accord merci',
      'merci',
      'compris',
      'c’est fait',
      'on continue',
      'on peut continuer ?',
    ],
    over: ['c’est fini', 'oui, c’est fini', 'tout le monde est en sécurité', 'plus de fumée'],
    never: [
      'fausse alerte',
      'c’était une fausse alerte',
      'n’importe quoi, c’est un diesel',
      'c’est faux',
    ],
    neverSmoke: [
      'il n’y a jamais eu de fumée, c’était le barbecue du voisin',
      'il n’y avait pas de fumée',
    ],
    noMore: ['je ne vois pas de fumée'],
  },
  pl: {
    read: [
      'ok',
      'tak',
      'dobrze, dziękuję',
      'dzięki',
      'rozumiem',
      'zrobione',
      'dalej',
      'już po wszystkim?',
    ],
    over: [
      'już po wszystkim',
      'tak, już po wszystkim',
      'wszyscy jesteśmy bezpieczni',
      'nie ma dymu',
    ],
    never: ['fałszywy alarm', 'to był fałszywy alarm', 'bzdura, to diesel', 'to nieprawda'],
    neverSmoke: ['nigdy nie było dymu, to grill sąsiada', 'nie było żadnego dymu'],
    noMore: ['nie widzę dymu'],
  },
  ar: {
    read: ['ok', 'نعم', 'تمام شكرا', 'شكرا', 'مفهوم', 'تم', 'نكمل', 'انتهى الأمر؟'],
    over: ['انتهى الأمر', 'نعم انتهى الأمر', 'كلنا بأمان', 'زال الخطر'],
    never: ['إنذار كاذب', 'كان إنذار كاذب', 'كلام فارغ، ديزل', 'هذا غلط'],
    neverSmoke: ['لم يكن هناك دخان', 'ما كان في دخان، شواء الجيران'],
    noMore: ['لا أرى دخان'],
  },
};

describe.each(Object.entries(said))(
  'a danger in %s',
  (locale, { read, over, never, neverSmoke, noMore }) => {
    const { raised, resumed, say, speaker } = spokenTo(locale);
    const stands = { awaiting: 'resume', interrupt: 'smoke' };

    test.each(read)('"%s" ends none, and says what is waited for', (line) => {
      const heard = say(raised('smoke'), line);
      expect(positionOf(heard.case)).toEqual(stands);
      const asked = heard.unclear ?? heard.messages[0];
      expect(asked).toHaveProperty('code', expect.stringMatching(/^not-over$|^resume-first$/));
    });
    test.each(over)('"%s" ends it, and what it forbids stands', (line) => {
      const heard = say(raised('smoke'), line);
      expect(positionOf(heard.case)).toEqual({ awaiting: 'answer', check: 'scene' });
      expect(heard.case.state.raised).toEqual(['smoke']);
    });
    test.each([...never, ...neverSmoke])('"%s" takes it back with what it forbade', (line) => {
      const heard = say(raised('smoke'), line);
      expect(heard.case.state.raised).toEqual([]);
      expect(positionOf(heard.case)).toEqual({ awaiting: 'answer', check: 'complaint' });
    });
    test.each([...never.slice(0, 2), ...neverSmoke])(
      '"%s" does so once it is over as well',
      (line) => {
        const heard = say(resumed(raised('smoke')), line);
        expect(heard.case.state.raised).toEqual([]);
        expect(positionOf(heard.case)).toEqual({ awaiting: 'answer', check: 'scene' });
      },
    );
    test.each(noMore)('"%s" takes nothing back', (line) => {
      expect(say(raised('smoke'), line).case.state.raised).toEqual(['smoke']);
    });
    test('what is waited for is said with how to take it back', () => {
      const heard = say(raised('high-voltage'), read[0] ?? '');
      const [asked] = heard.unclear === undefined ? [] : speaker.askBack(heard.unclear);
      const text = asked !== undefined && 'text' in asked ? asked.text : '';
      expect(text.toLowerCase()).toContain((never[0] ?? '').toLowerCase());
    });
  },
);

describe('after a danger', () => {
  const { raised, resumed, say } = spokenTo('en');
  const { chart } = shippedFlow('no-start', 'en');
  const take = (kase: Case, ...inputs: readonly unknown[]): Case =>
    inputs.reduce<Case>((before, input) => turn(chart, before, { at, input }).case, kase);

  test('what is told meanwhile is kept, and whether all are safe is asked again', () => {
    const heard = say(resumed(raised('smoke')), 'rest 12,4');
    expect(positionOf(heard.case)).toEqual({ awaiting: 'answer', check: 'scene' });
    expect(heard.case.state.answers['battery-rest']).toMatchObject([{ value: 12.4, unit: 'V' }]);
  });

  test('that came after the verdict all are asked whether they are safe as well', () => {
    const told = take(
      raised('smoke'),
      { type: 'withdraw', interrupt: 'smoke' },
      { type: 'answers', answers: [{ check: 'complaint', value: ['silent'] }] },
    );
    const ended = untilVerdict(told);
    expect(ended.state.verdict).not.toBeNull();
    const over = take(ended, { type: 'interrupt', interrupt: 'smoke' }, { type: 'resume' });
    expect(positionOf(over)).toEqual({ awaiting: 'answer', check: 'scene' });
  });

  test('no proof with a running engine is asked for where no work was done', () => {
    const smoked = take(resumed(raised('smoke')), {
      type: 'answers',
      answers: [
        { check: 'scene', value: ['safe'] },
        { check: 'kit', value: ['voltmeter', 'helper'] },
        { check: 'complaint', value: ['slow-crank'] },
      ],
    });
    const ended = untilVerdict(smoked);
    expect(positionOf(ended)).toEqual({ awaiting: 'answer', check: 'repair' });
    const closed = take(ended, { type: 'talk', talk: 'dont-know' });
    expect(closed.state.outcome).toBe('handed-over');
    expect(positionOf(closed)).toEqual({ awaiting: 'nothing' });
  });

  /** On to the verdict: cautions are confirmed, and nothing is known. */
  function untilVerdict(kase: Case): Case {
    if (kase.state.verdict !== null) return kase;
    const { awaiting } = positionOf(kase);
    return untilVerdict(
      take(
        kase,
        awaiting === 'confirm'
          ? { type: 'confirm' }
          : awaiting === 'wait'
            ? { type: 'waited' }
            : { type: 'talk', talk: 'dont-know' },
      ),
    );
  }
});
