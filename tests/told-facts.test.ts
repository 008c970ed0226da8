/**
 * What is told by the way, and what only sounds like it: a figure, a fact of the vehicle, who is
 * there. Phrases from common practice, no source.
 */
import type { Understood } from '@keyturn/language';
import { describe, expect, test } from 'vitest';
import { understandIn } from './support/understand-in.ts';

/** What was understood as one line: `drive=petrol`, `battery-rest=12.65 V`, `24 V vehicle`. */
function show(understood: Understood): string {
  if (understood.type !== 'input') return 'asked back';
  const said = understood.inputs.flatMap((input): string[] => {
    if (input.type === 'context') return [`${String(input.set['vehicle.nominal'])} V vehicle`];
    if (input.type !== 'answers') return [input.type];
    return input.answers.map(({ check, value }) =>
      'value' in value
        ? `${check}=${String(value.value)} ${value.unit}`
        : `${check}=${value.join('+')}`,
    );
  });
  return said.toSorted().join(', ');
}

type Row = readonly [locale: string, check: string | null, text: string, means: string];

function hold(rows: readonly Row[]): void {
  test.each(rows)('%s, at %s "%s" is %s', (locale, check, text, means) => {
    expect(show(understandIn[locale]!(check, text))).toBe(means);
  });
}

describe('a vehicle of 24 V is concluded only where a lorry is named and the figure fits no other', () => {
  hold([
    [
      'fr',
      null,
      'moteur lent au demarrage, pourtant batterie mesurée à 12.65',
      'battery-rest=12.65 V, complaint=slow-crank',
    ],
    ['fr', 'battery-rest', 'batterie, 12,65', 'battery-rest=12.65 V'],
    ['fr', 'battery-rest', 'batterie 24,9', 'asked back'],
    ['fr', 'battery-rest', 'camion, 25,1', '24 V vehicle, battery-rest=25.1 V'],
    ['pl', 'battery-rest', 'mam 25,1', 'asked back'],
    ['pl', 'battery-rest', 'mam 12,6', 'battery-rest=12.6 V'],
    ['de', 'battery-rest', '25,1 Lkw', '24 V vehicle, battery-rest=25.1 V'],
    ['en', 'battery-rest', "12.6, it's a lorry", 'battery-rest=12.6 V'],
  ]);
});

describe('kit is told of its own question, where that is still to come', () => {
  hold([
    ['en', 'place', "I've got a charger and a multimeter", 'kit=voltmeter+charger'],
    ['de', 'place', 'ich habe ein Ladegerät', 'kit=charger'],
  ]);
});

describe('what a clause of its own tells stands beside what was tried, and what was done for it does not', () => {
  hold([
    ['en', 'rev-counter', 'still. tank is half full', 'fuel-level=has-fuel, rev-counter=still'],
    [
      'es',
      'rev-counter',
      'quieta. el depósito está lleno',
      'fuel-level=has-fuel, rev-counter=still',
    ],
    ['de', 'rev-counter', 'steht. Tank ist halb voll', 'fuel-level=has-fuel, rev-counter=still'],
    [
      'fr',
      'rev-counter',
      'immobile. le réservoir est à moitié plein',
      'fuel-level=has-fuel, rev-counter=still',
    ],
    ['pl', 'rev-counter', 'stoi. bak jest pełny', 'fuel-level=has-fuel, rev-counter=still'],
    ['ar', 'rev-counter', 'ثابت. الخزان مليان', 'fuel-level=has-fuel, rev-counter=still'],
    ['en', 'rev-counter', "still. it's a diesel", 'drive=diesel, rev-counter=still'],
    ['en', 'other-key', 'daughters key and vroom', 'other-key=starts'],
    ['de', 'steering-wheel', 'jetzt lässt er sich drehen, super', 'steering-wheel=frees'],
    ['pl', 'fuel-after', 'wlałem z kanistra 10 litrów, to co trzeba', 'fuel-after=has-fuel'],
  ]);
});

describe('the years of the vehicle are not those of its battery, whichever is named first', () => {
  const two = 'battery-age=2 a';
  hold([
    ['en', null, 'battery is flat, car is 4 years old', 'asked back'],
    ['en', null, 'car battery is 2 years old', two],
    [
      'de',
      null,
      'Akku platt, das Auto ist 4 Jahre alt, klackert schnell',
      'complaint=rapid-clicking',
    ],
    ['de', null, 'Auto ist alt, Batterie 2 Jahre', two],
    ['es', null, 'coche de 8 años, batería de 2 años', two],
    ['es', null, 'la batería está muerta y el coche tiene 8 años', 'asked back'],
    ['fr', null, 'batterie à plat, la voiture a 12 ans', 'asked back'],
    ['pl', null, 'auto ma 9 lat i akumulator 2 lata', two],
    ['pl', null, 'akumulator padł, auto ma 9 lat', 'asked back'],
    ['ar', null, 'البطارية فاضية والسيارة عمرها 4 سنين', 'asked back'],
    ['ar', null, 'البطارية عمرها 4 سنين والسيارة ما تدور', 'battery-age=4 a'],
  ]);
});

describe('that it cranks slowly is no word for the figure of the battery', () => {
  hold([
    [
      'en',
      null,
      'slow cranking, yet battery measured at 12.65',
      'battery-rest=12.65 V, complaint=slow-crank',
    ],
    ['en', null, 'while cranking, battery 9.8 V', 'battery-crank=9.8 V'],
    ['fr', null, 'au démarrage, batterie 9,8 V', 'battery-crank=9.8 V'],
    ['en', null, 'cranks slow, battery 12.4 at rest', 'battery-rest=12.4 V, complaint=slow-crank'],
  ]);
});

