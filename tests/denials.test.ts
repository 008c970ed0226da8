/**
 * What is denied and what is true, what came by itself, and work that is done: phrases from common
 * practice, no source.
 */
import type { Understood } from '@keyturn/language';
import { describe, expect, test } from 'vitest';
import { understandIn } from './support/understand-in.ts';

/** What was understood as one line: `relay=silent`, `starts-now`, `asked back`. */
function show(understood: Understood): string {
  if (understood.type !== 'input') return 'asked back';
  return understood.inputs
    .flatMap((input): string[] => {
      if (input.type === 'interrupt') return [input.interrupt];
      if (input.type === 'talk') return [input.talk];
      if (input.type !== 'answers') return [input.type];
      return input.answers.map(({ check, value }) =>
        'value' in value ? `${check}=${value.value}` : `${check}=${value.join('+')}`,
      );
    })
    .join(', ');
}

type Row = readonly [locale: string, check: string, text: string, means: string];

function hold(rows: readonly Row[]): void {
  test.each(rows)('%s, at %s "%s" is %s', (locale, check, text, means) => {
    expect(show(understandIn[locale]!(check, text))).toBe(means);
  });
}

describe('of what is denied and what is named instead the latter is taken', () => {
  hold([
    ['en', 'scene', "I wouldn't call this a safe place to stand", 'scene=unsafe'],
    ['es', 'main-fuse', 'quemado no está, se ve entero', 'main-fuse=intact'],
    ['de', 'complaint', 'nicht langsam, er dreht ganz normal', 'complaint=normal-crank'],
    ['fr', 'dash', "pas éteint, aussi lumineux qu'avant", 'dash=stays-bright'],
    ['pl', 'headlamps', 'nie przygasają tylko całkiem gasną', 'headlamps=go-out'],
    ['ar', 'complaint', 'مش بطيء ده بيلف عادي', 'complaint=normal-crank'],
  ]);
});

describe('of a list of kit what is denied is not there', () => {
  hold([
    ['es', 'kit', 'multímetro y cargador tengo, llaves no', 'kit=voltmeter+charger'],
    ['pl', 'kit', 'miernik i prostownik, cęgów nie mam', 'kit=voltmeter+charger'],
    ['ar', 'kit', 'افوميتر وشاحن، كلامب ميتر ما عندي', 'kit=voltmeter+charger'],
  ]);
});

describe('what is denied but for one thing is said of that thing', () => {
  hold([
    ['en', 'kit', 'nothing except a test lamp', 'kit=test-lamp'],
    ['es', 'kit', 'nada salvo una lámpara de prueba', 'kit=test-lamp'],
    ['de', 'kit', 'nichts außer einer Prüflampe', 'kit=test-lamp'],
    ['fr', 'kit', "je n'ai qu'une lampe témoin", 'kit=test-lamp'],
    ['pl', 'kit', 'nie mam nic oprócz próbówki', 'kit=test-lamp'],
    ['ar', 'kit', 'ما عندي غير لمبة تست', 'kit=test-lamp'],
    ['ar', 'complaint', 'ما يسوي الا طقة وحدة', 'complaint=single-click'],
    ['fr', 'complaint', 'je ne pense pas que ça clique', 'complaint=silent'],
    ['fr', 'kit', "je n'ai rien", 'kit=none'],
    ['ar', 'other-key', 'الريموت الثاني ما سوى شي', 'other-key=no-change'],
  ]);
});

describe('a denial stands where what sounds like an exception is none', () => {
  hold([
    ['es', 'scene', 'no estoy a salvo aquí', 'scene=unsafe'],
    ['es', 'place', 'no estamos a salvo aquí', 'scene=unsafe'],
    ['fr', 'pump-sound', "je n'entends rien parce que la route est bruyante", 'pump-sound=none'],
    ['fr', 'kit', "je n'ai que dalle", 'kit=none'],
    ['pl', 'complaint', 'nie kręci poza tym wszystko gra', 'complaint=silent'],
    ['pl', 'relay', 'nie klika poza tym lampki świecą', 'relay=silent'],
    ['de', 'headlamps', 'kein Licht geht außer dem Innenlicht', 'headlamps=no-light'],
    ['en', 'turn-engine', 'nothing moves on the bar at all', 'turn-engine=locked'],
    ['ar', 'relay', 'ما يطق غير طبيعي', 'relay=silent'],
  ]);
});

describe('an answer word for word is more than the yes beside it', () => {
  hold([
    ['en', 'selector', 'yes, N', 'selector=park-neutral'],
    ['en', 'selector', 'yes', 'selector=in-gear'],
    ['en', 'clutch', 'yes its up', 'clutch=up'],
  ]);
});

describe('one of two answers, no matter which, is asked back', () => {
  hold([
    ['en', 'complaint', 'either grinds or clicks', 'asked back'],
    ['pl', 'complaint', 'albo zgrzyta albo nic', 'asked back'],
    ['de', 'terminals', 'entweder locker oder dreckig', 'asked back'],
  ]);
});