describe('a word that is used of other things as well is no fact of the vehicle', () => {
  hold([
    ['fr', null, 'tourne super lentement', 'complaint=slow-crank'],
    ['de', null, 'dreht super langsam', 'complaint=slow-crank'],
    ['fr', 'drive', 'super', 'drive=petrol'],
    ['de', 'drive', 'Super', 'drive=petrol'],
    ['de', null, 'Akku leer, klackert nur', 'complaint=rapid-clicking'],
    ['en', null, 'diesel van, just clicks', 'complaint=rapid-clicking, drive=diesel'],
    ['fr', 'place', 'essence', 'asked back'],
    ['en', 'place', 'petrol', 'asked back'],
    ['fr', 'place', 'station essence', 'place=parking'],
    ['pl', 'selector', 'parking', 'selector=park-neutral'],
  ]);
});

describe('a few volts are no figure, and no meter', () => {
  hold([
    ['es', 'battery-rest', 'unos cuantos voltios', 'asked back'],
    ['es', 'crank-current', 'unos cuantos amperios', 'asked back'],
    ['fr', 'drop-ground', 'un qurt de volt a peu pres', 'drop-ground=0.25 V'],
    ['es', 'kit', 'tengo un voltimetro', 'kit=voltmeter'],
  ]);
});

describe('of seven years is a figure', () => {
  hold([
    ['pl', 'battery-age', 'siedmioletni', 'battery-age=7 a'],
    ['pl', 'battery-age', 'akumulator pięcioletni', 'battery-age=5 a'],
    ['pl', 'battery-age', 'dwuletnia', 'battery-age=2 a'],
  ]);
});

describe('what is told beside an answer is taken by its name, or where it is plain', () => {
  hold([
    [
      'en',
      'complaint',
      'clicks like mad and the dash goes out',
      'complaint=rapid-clicking, dash=goes-out',
    ],
    [
      'es',
      'battery-look',
      'seca y sin grietas, pero una abrazadera está suelta',
      'battery-look=sound, terminals=loose',
    ],
    [
      'de',
      'complaint',
      'dreht normal, nach den vielen Versuchen mieft er nach Benzin',
      'complaint=normal-crank, flooded-smell=yes',
    ],
    [
      'ar',
      null,
      'تشتغل ثانية وتنطفي ولمبة القفل ترمش',
      'complaint=starts-then-stops, security-lamp=warning',
    ],
    ['en', 'selector', 'in park. tried neutral too, no difference', 'selector=park-neutral'],
    ['en', null, 'key wont turn, steering wheel is locked too', 'complaint=key-stuck'],
  ]);
});

describe('kit is told where somebody has it', () => {
  hold([
    ['fr', 'history', "j'ai dû la faire booster avant-hier", 'history=jumped-recently'],
    ['en', 'place', 'at home, I have a charger here too', 'kit=charger, place=home'],
    ['es', 'place', 'en casa, hay un cargador', 'kit=charger, place=home'],
    ['de', 'place', 'zuhause, ein Ladegerät hab ich da', 'kit=charger, place=home'],
    ['fr', 'place', 'chez moi, j’ai un chargeur dans le garage', 'kit=charger, place=home'],
    [
      'pl',
      'place',
      'w warsztacie, jest miernik i prostownik',
      'kit=voltmeter+charger, place=workshop',
    ],
    ['ar', 'place', 'في البيت، وعندي شاحن', 'kit=charger, place=home'],
    ['en', 'place', 'at home, no charger here', 'place=home'],
    [
      'en',
      'complaint',
      'clicks fast, we had a jump with the neighbours jump leads yesterday',
      'complaint=rapid-clicking, history=jumped-recently',
    ],
  ]);
});

describe('a second vehicle is what to boost from, and no second key', () => {
  hold([
    ['en', 'kit', 'jump leads and a second car', 'kit=boost-source'],
    ['es', 'kit', 'cables y otro coche', 'kit=boost-source'],
    ['de', 'kit', 'Starthilfekabel und ein zweites Auto', 'kit=boost-source'],
    ['fr', 'kit', 'des câbles et une deuxième voiture', 'kit=boost-source'],
    ['pl', 'kit', 'kable i drugie auto', 'kit=boost-source'],
    ['ar', 'kit', 'كابلات وسيارة ثانية', 'kit=boost-source'],
    ['de', 'kit', 'der Zweitschlüssel', 'kit=second-key'],
  ]);
});

describe('weeks and months tell what happened before as well', () => {
  hold([
    ['en', 'when', 'after three weeks standing', 'history=parked-long, when=after-standing'],
    ['es', 'when', 'después de tres semanas parado', 'history=parked-long, when=after-standing'],
    ['de', 'when', 'nachdem er 2 Monate gestanden hat', 'history=parked-long, when=after-standing'],
    ['fr', 'when', 'après trois semaines sans rouler', 'history=parked-long, when=after-standing'],
    ['ar', 'when', 'بعد ثلاث اسابيع واقفة', 'history=parked-long, when=after-standing'],
    ['en', 'when', 'after standing overnight', 'when=after-standing'],
  ]);
});

describe('what the meter shows is the battery at rest, where nothing else is named', () => {
  hold([
    [
      'en',
      'terminals',
      'white fur on both, reading 12.2 with everything off',
      'battery-rest=12.2 V, terminals=corroded',
    ],
    [
      'es',
      'terminals',
      'llenos de sulfato, el voltimetro marca 12,2 con todo apagado',
      'battery-rest=12.2 V, terminals=corroded',
    ],
    [
      'de',
      null,
      'klemmen sauber und fest, messgerät zeigt 12,7, anlasser macht keinen mucks',
      'battery-rest=12.7 V, complaint=silent, terminals=clean-tight',
    ],
    [
      'fr',
      null,
      'multimètre à 11,8 et ça tourne lentement',
      'battery-rest=11.8 V, complaint=slow-crank',
    ],
    [
      'pl',
      'terminals',
      'czyste i mocno siedzą, w spoczynku 12,5',
      'battery-rest=12.5 V, terminals=clean-tight',
    ],
    [
      'ar',
      'terminals',
      'نظيفة ومشدودة، والجهاز يعطي ١٢٫٥ وكل شي مطفي',
      'battery-rest=12.5 V, terminals=clean-tight',
    ],
    [
      'en',
      'terminals',
      'both crusty, meter shows 9.8 while cranking',
      'battery-crank=9.8 V, terminals=corroded',
    ],
  ]);
});

describe('the night of a frost does not tell that the vehicle stood', () => {
  hold([
    [
      'pl',
      null,
      'w nocy było minus 20, kręci wolno',
      'air-temperature=-20 Cel, complaint=slow-crank',
    ],
    [
      'de',
      null,
      'minus 15 heut nacht, dreht langsam',
      'air-temperature=-15 Cel, complaint=slow-crank',
    ],
  ]);
});

describe('of two fuels the one is told that the vehicle runs on, and that the other was put in', () => {
  hold([
    ['en', null, 'poured diesel in my petrol car', 'drive=petrol, fuel-level=wrong-fuel'],
    [
      'es',
      null,
      'eché gasoil en mi coche de gasolina',
      'drive=petrol, fuel-level=wrong-fuel, history=just-fuelled',
    ],
    ['de', null, 'hab diesel in den benziner gekippt', 'drive=petrol, fuel-level=wrong-fuel'],
    [
      'fr',
      null,
      'j’ai mis du gasoil dans ma voiture essence',
      'drive=petrol, fuel-level=wrong-fuel',
    ],
    ['pl', null, 'zatankowałem ropę do benzyniaka', 'drive=petrol, fuel-level=wrong-fuel'],
    ['ar', null, 'حطيت بنزين في سيارة ديزل', 'drive=diesel, fuel-level=wrong-fuel'],
    ['fr', 'drive', 'c’est pas un diesel, c’est une essence toute simple', 'drive=petrol'],
    [
      'de',
      null,
      'mein Diesel springt nicht an, dreht nur langsam',
      'complaint=slow-crank, drive=diesel',
    ],
  ]);
});

describe('a day that is said of something else tells of no standing', () => {
  hold([
    [
      'en',
      null,
      'the red light was on last night, clicks fast now',
      'charge-lamp=was-lit, complaint=rapid-clicking',
    ],
    [
      'es',
      null,
      'anoche al volver iba la luz roja encendida, ahora clic clic clic',
      'charge-lamp=was-lit, complaint=rapid-clicking',
    ],
    [
      'de',
      null,
      'rote lampe war an als ich gestern abend heimfuhr, jetzt nur klackern',
      'charge-lamp=was-lit, complaint=rapid-clicking',
    ],
    [
      'fr',
      null,
      'le voyant rouge était allumé hier soir en rentrant, maintenant clic clic clic',
      'charge-lamp=was-lit, complaint=rapid-clicking',
    ],
    [
      'fr',
      null,
      'hier nickel, ce matin apres la nuit dehors il tourne au ralenti',
      'complaint=slow-crank, when=after-standing',
    ],
  ]);
});

describe('what is said of a thing by its name answers nothing else', () => {
  hold([
    [
      'en',
      'starter-fuse',
      'fuse is fine, and the relay clicks',
      'relay=clicks, starter-fuse=intact',
    ],
    ['fr', 'starter-fuse', 'fusible bon, et le relais clique', 'relay=clicks, starter-fuse=intact'],
    [
      'pl',
      'starter-fuse',
      'bezpiecznik cały, i przekaźnik klika',
      'relay=clicks, starter-fuse=intact',
    ],
    ['pl', 'complaint', 'głucho. co ciekawe na N zakręcił', 'complaint=silent, neutral-try=cranks'],
    [
      'de',
      'selector',
      'steht auf P, bremslicht geht aber nicht wenn ich draufsteige',
      'brake-lamps=dark, selector=park-neutral',
    ],
  ]);
});

describe('that nothing happens is told beside anything else', () => {
  hold([
    ['en', 'place', 'at home, it does nothing at all', 'complaint=silent, place=home'],
    ['es', 'place', 'en casa, no hace nada de nada', 'complaint=silent, place=home'],
    ['de', 'place', 'daheim, macht gar nix', 'complaint=silent, place=home'],
    ['fr', 'place', 'à la maison, elle fait rien', 'complaint=silent, place=home'],
    ['pl', 'drive', 'diesel, nic się nie dzieje', 'complaint=silent, drive=diesel'],
    ['ar', 'drive', 'ديزل، ولا حركة ولا صوت', 'complaint=silent, drive=diesel'],
    ['en', 'pump-sound', 'it does nothing at all', 'pump-sound=none'],
    ['en', 'tap', 'nothing happens', 'tap=no-change'],
  ]);
});