describe('what comes in turns is asked back, unless the turns are the answer', () => {
  hold([
    ['en', 'complaint', 'sometimes it clicks fast, other times it cranks slow', 'asked back'],
    ['de', 'boost', 'mal dreht er langsam mal normal', 'asked back'],
    ['es', 'dash', 'a ratos baja, a ratos se apaga', 'asked back'],
    ['fr', 'dash', "parfois ça baisse, parfois ça s'éteint", 'asked back'],
    ['de', 'crank-rhythm', 'eiert, mal schnell mal langsam, unrund', 'crank-rhythm=uneven'],
    ['ar', 'crank-rhythm', 'يعرج، مرة سريع مرة بطيء', 'crank-rhythm=uneven'],
  ]);
});

describe('what may itself be either of two answers is left open as well', () => {
  hold([
    ['fr', 'complaint', 'soit il claque soit il tourne lentement, je sais plus', 'asked back'],
    ['pl', 'boost', 'raz kręci powoli, raz normalnie', 'asked back'],
    ['ar', 'complaint', 'ما في صوت ولا حركة', 'complaint=silent'],
    ['ar', 'complaint', 'مرة تطق طقة وحدة ومرة تجرش', 'asked back'],
    ['ar', 'crank-rhythm', 'متقطع، مرة سريع ومرة بطيء', 'crank-rhythm=uneven'],
  ]);
});

describe('who names two answers and does not know which is offered both', () => {
  hold([
    ['en', 'drive', 'petrol or diesel, no idea', 'asked back'],
    ['de', 'drive', 'Benzin oder Diesel, keine Ahnung', 'asked back'],
    ['pl', 'drive', 'nie wiem, benzyna albo diesel', 'asked back'],
    ['es', 'drive', 'ni idea, gasolina o diésel', 'asked back'],
    ['fr', 'drive', 'essence ou diesel, je sais pas', 'asked back'],
    ['ar', 'drive', 'ما أدري بنزين ولا ديزل', 'asked back'],
    ['ar', 'charge-lamp', 'ما أدري كانت ضاوية ولا لا', 'asked back'],
    ['en', 'charge-lamp', "on or not, I don't know", 'asked back'],
  ]);
});

describe('two clauses that say two answers are asked back', () => {
  hold([
    ['en', 'complaint', "clicks fast and the key won't turn", 'asked back'],
    ['de', 'dash', 'hell und ganz aus', 'asked back'],
    ['es', 'dash', 'brillante y apagado total', 'asked back'],
    ['pl', 'dash', 'świeci jasno i zgasła całkiem', 'asked back'],
    ['fr', 'dash', "il reste bien allumé et il s'éteint complètement", 'asked back'],
    ['en', 'complaint', 'one clunk and then silence', 'complaint=single-click'],
  ]);
});

describe('of three answers or more one that is denied leaves the others', () => {
  hold([
    ['de', 'terminals', 'nicht lose', 'asked back'],
    ['en', 'terminals', 'not corroded', 'asked back'],
    ['fr', 'battery-look', 'pas fendue', 'asked back'],
    ['ar', 'terminals', 'مش مصدية', 'asked back'],
    ['de', 'brake-lamps', 'leuchten nicht', 'brake-lamps=dark'],
    ['en', 'complaint', 'no click', 'complaint=silent'],
  ]);
});

describe('talk is no answer, and the one kind not another', () => {
  hold([
    ['en', 'kit', 'get me somebody on the phone', 'person'],
    ['de', 'kit', 'lassen wir das, ich hab keine Lust mehr', 'stop'],
    ['fr', 'history', 'passez-moi un vrai humain', 'person'],
    ['fr', 'battery-crank', 'ça sert à quoi', 'why'],
    ['fr', 'history', 'à quoi riment ces questions', 'why'],
    ['es', 'terminals', 'yo de eso no entiendo', 'dont-know'],
    ['ar', 'security-lamp', 'معرفش، مبصتش', 'dont-know'],
    ['ar', 'history', 'ليش كل هالأسئلة', 'why'],
  ]);
});

describe('what may be or not is asked back, and one hedge is none', () => {
  hold([
    ['en', 'relay', 'maybe click maybe not', 'asked back'],
    ['es', 'relay', 'quizás hace clic quizás no', 'asked back'],
    ['de', 'relay', 'klickt oder nicht, weiß nicht', 'asked back'],
    ['fr', 'headlamps', "peut-être qu'ils baissent, peut-être pas", 'asked back'],
    ['pl', 'headlamps', 'może przygasają a może nie', 'asked back'],
    ['ar', 'dash', 'يمكن يضعف ويمكن يطفي كله', 'asked back'],
    ['fr', 'complaint', 'soit elle clique vite soit elle gratte, un des deux', 'asked back'],
    ['en', 'dash', 'maybe it dims', 'dash=dim'],
    ['en', 'when', 'sometimes it starts sometimes it doesnt', 'when=comes-and-goes'],
    ['en', 'headlamps', 'no beam at all, starting or not', 'headlamps=no-light'],
  ]);
});