describe('a fact beside an answer from memory is told, also where it might answer what was asked', () => {
  hold([
    [
      'en',
      'when',
      'about five minutes after I parked, just filled up at the pump',
      'history=just-fuelled, when=soon-after-stopping',
    ],
    [
      'de',
      'when',
      'nach drei Tagen Urlaub am Flughafenparkplatz',
      'place=parking, when=after-standing',
    ],
    [
      'pl',
      'when',
      'kwadrans po zgaszeniu, stoję na parkingu przed sklepem',
      'place=parking, when=soon-after-stopping',
    ],
    [
      'de',
      'place',
      'am Seitenstreifen, ist ein Benziner mit Schaltung',
      'drive=petrol, place=shoulder, transmission=manual',
    ],
    [
      'fr',
      'complaint',
      'rien du tout, boîte auto, levier en position P',
      'complaint=silent, selector=park-neutral, transmission=automatic',
    ],
    ['pl', 'scene', 'bezpiecznie, stoję na parkingu pod blokiem', 'place=parking, scene=safe'],
  ]);
});

describe('a first message tells in words what it tells, whatever else it counts', () => {
  hold([
    ['fr', null, 'essence de 2011, elle tourne lentement', 'complaint=slow-crank, drive=petrol'],
    ['es', null, 'diésel del 2014, solo un clic al girar', 'complaint=single-click, drive=diesel'],
    [
      'en',
      null,
      "it died after 200 metres, cranks fine now but won't catch",
      'complaint=normal-crank, when=stopped-while-driving',
    ],
    [
      'de',
      null,
      'Benziner mit 6 Gang Schaltung, macht nur einmal klack',
      'complaint=single-click, drive=petrol, transmission=manual',
    ],
    ['pl', null, 'przejechałem 3 kilometry i zgasł w czasie jazdy', 'when=stopped-while-driving'],
    ['ar', null, 'طفت علي بعد 300 متر من المحطة وانا ماشي', 'when=stopped-while-driving'],
    ['en', null, 'battery 12,4 bolts cranks slow', 'asked back'],
  ]);
});

describe('what is said of a thing that is to be tried is no word for how it starts', () => {
  hold([
    ['en', null, 'no click from the relay', 'asked back'],
    ['pl', null, 'przekaźnik nie klika', 'asked back'],
    ['es', null, 'el relé no hace clic', 'asked back'],
    ['fr', null, 'pas de clic du relais', 'asked back'],
    ['de', null, 'das Relais klackt nicht', 'asked back'],
    ['ar', null, 'الريليه ما يطق', 'relay=silent'],
    [
      'pl',
      'battery-crank',
      '9,4 a obrotomierz w ogóle nie drga',
      'battery-crank=9.4 V, rev-counter=still',
    ],
  ]);
});

describe('a day that is said of what was done leaves it told', () => {
  hold([
    [
      'en',
      null,
      'got a jump yesterday, today slow cranking again',
      'complaint=slow-crank, history=jumped-recently',
    ],
    ['fr', null, "j'ai mis du sans plomb dans mon diesel", 'drive=diesel, fuel-level=wrong-fuel'],
  ]);
});

describe('where the vehicle stands raises no danger by itself; what rushes past there does', () => {
  hold([
    ['de', 'place', 'wir stehen mitten auf der rechten spur', 'place=live-lane'],
    ['es', 'place', 'en el carril derecho de la autovía', 'place=live-lane'],
    [
      'es',
      null,
      'me quedé en el carril izquierdo y solo hace clic',
      'complaint=single-click, place=live-lane',
    ],
    [
      'pl',
      null,
      'auto stoi na lewym pasie, w ogóle nie kręci',
      'complaint=silent, place=live-lane',
    ],
    [
      'fr',
      null,
      'je suis bloqué sur la file de gauche, ça clique vite',
      'complaint=rapid-clicking, place=live-lane',
    ],
    ['en', 'kit', 'nothing, and the car is stood in the middle lane', 'kit=none, place=live-lane'],
    ['en', null, "we're stopped in lane one and lorries are flying past us", 'interrupt'],
    [
      'fr',
      'place',
      'voie du milieu et les camions nous frôlent',
      'interrupt, place=live-lane, scene=unsafe',
    ],
    ['pl', 'place', 'na środku pasa, zaraz ktoś w nas wjedzie', 'interrupt'],
    ['en', 'place', 'we are stuck on the level crossing', 'interrupt'],
  ]);
});

describe('words of a danger that hardly sound like it are the answer that they are', () => {
  hold([
    ['en', 'main-fuse', 'the strip has melted right through', 'main-fuse=open'],
    ['fr', 'main-fuse', 'le filament est entier', 'main-fuse=intact'],
    [
      'es',
      null,
      'llama una señora, está en el arcén, coche automático',
      'place=shoulder, transmission=automatic',
    ],
    ['es', 'complaint', 'solo un clic y sale humo', 'complaint=single-click, interrupt'],
    ['en', 'headlamps', 'they dim and I smell burning', 'headlamps=dim, interrupt'],
  ]);
});

describe('of answers that are left open none is taken', () => {
  hold([
    ['en', 'dash', 'goes dim or out completely, not sure which', 'asked back'],
    ['en', 'headlamps', 'they dim or stay bright, I could not really see', 'asked back'],
    ['es', 'selector', 'en N o en D, no se ve bien', 'asked back'],
    ['fr', 'complaint', 'soit ça clique vite soit ça racle, ça dépend', 'asked back'],
    ['pl', 'charge-lamp', 'nie mam pojęcia czy się paliła', 'talk'],
    ['de', 'terminals', 'weiß nicht ob locker oder fest', 'talk'],
    ['es', 'headlamps', 'no sé si bajan o se apagan', 'talk'],
    ['es', 'terminals', 'no sé si importa pero están flojas', 'terminals=loose'],
    ['pl', 'complaint', 'nie odpala', 'asked back'],
    ['fr', 'complaint', 'ne démarre pas', 'asked back'],
  ]);
});

describe('nothing is told of what other words of a text make another thing of', () => {
  hold([
    ['de', 'kit', 'starthilfekabel und das auto vom nachbarn', 'kit=boost-source'],
    ['es', 'kit', 'cables y el coche del vecino', 'kit=boost-source'],
    [
      'en',
      'charge-lamp',
      'the red one was on, then it just stopped while I was driving',
      'charge-lamp=was-lit, when=stopped-while-driving',
    ],
    [
      'es',
      null,
      'gasolina, batería de ocho años, no hace nada',
      'battery-age=8 a, complaint=silent, drive=petrol',
    ],
    [
      'fr',
      null,
      'hybride essence, batterie 12,4 V, rien ne se passe',
      'battery-rest=12.4 V, complaint=silent, drive=petrol-hybrid',
    ],
    [
      'en',
      null,
      'diesel van in the workshop, starter just whirrs',
      'complaint=free-spin, drive=diesel, place=workshop',
    ],
    [
      'fr',
      null,
      '12,1 au repos et les cosses sont sulfatées',
      'battery-rest=12.1 V, terminals=corroded',
    ],
    [
      'es',
      'battery-rest',
      '11,8 y los bornes están con una costra verde',
      'battery-rest=11.8 V, terminals=corroded',
    ],
    ['en', 'battery-rest', '12.4, no wait, 11.9, it keeps changing', 'asked back'],
  ]);
});

describe('what is joined by a word written on to it is told as if it stood alone', () => {
  hold([
    [
      'ar',
      'complaint',
      'طقطقة سريعة، وأوتوماتيك',
      'complaint=rapid-clicking, transmission=automatic',
    ],
    ['ar', 'dash', 'ينطفي كله، والكلبسات رخوة', 'dash=goes-out, terminals=loose'],
    ['ar', 'battery-rest', '12.1 والكلبسات مرخية', 'battery-rest=12.1 V, terminals=loose'],
    ['ar', 'battery-rest', '11.9 والأصابع عليها ملح', 'battery-rest=11.9 V, terminals=corroded'],
    ['ar', 'start-after', 'بتدور وماتشتغلش', 'start-after=cranks-only'],
    ['ar', null, 'غير السلف أمس والآن يطلع صوت طحن', 'complaint=grinding, history=work-just-done'],
  ]);
});

describe('what the vehicle is, in a clause of its own, is told beside any answer', () => {
  hold([
    ['ar', 'place', 'في الكراج، بنزين', 'drive=petrol, place=home'],
    ['es', 'place', 'en casa, gasolina', 'drive=petrol, place=home'],
    ['pl', 'place', 'pod domem, benzyna', 'drive=petrol, place=home'],
    ['ar', 'transmission', 'دوستين بس، بنزين وفرامل', 'transmission=automatic'],
    ['ar', 'drive', 'ديزل عادي', 'drive=diesel'],
  ]);
});

describe('the grade of the petrol is no reading', () => {
  hold([
    ['ar', null, 'بنزين ٩١، السلف يدور ببطء', 'complaint=slow-crank, drive=petrol'],
    ['ar', null, 'بنزين ٩٥ والسلف يطقطق بسرعة', 'complaint=rapid-clicking, drive=petrol'],
  ]);
});

describe('what is left open between two answers is asked, also where somebody does not know', () => {
  hold([
    ['ar', 'complaint', 'يا طقطقة يا دوران بطيء، ما أدري', 'asked back'],
    ['en', 'dash', 'goes dim or goes out, not sure', 'asked back'],
    ['de', 'complaint', 'klickt einmal oder ganz schnell, weiß nicht', 'asked back'],
    ['pl', 'dash', 'przygasa albo gaśnie, nie wiem', 'asked back'],
    ['es', 'headlamps', 'se apagan o bajan, no sé', 'asked back'],
  ]);
});

describe('what the vehicle is, where a clause ends with it', () => {
  hold([
    ['en', 'complaint', "one click, and the car's petrol", 'complaint=single-click, drive=petrol'],
    ['ar', 'complaint', 'طقة وحدة والعربية بنزين', 'complaint=single-click, drive=petrol'],
    ['ar', 'complaint', 'طقة وحدة وهي ديزل', 'complaint=single-click, drive=diesel'],
    [
      'ar',
      'place',
      'بالموقف والسيارة بنزين اوتوماتيك',
      'drive=petrol, place=parking, transmission=automatic',
    ],
    ['ar', 'isolator', 'شغال والسيارة ديزل', 'drive=diesel, isolator=on'],
  ]);
});

describe('how a part is tested tells nothing of what it belongs to', () => {
  hold([
    [
      'en',
      'clutch-switch-contacts',
      'closes when the clutch is pressed',
      'clutch-switch-contacts=close',
    ],
    [
      'ar',
      'clutch-switch-contacts',
      'يبقى قاطع حتى وانا داعس للاخر',
      'clutch-switch-contacts=stay-open',
    ],
  ]);
});

describe('Arabic in Latin letters is read as the words that it spells', () => {
  hold([
    ['ar', 'complaint', 'el 3arabeya bteftah w ba3den btetfi', 'complaint=starts-then-stops'],
    ['ar', 'complaint', 'mafish ay sot khales', 'complaint=silent'],
    ['ar', 'pump-sound', 'ma basma3 wala 7aga', 'pump-sound=none'],
    ['ar', 'place', 'ana fel beit', 'place=home'],
    ['ar', 'air-temperature', 'talatin daraga', 'air-temperature=30 Cel'],
    ['ar', null, 'sayarti benzin otomatik', 'drive=petrol, transmission=automatic'],
  ]);
});