describe('a danger beside an answer is raised with it', () => {
  hold([
    ['fr', 'clutch', 'enfoncée, et le camion part en arrière', 'clutch=down, traffic-danger'],
    ['pl', 'clutch', 'wciśnięte, o rany auto się stacza', 'clutch=down, traffic-danger'],
    ['ar', 'clutch', 'دايس عليه، يا ساتر السيارة تمشي لحالها', 'traffic-danger'],
    [
      'fr',
      'battery-rest',
      '12,2 et elle bouillonne',
      'battery-rest=12.2, swollen-or-leaking-battery',
    ],
    [
      'es',
      'battery-rest',
      '12,1 y está burbujeando',
      'battery-rest=12.1, swollen-or-leaking-battery',
    ],
    ['en', 'charging', '14.2 but its on fire', 'charging=14.2, smoke'],
    ['pl', 'battery-rest', '12,2 i leci dym spod maski', 'battery-rest=12.2, smoke'],
    ['en', 'battery-rest', 'smoke! 2 of us are out', 'smoke'],
    ['en', 'battery-rest', 'it is hot, the engine 12.4 volts', 'battery-rest=12.4'],
  ]);
});

describe('that it started by itself is no answer to what was to be tried', () => {
  hold([
    ['en', 'other-key', 'forget it, it just started by itself', 'starts-now'],
    ['de', 'other-key', 'hat sich erledigt, er ist von allein angesprungen', 'starts-now'],
    ['fr', 'other-key', 'laissez tomber, le moteur tourne', 'starts-now'],
    ['en', 'other-key', 'it started with the spare', 'other-key=starts'],
    ['fr', 'other-key', 'oubliez, elle démarre pas', 'other-key=no-change'],
  ]);
});

describe('where the engine runs anyway, that it does is no interrupt', () => {
  hold([
    ['fr', 'charging', '13,9 moteur en marche', 'charging=13.9'],
    ['en', 'charging', '14.2 with the engine running', 'charging=14.2'],
  ]);
});

describe('a figure that falls is nobody who did', () => {
  hold([
    ['es', 'battery-crank', 'se desploma a nueve', 'battery-crank=9'],
    ['es', 'battery-crank', 'me corté la mano, me falta medio dedo', 'injury'],
  ]);
});

describe('work is told to be done in few words', () => {
  hold([
    ['en', 'repair', 'all bolted back together', 'repair=done'],
    ['es', 'repair', 'ya quedó bien puesto', 'repair=done'],
    ['pl', 'repair', 'wszystko poskręcane', 'repair=done'],
    ['ar', 'repair', 'خلصت الشغل', 'repair=done'],
    ['en', 'repair', "I'm still tightening it", 'asked back'],
    ['de', 'repair', 'die schraube geht nicht raus', 'asked back'],
  ]);
});

describe('a danger is denied behind it as well, and nobody who smokes is on fire', () => {
  hold([
    ['en', 'complaint', 'silent. smoke? no', 'complaint=silent'],
    ['de', 'complaint', 'kein Mucks. Rauch? Nein', 'complaint=silent'],
    ['pl', 'complaint', 'cisza. dym? nie', 'complaint=silent'],
    ['es', 'battery-rest', '12,3, hinchada no está', 'battery-rest=12.3'],
    ['de', 'battery-rest', '12,3, aufgebläht ist sie nicht', 'battery-rest=12.3'],
    ['fr', 'battery-rest', '12,3, gonflée non', 'battery-rest=12.3'],
    ['pl', 'battery-rest', '12,3, spuchnięty nie jest', 'battery-rest=12.3'],
    ['ar', 'battery-rest', '12.3 ومنفوخة لا', 'battery-rest=12.3'],
    ['de', 'complaint', 'kein Mucks, ich rauch erst mal eine', 'complaint=silent'],
    ['fr', 'complaint', 'aucun bruit, je fume en attendant', 'complaint=silent'],
    ['en', 'when', 'had a smoke at the services and then nothing', 'when=soon-after-stopping'],
    ['pl', 'complaint', 'cisza i dymi i nie przestaje', 'complaint=silent, smoke'],
  ]);
});

describe('a bare no is none of several answers', () => {
  hold([
    ['de', 'complaint', 'nö', 'asked back'],
    ['es', 'when', 'qué va', 'asked back'],
    ['en', 'when', 'not at all', 'asked back'],
    ['fr', 'when', 'pas du tout', 'asked back'],
    ['pl', 'when', 'wcale nie', 'asked back'],
    ['ar', 'when', 'أبدا', 'asked back'],
  ]);
});