describe('a thing is known by the names that people give it', () => {
  hold([
    ['ar', 'tap', 'ما دار، والرليه يطق', 'relay=clicks, tap=no-change'],
    [
      'ar',
      'codes',
      'طلع كود الكرنك، وعقرب الدورات على الصفر',
      'codes=position-sensor, rev-counter=still',
    ],
    ['ar', 'selector', 'عالبي', 'selector=park-neutral'],
  ]);
});

describe('what is told beside an answer is taken, though it might answer that as well', () => {
  hold([
    [
      'en',
      'transmission',
      'auto, selector is in park',
      'selector=park-neutral, transmission=automatic',
    ],
    [
      'pl',
      'transmission',
      'automat, dźwignia jest na P',
      'selector=park-neutral, transmission=automatic',
    ],
    [
      'de',
      'place',
      'auf dem Standstreifen, ist während der Fahrt ausgegangen',
      'place=shoulder, when=stopped-while-driving',
    ],
    [
      'en',
      'place',
      "in the drive at home, it's an automatic diesel",
      'drive=diesel, place=home, transmission=automatic',
    ],
    [
      'es',
      'drive',
      'diésel, manual, y el depósito está lleno',
      'drive=diesel, fuel-level=has-fuel, transmission=manual',
    ],
    ['fr', 'headlamps', "ça s'éteint complètement pendant le démarrage", 'headlamps=go-out'],
  ]);
});

describe('what adds nothing to a fact is left out', () => {
  hold([
    [
      'en',
      'complaint',
      "a single clunk, it's automatic by the way",
      'complaint=single-click, transmission=automatic',
    ],
    ['es', 'ignition', 'con llave, y estoy en casa por si ayuda', 'ignition=key, place=home'],
    [
      'de',
      'dash',
      'bleibt hell, die Bremslichter leuchten übrigens',
      'brake-lamps=light, dash=stays-bright',
    ],
  ]);
});

describe('what is the same of another thing is said of it too', () => {
  hold([
    ['es', 'selector', 'en P, en N lo mismo', 'neutral-try=no-change, selector=park-neutral'],
    ['fr', 'selector', 'sur P, au neutre pareil', 'neutral-try=no-change, selector=park-neutral'],
    [
      'fr',
      'dash',
      "il s'éteint complètement et les phares pareil",
      'dash=goes-out, headlamps=go-out',
    ],
    ['de', 'dash', 'alles erlischt, die Scheinwerfer ebenso', 'dash=goes-out, headlamps=go-out'],
    ['en', 'headlamps', 'they go out, the dash too', 'dash=goes-out, headlamps=go-out'],
    ['es', 'dash', 'se apaga del todo, los faros lo mismo', 'dash=goes-out, headlamps=go-out'],
  ]);
});

describe('what only sounds like something else is not told', () => {
  hold([
    ['fr', 'relay-swap', "j'ai mis le jumeau à la place et il tourne", 'relay-swap=cranks'],
    ['es', 'turn-engine', 'con la llave grande se deja girar, muy duro', 'turn-engine=tight'],
    ['es', 'tap', 'le di martillazos flojos y nada cambió', 'tap=no-change'],
    ['en', 'kit', "no tools, but my neighbour's truck is here", 'kit=none'],
    ['en', null, 'just a clunk when i hit the button', 'complaint=single-click, ignition=button'],
    [
      'fr',
      null,
      'dame âgée, boîte automatique, aucun bruit, chez elle',
      'complaint=silent, place=home, transmission=automatic',
    ],
    [
      'es',
      null,
      'ayer le cambiaron el motor de arranque en el taller y hoy rasca horrible',
      'complaint=grinding, history=work-just-done',
    ],
    [
      'pl',
      null,
      'po wymianie rozrusznika zgrzyta przy odpalaniu',
      'complaint=grinding, history=work-just-done',
    ],
  ]);
});

describe('whoever tries something tells what he does, and nothing from memory', () => {
  hold([
    ['en', 'tap', 'tapped and tapped, no difference', 'tap=no-change'],
    ['pl', 'turn-engine', 'kluczem na śrubie ani drgnie', 'turn-engine=locked'],
    ['de', 'steering-wheel', 'jetzt dreht er sich, super', 'steering-wheel=frees'],
    ['pl', 'tap', 'stukam, stukam i bez zmian', 'tap=no-change'],
  ]);
});

describe('a word that has another use beside the answer tells no other fact', () => {
  hold([
    ['en', 'drive', 'an old diesel pickup', 'drive=diesel'],
    ['en', 'terminals', 'the minus one is loose', 'terminals=loose'],
    ['en', 'drive', 'all electric, no engine at all', 'drive=electric-only'],
    [
      'en',
      null,
      'good morning, my manual car just clicks once',
      'complaint=single-click, transmission=manual',
    ],
    ['en', null, 'cranks fine, the reader shows P0335', 'complaint=normal-crank'],
  ]);
});

describe('a fuel that stands beside what kind of vehicle it is, is its own', () => {
  hold([
    ['en', null, 'my petrol estate just clicks fast', 'complaint=rapid-clicking, drive=petrol'],
    ['de', null, 'mein diesel kombi klackt nur einmal', 'complaint=single-click, drive=diesel'],
    [
      'pl',
      null,
      'benzyna w automacie, tylko cyka szybko',
      'complaint=rapid-clicking, drive=petrol, transmission=automatic',
    ],
  ]);
});

describe('a danger beside the place is raised', () => {
  hold([
    [
      'en',
      'place',
      'in the workshop, orange cable chewed to the copper',
      'interrupt, place=workshop',
    ],
    [
      'pl',
      'place',
      'w warsztacie, wiązka pomarańczowa po stłuczce rozerwana',
      'interrupt, place=workshop',
    ],
    [
      'de',
      'place',
      'in der werkstatt, das orange kabel ist durchgescheuert',
      'interrupt, place=workshop',
    ],
  ]);
});

describe('a first message tells what came of what was tried', () => {
  hold([
    ['en', null, 'new relay in, no change', 'relay-swap=no-change'],
    ['en', null, 'in P nothing, in neutral it cranks', 'neutral-try=cranks'],
    ['en', null, 'diesel, hit the starter with a hammer and it spun', 'drive=diesel, tap=cranks'],
    [
      'de',
      null,
      'Benziner, mit dem Zweitschlüssel springt er an',
      'drive=petrol, other-key=starts',
    ],
    ['pl', null, 'na N też nie kręci, diesel', 'drive=diesel, neutral-try=no-change'],
    // What was changed before is no relay that was changed for another.
    [
      'de',
      null,
      'gestern den Anlasser getauscht, jetzt klackt es einmal',
      'complaint=single-click, history=work-just-done',
    ],
    ['de', null, 'Schlüssel geht nicht rum, Lenkrad ist auch blockiert', 'complaint=key-stuck'],
  ]);
});

describe('by what it is started is told by the moment of something else', () => {
  hold([
    ['de', null, 'beim Drehen des Schlüssels kommt kein Laut', 'complaint=silent, ignition=key'],
    ['pl', null, 'po wciśnięciu przycisku cyka', 'complaint=rapid-clicking, ignition=button'],
  ]);
});

describe('a saying in the words of a danger raises none, and a danger beside it is raised', () => {
  hold([
    ['en', 'complaint', 'it fires, then dies', 'complaint=starts-then-stops'],
    ['en', 'complaint', 'cam belt broke, spins fast', 'complaint=free-spin'],
    ['en', 'complaint', 'hand caught in the belt, belt broke', 'interrupt'],
    ['de', null, 'Rettungswagen vom Kreis, Automatik', 'transmission=automatic'],
    ['de', null, 'Rettungswagen bitte, Automatik', 'interrupt'],
    ['pl', null, 'paliwa pod korek, cyka', 'complaint=rapid-clicking, fuel-level=has-fuel'],
    ['pl', null, 'benzyna leci pod auto', 'interrupt'],
  ]);
});

describe('what is only said by the way is no fact', () => {
  hold([
    ['ar', 'drive', 'بنزين عادي', 'drive=petrol'],
    ['ar', 'ignition', 'مفتاح عادي', 'ignition=key'],
    ['ar', 'ready-lamp', 'ماطلعت كلمة ريدي', 'ready-lamp=not-ready'],
    ['es', 'ignition', 'botón, la otra llave la tiene mi mujer', 'ignition=button, kit=second-key'],
    ['fr', 'kit', 'mon voisin est là pour un coup de main', 'kit=helper'],
    ['fr', null, "jai deux barres d'essence", 'drive=petrol'],
    ['ar', 'battery-look', 'منتفخة ويطلع منها بخار', 'battery-look=swollen, interrupt'],
  ]);
});

describe('a clause of a first message that tells nothing else says what the vehicle does', () => {
  hold([
    [
      'en',
      null,
      'lights were left on, now absolutely nothing',
      'complaint=silent, history=lights-left-on',
    ],
    ['de', null, 'Diesel, Schlüssel gedreht, nix', 'complaint=silent, drive=diesel, ignition=key'],
    [
      'es',
      null,
      'dejé las luces puestas y ahora silencio total',
      'complaint=silent, history=lights-left-on',
    ],
    [
      'fr',
      null,
      'boîte auto, au parking, je tourne la clé, rien de rien',
      'complaint=silent, ignition=key, place=parking, transmission=automatic',
    ],
    [
      'pl',
      null,
      'diesel, stał miesiąc pod blokiem, teraz kompletna cisza',
      'complaint=silent, drive=diesel, history=parked-long',
    ],
    [
      'ar',
      null,
      'ديزل، واقفة بالبيت، ادور المفتاح ولا شي',
      'complaint=silent, drive=diesel, ignition=key, place=home',
    ],
    ['en', null, 'petrol, no tools on me, nothing', 'drive=petrol, kit=none'],
    ['es', null, 'diésel, iba a cien y se paró solo', 'drive=diesel, when=stopped-while-driving'],
  ]);
});

describe('that there are no tools is told beside another answer', () => {
  hold([
    ['en', 'place', 'work car park, and not a single tool with me', 'kit=none, place=parking'],
    ['de', 'place', 'Rastplatz, und leider kein Werkzeug dabei', 'kit=none, place=parking'],
    ['es', 'place', 'en el arcén y sin ninguna herramienta encima', 'kit=none, place=shoulder'],
    ['ar', 'place', 'في موقف المول وما عندي اي عدة', 'kit=none, place=parking'],
    ['de', 'history', 'angelassen hab ich nix, er stand lang', 'history=parked-long'],
  ]);
});

describe('what some words surely tell is told beside whatever else is said', () => {
  hold([
    [
      'en',
      'transmission',
      'manual, it was jump started by a mate on sunday',
      'history=jumped-recently, transmission=manual',
    ],
    [
      'de',
      'terminals',
      'fest und sauber, die Batterie ist trocken und ohne Risse',
      'battery-look=sound, terminals=clean-tight',
    ],
    [
      'fr',
      'terminals',
      'bien serrées, la batterie est sèche et intacte',
      'battery-look=sound, terminals=clean-tight',
    ],
    [
      'pl',
      'terminals',
      'dokręcone, akumulator suchy i nigdzie nie pęknięty',
      'battery-look=sound, terminals=clean-tight',
    ],
    ['de', 'battery-recharged', '12,7 nach drei Stunden Ruhe', 'battery-recharged=12.7 V'],
    ['pl', 'battery-recharged', 'ładowałem całą noc, teraz 12,6', 'battery-recharged=12.6 V'],
    ['fr', 'relay-feed', "12 volts, et y a de l'acide qui coule partout", 'interrupt'],
  ]);
});

describe('what is no kit at hand is not told beside an answer', () => {
  hold([
    ['es', 'drop-positive', '180 mV entre borne + y perno del arrancador', 'drop-positive=180 mV'],
    ['ar', 'battery-rest', 'هاي شاحنة بطاريتين، طلع 24.8', '24 V vehicle, battery-rest=24.8 V'],
  ]);
});

describe('half off and half full are no figures', () => {
  hold([
    [
      'en',
      'battery-look',
      'looks fine, one clamp is half off',
      'battery-look=sound, terminals=loose',
    ],
    [
      'de',
      'battery-look',
      'sieht gut aus, eine Klemme hängt halb ab',
      'battery-look=sound, terminals=loose',
    ],
    [
      'fr',
      null,
      'il tourne bien, pompe muette à la mise du contact, réservoir à moitié plein',
      'complaint=normal-crank, fuel-level=has-fuel, pump-sound=none',
    ],
  ]);
});

describe('what was put in by mistake corrects nothing', () => {
  hold([
    [
      'pl',
      null,
      'pomyliłem dystrybutory, wlałem 30 litrów benzyny do diesla',
      'drive=diesel, fuel-level=wrong-fuel',
    ],
    [
      'fr',
      null,
      'je me suis trompé de pistolet, j’ai mis 30 litres d’essence dans mon diesel',
      'drive=diesel, fuel-level=wrong-fuel',
    ],
  ]);
});

describe('what the other answers leave nothing to ask for, or is hardly told of a thing that is not named, is not taken', () => {
  hold([
    [
      'es',
      'complaint',
      'la llave entra hasta el fondo pero girar no gira',
      'complaint=key-stuck, ignition=key',
    ],
    ['en', 'complaint', 'no smoke no funny smells, it just makes no sound', 'complaint=silent'],
    ['de', 'complaint', 'Kein Rauch, kein Gestank, er ist einfach mausetot', 'complaint=silent'],
    [
      'en',
      'terminals',
      'green crust on both of them, the battery is whole and dry',
      'battery-look=sound, terminals=corroded',
    ],
    ['de', 'fuel-level', 'Nadel liegt ganz unten, die Lampe brennt seit Tagen', 'fuel-level=empty'],
    // Named, or told in words that are said of nothing else, they are taken.
    ['en', 'complaint', 'silent, and the clutch was right down', 'clutch=down, complaint=silent'],
    [
      'en',
      'fuel-level',
      'the tank is full, and no smell of petrol',
      'flooded-smell=no, fuel-level=has-fuel',
    ],
    [
      'en',
      'complaint',
      'clicks once, and the battery lamp was lit yesterday',
      'charge-lamp=was-lit, complaint=single-click',
    ],
  ]);
});

describe('what was changed years ago is no work just done', () => {
  hold([
    [
      'en',
      null,
      'one loud click. Battery changed 2 years ago. clamps are clean',
      'battery-age=2 a, complaint=single-click, terminals=clean-tight',
    ],
    [
      'fr',
      null,
      'un gros clac et puis rien. Batterie changée il y a 2 ans. Cosses propres et serrées.',
      'battery-age=2 a, complaint=single-click, terminals=clean-tight',
    ],
    // What was done since then stays.
    [
      'en',
      null,
      'the battery was replaced 3 years ago and last week they did the clutch, it grinds',
      'battery-age=3 a, complaint=grinding, history=work-just-done',
    ],
  ]);
});

describe('the fuel is told beside what asks of fuel, where the rest answers without it', () => {
  hold([
    ['en', 'fuel-level', "half a tank, it's a petrol", 'drive=petrol, fuel-level=has-fuel'],
    ['de', 'fuel-level', 'mehr als halb voll, benziner', 'drive=petrol, fuel-level=has-fuel'],
    [
      'fr',
      'history',
      'je viens de faire le plein y a 10 min, c une essence',
      'drive=petrol, history=just-fuelled',
    ],
    ['es', 'boost', 'solo repiquetea, ojo que el carro es diesel', 'boost=clicks, drive=diesel'],
    ['en', 'fuel-level', 'half a tank of petrol', 'fuel-level=has-fuel'],
    ['en', 'fuel-level', 'put petrol in, its a diesel', 'drive=diesel, fuel-level=wrong-fuel'],
    ['en', 'terminals', 'neg clamp spins round if i twist it', 'terminals=loose'],
  ]);
});

describe('what is only a hedge is no “don’t know”', () => {
  hold([
    ['de', 'fuel-level', 'viertelvoll würd ich sagen', 'fuel-level=has-fuel'],
    ['en', 'fuel-level', "half full i'd say", 'fuel-level=has-fuel'],
    ['ar', 'relay-feed', '11.9 والله اعلم', 'relay-feed=11.9 V'],
    ['ar', 'relay', 'والله اعلم', 'talk'],
    // Where nothing was asked nothing can be unable.
    ['pl', null, 'pomocy!! nie moge uruchomic samochodu', 'asked back'],
    ['en', null, "help i can't get it going", 'asked back'],
  ]);
});
