/**
 * The one figure that was read, told from others in the same text: those that are taken back, that
 * were, that ought to be, and those of the clock, the price, the label and the vehicle. What cannot
 * be told is asked back. Common practice, no source.
 */
import type { Understood } from '@keyturn/language';
import { describe, expect, test } from 'vitest';
import { understandIn } from './support/understand-in.ts';

/** What was understood as one line: `battery-rest=12.65 V`, `label 540 A en`, `24 V vehicle`. */
function show(understood: Understood): string {
  if (understood.type === 'offers') return 'offered';
  if (understood.type !== 'input') return 'asked back';
  const said = understood.inputs.flatMap((input): string[] => {
    if (input.type === 'context') {
      const { 'vehicle.nominal': nominal, 'vehicle.battery.rating': rating } = input.set;
      const { value } = (rating ?? {}) as { value?: number };
      const standard = input.set['vehicle.battery.standard'];
      const litres = input.set['vehicle.displacement'];
      if (typeof litres === 'number') return [`engine of ${String(litres)} L`];
      if (value === undefined) return [`${String(nominal)} V vehicle`];
      return [`label ${String(value)} A${typeof standard === 'string' ? ` ${standard}` : ''}`];
    }
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

const rest = (value: number): string => `battery-rest=${String(value)} V`;

describe('what is at hand is told beside a figure, and the figure is not lost', () => {
  const both = 'battery-rest=12.4 V, kit=charger';
  hold([
    ['en', 'battery-rest', '12.4, got a charger', both],
    ['es', 'battery-rest', '12,4 y tengo cargador', both],
    ['de', 'battery-rest', '12,4, hab ein Ladegerät da', both],
    ['fr', 'battery-rest', "12,4, j'ai un chargeur", both],
    ['pl', 'battery-rest', '12,4, mam prostownik', both],
    ['ar', 'battery-rest', '12.4، عندي شاحن', both],
    ['en', 'battery-age', 'three years, got jump leads', 'battery-age=3 a, kit=boost-source'],
    ['ar', 'battery-age', 'سنتين تقريبا، واخويا معايا يساعد', 'battery-age=2 a, kit=helper'],
  ]);
});

describe('what the vehicle is, is told beside a figure', () => {
  const petrol = 'crank-current=185 A, drive=petrol, engine of 1.6 L';
  hold([
    ['en', 'crank-current', '185 amps, its a 1.6 petrol', petrol],
    ['es', 'crank-current', '185 A, es gasolina 1.6', petrol],
    ['de', 'crank-current', '185 A, Benziner 1,6', petrol],
    ['fr', 'crank-current', '185 A, essence 1,6', petrol],
    ['pl', 'crank-current', '185 A, benzyna 1.6', petrol],
    ['ar', 'crank-current', '185 امبير، بنزين 1.6', petrol],
    ['en', 'battery-rest', '12.4, automatic', 'battery-rest=12.4 V, transmission=automatic'],
    ['de', 'battery-rest', '12,4, Diesel', 'battery-rest=12.4 V, drive=diesel'],
    ['en', 'battery-rest', '12.4, smells of petrol', 'battery-rest=12.4 V, flooded-smell=yes'],
    // At the starter itself it is the solenoid that is called so.
    ['pl', 'drop-contacts', 'automat: między śrubami 12,4', 'drop-contacts=12.4 V'],
  ]);
});

describe('the size of an engine beside its fuel is no reading, and hides none', () => {
  hold([
    [
      'en',
      null,
      'my 1.9 diesel clicks once',
      'complaint=single-click, drive=diesel, engine of 1.9 L',
    ],
    [
      'es',
      null,
      'diesel 1.9, gira muy lento',
      'complaint=slow-crank, drive=diesel, engine of 1.9 L',
    ],
    [
      'de',
      null,
      '2.0 Diesel, dreht nur langsam',
      'complaint=slow-crank, drive=diesel, engine of 2 L',
    ],
    [
      'fr',
      null,
      'diesel 1.9, tourne lentement',
      'complaint=slow-crank, drive=diesel, engine of 1.9 L',
    ],
    [
      'pl',
      null,
      'diesel 1.9, kręci bardzo wolno',
      'complaint=slow-crank, drive=diesel, engine of 1.9 L',
    ],
    ['ar', null, 'ديزل 1.9، يدور ببطء', 'complaint=slow-crank, drive=diesel, engine of 1.9 L'],
    ['en', null, 'battery 12.4, 1.6 petrol', 'battery-rest=12.4 V, drive=petrol, engine of 1.6 L'],
    // What was put in is no engine.
    ['de', 'history', 'hab 5,5 l Diesel getankt', 'history=just-fuelled'],
    ['en', 'history', 'put 4.5 l diesel in', 'history=just-fuelled'],
    ['es', 'history', 'le puse 2,5 litros gasolina', 'history=just-fuelled'],
    // Without a fuel it may be a loss.
    ['en', 'drop-ground', '0.8 to the engine', 'drop-ground=0.8 V'],
  ]);
});

describe('volts of a battery stand beside a frost, where nothing was asked', () => {
  const both = 'air-temperature=-15 Cel, battery-rest=12.1 V';
  hold([
    ['en', null, '-15 out, battery shows 12.1', both],
    ['es', null, '-15 fuera, la batería marca 12,1', both],
    ['de', null, '-15 draußen, Batterie zeigt 12,1', both],
    ['fr', null, '-15 dehors, batterie 12,1', both],
    ['pl', null, '-15 na dworze, akumulator 12,1', both],
    ['ar', null, 'برا -15، البطارية 12.1', both],
  ]);
});

describe('years in a clause of their own are those of the battery that was spoken of, where no vehicle is', () => {
  hold([
    ['en', null, 'battery 12.4, 4 years old', 'battery-age=4 a, battery-rest=12.4 V'],
    ['de', null, 'Batterie 12,4, 4 Jahre alt', 'battery-age=4 a, battery-rest=12.4 V'],
    ['en', 'battery-look', 'looks fine, its 6 years old', 'battery-age=6 a, battery-look=sound'],
    ['es', 'battery-look', 'está bien, tiene 6 años', 'battery-age=6 a, battery-look=sound'],
    ['fr', 'battery-look', 'elle est intacte, elle a 6 ans', 'battery-age=6 a, battery-look=sound'],
    ['pl', 'battery-look', 'wygląda dobrze, ma 6 lat', 'battery-age=6 a, battery-look=sound'],
    ['ar', 'battery-look', 'سليمة، عمرها 6 سنين', 'battery-age=6 a, battery-look=sound'],
    ['en', 'battery-look', 'looks fine, the car is 6 years old', 'battery-look=sound'],
    ['en', null, 'battery 12.4, stood for 2 years', rest(12.4)],
    // What a meter is said to do tells nothing but the figure.
    ['en', null, 'it reads 12.4', 'asked back'],
  ]);
});

describe('losses told side by side are one each, though what is lost drops', () => {
  const both = 'drop-ground=1.1 V, drop-positive=0.2 V';
  hold([
    ['en', 'drop-positive', 'positive drop 0.2, ground drop 1.1', both],
    ['en', 'drop-ground', 'ground drop 1.1, positive drop 0.2', both],
    ['es', 'drop-positive', 'caída positivo 0,2, caída de masa 1,1', both],
    ['de', 'drop-positive', 'Spannungsfall Plus 0,2, Spannungsfall Masse 1,1', both],
    ['fr', 'drop-positive', 'chute plus 0,2, chute masse 1,1', both],
    ['pl', 'drop-positive', 'spadek na plusie 0,2, spadek na masie 1,1', both],
    ['ar', 'drop-positive', 'هبوط الموجب 0.2، هبوط الأرضي 1.1', both],
    ['en', 'drop-positive', 'dropped from 0.6 to 0.2', 'drop-positive=0.2 V'],
    ['en', 'drop-positive', 'was 0.6, after cleaning drops to 0.1', 'drop-positive=0.1 V'],
  ]);
});

describe('how many things there were is no second figure', () => {
  hold([
    ['en', 'battery-crank', 'lowest i saw was 7.9V on the 2nd go', 'battery-crank=7.9 V'],
    ['de', 'battery-rest', 'hab 3x gemessen, immer 12,73v', rest(12.73)],
    ['es', 'battery-rest', '12,6, 2 niños en el coche', rest(12.6)],
    ['fr', 'battery-rest', '12,6 au 2e essai', rest(12.6)],
    ['pl', 'battery-rest', 'mierzone 3x, zawsze 12,7', rest(12.7)],
    ['ar', 'battery-recharged', 'شحنتها ٨ ساعات وريحتها ٣ وطلعت ١٢٫٧', 'battery-recharged=12.7 V'],
    [
      'en',
      null,
      'battery 12.6 at rest, falls to 9.2 while cranking, need it by 4',
      'battery-crank=9.2 V, battery-rest=12.6 V',
    ],
    ['en', 'battery-rest', '12.6 and 3', 'offered'],
    // A small figure that came after is the one that was read, or asked about.
    ['en', 'battery-rest', 'was 12.6, now 4', rest(4)],
    ['en', 'battery-rest', '12.6 yesterday, 3 today', rest(3)],
    ['de', 'battery-rest', 'gestern 12,6, heute 3', rest(3)],
    ['fr', 'battery-rest', 'hier 12,6, ce matin 3', rest(3)],
    ['es', 'battery-rest', 'ayer 12,6, hoy 3', rest(3)],
    ['en', 'battery-crank', 'first 9.6 then 4', 'offered'],
    ['de', 'battery-crank', '9,6, beim zweiten Mal bricht sie auf 4 ein', 'offered'],
    ['en', 'battery-lamps', '11.4 but drops to 4', 'battery-lamps=4 V'],
    ['en', 'drop-ground', '0.2 and 1 on the other', 'offered'],
  ]);
});

describe('a frost that has no unit is told beside the volts, and beside no pole', () => {
  hold([
    [
      'de',
      'battery-rest',
      '12,1 und es hat minus 5 bei uns',
      `air-temperature=-5 Cel, ${rest(12.1)}`,
    ],
    ['pl', 'battery-rest', '12,3 i na zewnątrz minus 6', `air-temperature=-6 Cel, ${rest(12.3)}`],
    ['de', 'drop-ground', '0,3, am minus 12', 'offered'],
  ]);
});

describe('what a tester shows is no label', () => {
  hold([
    ['fr', 'battery-tester', 'le testeur marque 510 A', 'battery-tester=510 A'],
    ['en', 'battery-tester', 'the tester reads 510 A', 'battery-tester=510 A'],
  ]);
});

describe('a thousand amperes are kA, and that a figure is all right is no unit of it', () => {
  hold([
    ['es', 'crank-current', '0,3 kA', 'crank-current=0.3 kA'],
    ['de', 'crank-current', '0,2 Kiloampere', 'crank-current=0.2 kA'],
    ['fr', 'relay-feed', '12,3 ok', 'relay-feed=12.3 V'],
    ['pl', 'battery-rest', '12,6 okej', 'battery-rest=12.6 V'],
  ]);
});

describe('a figure that is taken back gives way to the one behind it', () => {
  hold([
    ['en', 'battery-rest', '12.3, no wait 12.5', rest(12.5)],
    ['en', 'battery-rest', '12.3... scratch that, 12.5', rest(12.5)],
    ['es', 'battery-rest', '12,3 digo 12,5', rest(12.5)],
    ['de', 'battery-rest', '12,3 Quatsch 12,5', rest(12.5)],
    ['fr', 'battery-rest', '12,3 euh non 12,5', rest(12.5)],
    ['pl', 'battery-rest', '12,3 znaczy 12,5', rest(12.5)],
    ['ar', 'battery-rest', '12.3 قصدي 12.5', rest(12.5)],
    ['ar', 'battery-rest', '12.3 لا لا 12.5', rest(12.5)],
  ]);
});

describe('which of two is denied cannot be told where "no" may be either', () => {
  hold([
    ['es', 'battery-rest', '12,3 no 12,5', 'offered'],
    ['pl', 'battery-rest', '12,3 nie 12,5', 'offered'],
    ['en', 'battery-rest', '12.4 or maybe 12.1', 'offered'],
  ]);
});

describe('of two figures of which nobody knows which it is none is taken', () => {
  hold([
    ['en', 'battery-rest', '12.2 and 12.6, take your pick', 'offered'],
    ['es', 'battery-rest', '12,2 y 12,6, no sé cuál vale', 'offered'],
    ['de', 'battery-rest', '12,2 gestern Abend, 12,7 heute früh, such dir eins aus', 'offered'],
    ['fr', 'battery-rest', '12,2 et 12,6, je sais pas lequel est bon', 'offered'],
    ['pl', 'battery-rest', 'wieczorem 12,8 a rano 12,3, nie wiem które podać', 'offered'],
    ['ar', 'battery-rest', '12.2 و 12.6 مش عارف أي واحد فيهم', 'offered'],
  ]);
});

describe('what a figure was, and what it ought to be, is not what it is', () => {
  hold([
    ['en', 'battery-rest', 'was 12.4 yesterday, now 11.9', rest(11.9)],
    ['en', 'battery-rest', '12.2, was expecting more like 12.6', rest(12.2)],
    ['es', 'battery-rest', 'ayer 12,4 y hoy 11,9', rest(11.9)],
    ['de', 'battery-rest', 'sollte 12,6 sein, ist aber 12,2', rest(12.2)],
    ['fr', 'battery-rest', "c'était 12,4 hier, maintenant 11,9", rest(11.9)],
    ['pl', 'battery-rest', 'wczoraj było 12,4 a teraz 11,9', rest(11.9)],
    ['ar', 'battery-rest', 'أمس كانت 12.4 واليوم 11.9', rest(11.9)],
    ['en', 'battery-rest', 'first 12.6 then 12.2', 'offered'],
  ]);
});

describe('a figure that fell is read where it ended, and a range is asked back', () => {
  const crank = 'battery-crank=9.8 V';
  hold([
    ['en', 'battery-crank', 'dropped from 12.5 to 9.8 when cranking', crank],
    ['en', 'battery-rest', 'dropped from 12.5 to 9.8 when cranking', `${crank}, ${rest(12.5)}`],
    ['es', 'battery-crank', 'baja de 12,5 a 9,8', crank],
    ['de', 'battery-crank', 'sackt von 12,5 auf 9,8 ab', crank],
    ['fr', 'battery-crank', 'ça passe de 12,5 à 9,8', crank],
    ['pl', 'battery-crank', 'spada z 12,5 na 9,8', crank],
    ['ar', 'battery-crank', 'نزلت من 12.5 ل 9.8', crank],
    ['en', 'battery-crank', 'from nine to ten', 'offered'],
    ['en', 'crank-current', 'peaked at 600 then settled at 175', 'crank-current=175 A'],
  ]);
});

describe('the time, the price, the tries, the range of the meter and the engine are no voltage', () => {
  hold([
    ['es', 'dash', 'se apaga, hace 3 grados', 'air-temperature=3 Cel, dash=goes-out'],
    ['fr', 'codes', "défaut d'allumage, bobine cylindre 2", 'codes=ignition'],
    ['en', 'battery-rest', 'measured it at 7 this morning, 12.4', rest(12.4)],
    ['en', 'battery-rest', 'on the 20V range it says 12.4', rest(12.4)],
    ['en', 'battery-rest', 'its a 2012 car and the meter says 12.4', rest(12.4)],
    ['es', 'battery-rest', 'lo medí tres veces y siempre 12,4', rest(12.4)],
    ['es', 'battery-rest', '12,4 con un polímetro de 10 euros', rest(12.4)],
    [
      'de',
      'battery-rest',
      '1,6 Liter Benziner, Batterie 12,4',
      'battery-rest=12.4 V, drive=petrol, engine of 1.6 L',
    ],
    ['de', 'battery-rest', '12,4 um halb acht', rest(12.4)],
    ['fr', 'battery-rest', '12,2 soit 50 pour cent', rest(12.2)],
    ['fr', 'battery-rest', 'sur le calibre 20 V ça donne 12,4', rest(12.4)],
    ['pl', 'battery-rest', 'auto z 2012 roku, miernik pokazuje 12,4', rest(12.4)],
    ['pl', 'battery-rest', 'stoi od 3 dni, 12,4', rest(12.4)],
    ['ar', 'battery-rest', 'الساعة ٨ طلعت ١٢٫٤', rest(12.4)],
    ['en', 'relay-command', 'zero volts on 86', 'relay-command=0 V'],
    ['en', 'battery-load-test', '9.9 volts at 15 s with 300 amps', 'battery-load-test=9.9 V'],
  ]);
});

describe('the rating on the label is told beside what was measured, or alone', () => {
  const tester = 'battery-tester=420 A';
  hold([
    ['en', 'battery-tester', '420 out of 640', `${tester}, label 640 A`],
    ['en', 'battery-tester', 'says 420A, label says 640A EN', `${tester}, label 640 A en`],
    ['en', 'battery-rest', 'it says 540 CCA on the label', 'label 540 A'],
    ['es', 'battery-tester', 'da 420, en la etiqueta pone 640', `${tester}, label 640 A`],
    ['de', 'battery-tester', 'zeigt 420 A, auf dem Etikett stehen 640', `${tester}, label 640 A`],
    ['fr', 'battery-tester', "420 A, l'étiquette indique 640", `${tester}, label 640 A`],
    ['pl', 'battery-tester', '420 A, na etykiecie 640', `${tester}, label 640 A`],
    ['ar', 'battery-tester', '420 أمبير والملصق 640', `${tester}, label 640 A`],
    ['en', 'battery-tester', 'the tester printed 388 A', 'battery-tester=388 A'],
  ]);
});

describe('a vehicle of 24 V is told beside anything else, and its volts are no reading', () => {
  hold([
    ['en', null, '24 V lorry and nothing happens', '24 V vehicle, complaint=silent'],
    ['en', 'battery-rest', '24v system, 25.1', `24 V vehicle, ${rest(25.1)}`],
    ['es', 'kit', 'camión de 24 voltios', '24 V vehicle'],
    ['fr', 'battery-rest', "24,8 c'est un camion", `24 V vehicle, ${rest(24.8)}`],
    ['pl', null, 'ciągnik siodłowy 24V, kompletna cisza', '24 V vehicle, complaint=silent'],
  ]);
});

describe('a meter that shows nothing, or another instrument, gives no voltage', () => {
  hold([
    ['en', 'battery-rest', 'meter shows OL', 'asked back'],
    ['en', 'battery-rest', 'nothing on the display', 'asked back'],
    ['en', 'battery-rest', 'it just shows 1', 'offered'],
    ['en', 'battery-rest', '1.265', 'offered'],
    ['en', 'battery-rest', 'twelve sixty five on the hydrometer', 'asked back'],
    ['es', 'battery-rest', 'no marca nada', 'asked back'],
    ['es', 'battery-rest', '1,265', 'offered'],
    ['de', 'battery-rest', 'Display bleibt dunkel', 'asked back'],
    ['fr', 'battery-rest', "l'écran reste noir", 'asked back'],
    ['pl', 'battery-rest', 'wyświetlacz jest pusty', 'asked back'],
    ['ar', 'battery-rest', 'ما يعطي شي', 'asked back'],
  ]);
});

describe('a span of time without its number is one', () => {
  const year = 'battery-age=1 a';
  hold([
    ['en', 'battery-age', 'fitted it a year ago', year],
    ['en', 'battery-age', 'a month ago', 'battery-age=1 mo'],
    ['de', 'battery-age', 'vor einem Jahr eingebaut', year],
    ['pl', 'battery-age', 'wymieniałem rok temu', year],
    ['ar', 'battery-age', 'مركبة من سنة', year],
    ['ar', 'battery-age', 'من شهرين', 'battery-age=2 mo'],
    ['en', 'battery-age', 'less than a year', 'battery-age=new'],
    ['ar', 'battery-age', 'كذا سنة', 'asked back'],
  ]);
});

describe('of a span of time so much is taken as is said to be lacking', () => {
  hold([
    ['ar', 'battery-age', 'سنة الا ربع', 'battery-age=0.75 a'],
    ['ar', 'battery-age', 'سنة الا ثلاث شهور', 'battery-age=9 mo'],
    ['en', 'battery-age', 'a year less three months', 'battery-age=9 mo'],
    ['pl', 'battery-age', 'rok bez trzech miesięcy', 'battery-age=9 mo'],
    ['en', 'battery-age', 'less than three months', 'asked back'],
    ['en', 'battery-age', 'three adn a half yrs', 'battery-age=3.5 a'],
  ]);
});

describe('the Polish sign of the ampere is no "but", and the "but" no sign', () => {
  hold([
    ['pl', null, '410 A na cęgach przy kręceniu', 'crank-current=410 A'],
    ['pl', 'battery-rest', '12,6 A potem 9,8', 'offered'],
    ['pl', 'battery-rest', 'AKUMULATOR 12,4 A ROZRUSZNIK CICHO', `${rest(12.4)}, complaint=silent`],
  ]);
});

describe('a clamp is the one on the post as well as that of the meter', () => {
  hold([
    ['en', 'drop-positive', '0.4 on the clamp', 'drop-positive=0.4 V'],
    ['fr', 'drop-ground', '0,3 sur la pince', 'drop-ground=0.3 V'],
    ['de', 'battery-rest', '12,4 mit der Stromzange', rest(12.4)],
  ]);
});

describe('what goes on while a figure is read is no other answer', () => {
  hold([
    ['en', 'battery-crank', '9.85V while she turns it', 'battery-crank=9.85 V'],
    ['es', 'battery-crank', '9,85 V mientras ella gira la llave', 'battery-crank=9.85 V'],
    ['en', 'drop-ground', '0.15 with the helper cranking', 'drop-ground=0.15 V'],
    ['de', 'relay-feed', '12,1 zwischen 30 und Masse', 'relay-feed=12.1 V'],
    ['en', 'battery-rest', 'no load, 12.6', rest(12.6)],
    ['en', 'battery-rest', 'after cranking it reads 12.1', rest(12.1)],
    ['de', 'battery-rest', '12,7 seit dem Laden gestern Abend', rest(12.7)],
    ['de', 'battery-recharged', '12,7 nach 8 Stunden laden', 'battery-recharged=12.7 V'],
    ['fr', 'battery-recharged', '12,85 après la nuit au repos', 'battery-recharged=12.85 V'],
    ['en', 'battery-recharged', '12.85 after the night at rest', 'battery-recharged=12.85 V'],
  ]);
});

describe('a figure of another unit is taken where it is plain what it was read of', () => {
  const turning = 'battery-crank=9.9 V, crank-current=165 A';
  hold([
    ['en', 'battery-crank', '9.9 and 165 amps on the clamp', turning],
    ['en', 'crank-current', '165 amps, with the posts down at 9.9 V', turning],
    ['es', 'battery-crank', '9,9 y la pinza marca 165 amperios', turning],
    ['es', 'crank-current', '165 amperios y 9,9 en bornes mientras arranca', turning],
    ['de', 'crank-current', '165 A, Klemmen dabei 9,9 V', turning],
    // A bare figure far below the amperes is none of them, though it falls.
    ['en', 'crank-current', 'pulls 165 amps and the battery drops to 9.9', turning],
    ['es', 'crank-current', 'tira 165 amperios y la batería baja a 9,9', turning],
    ['es', 'crank-current', 'baja de 240 amperios a 165', 'crank-current=165 A'],
    ['en', 'crank-current', 'zilch, 0 amps', 'crank-current=0 A'],
    ['fr', 'battery-crank', '9,9 volts et 165 ampères en même temps', turning],
    ['pl', 'crank-current', '165 A, na akumulatorze wtedy 9,9 V', turning],
    ['ar', 'crank-current', '165 امبير، و 9.9 على اقطاب البطارية', turning],
    ['de', 'battery-rest', '12,2 und sie ist sechs Jahre alt', `battery-age=6 a, ${rest(12.2)}`],
    ['pl', 'battery-rest', '12,2 a ma już sześć lat', `battery-age=6 a, ${rest(12.2)}`],
    ['en', 'battery-age', 'six years, it rested at 12.2 volts', `battery-age=6 a, ${rest(12.2)}`],
    ['en', 'battery-rest', '12.2, the car is 9 years old', rest(12.2)],
    ['en', 'battery-rest', '12.2, it stood for 2 years', rest(12.2)],
    ['en', 'battery-rest', '12.2 and 300 amps', rest(12.2)],
  ]);
});

describe('the voltage at rest and the lower one while the starter turns are both taken', () => {
  const both = `battery-crank=9.4 V, ${rest(12.6)}`;
  hold([
    ['en', 'battery-rest', '12.6, drops to 9.4 when she holds the key', both],
    ['en', 'battery-crank', '12.6 at rest and 9.4 while cranking', both],
    ['en', null, 'reads 12.6 at rest, goes down to 9.4 cranking', both],
    ['es', 'battery-rest', '12,6 parado y 9,4 al dar arranque', both],
    ['de', 'battery-crank', 'vorher 12,6, während sie startet 9,4', 'battery-crank=9.4 V'],
    ['fr', 'battery-rest', '12,6 au repos puis 9,4 pendant que ma femme démarre', both],
    ['pl', 'battery-rest', '12,6, przy kręceniu 9,4', both],
    ['ar', 'battery-rest', '12.6 وعند التدوير تصير 9.4', both],
    ['en', 'kit', 'spanners, 10 and 13, and the spare key', 'kit=second-key+hand-tools'],
  ]);
});

describe('the years of the vehicle are not those of its battery', () => {
  const two = 'battery-age=2 a';
  hold([
    ['en', 'battery-age', "the car's 14 but the battery's only 2 years", two],
    ['de', 'battery-age', 'Auto hat 14 Jahre aufm Buckel, die Batterie aber nur 2', two],
    ['fr', 'battery-age', "l'auto a quatorze ans mais la batterie deux", two],
    ['en', 'battery-age', 'two winters, so 2 years', two],
  ]);
});

describe('a count is no reading, and of two losses the worse is asked', () => {
  const worse = 'drop-clamps=0.4 V';
  hold([
    ['en', 'drop-clamps', 'worst of the two is .4, the other nothing', worse],
    ['es', 'drop-clamps', 'en el + 0,05 y en el - 0,4, o sea el peor 0,4', worse],
    ['fr', 'drop-clamps', "le pire des deux c'est 0,4, l'autre 0,02", worse],
    ['es', 'battery-halves', 'son dos baterías, la diferencia 0,3', 'battery-halves=0.3 V'],
    ['pl', 'terminals', 'jakieś takie dwie klemy są', 'asked back'],
    ['de', 'battery-rest', 'auf 20 Gleichspannung gestellt, Anzeige 12,2', rest(12.2)],
    ['pl', 'battery-rest', '12,6 wolta, akumulator dwuletni', `battery-age=2 a, ${rest(12.6)}`],
  ]);
});

describe('what a current peaked at, and what is printed, is not what was read', () => {
  hold([
    ['en', 'crank-current', 'peaked near 600 then sat at 210 amps', 'crank-current=210 A'],
    [
      'de',
      'crank-current',
      'im ersten Moment 700, dann pendelt sichs bei 190 A ein',
      'crank-current=190 A',
    ],
    ['de', 'battery-tester', '385 A, aufgedruckt sind 640', 'battery-tester=385 A, label 640 A'],
    ['de', 'crank-current', 'mal 90 mal 260', 'offered'],
  ]);
});

describe('a rough figure gives way to the exact one, and a bit more is not read', () => {
  hold([
    ['en', 'charging', 'fourteen point something, call it 14.4', 'charging=14.4 V'],
    ['pl', 'battery-crank', 'prawie dziesięć, no 9,9', 'battery-crank=9.9 V'],
    ['pl', 'battery-crank', 'osiem z groszami, powiedzmy 8,2', 'battery-crank=8.2 V'],
    ['fr', 'battery-rest', '12.3 et des poussières', rest(12.3)],
    ['en', 'charging', "it won't go above 12.4", 'charging=12.4 V'],
    ['en', 'charging-later', 'up to 13.9 now', 'charging-later=13.9 V'],
    ['en', 'battery-rest', 'up to 13', 'asked back'],
  ]);
});

describe('the time of day and what is printed on a fuse are no reading', () => {
  hold([
    ['es', 'battery-rest', 'son las doce y media ya', 'asked back'],
    ['ar', 'battery-rest', 'الساعة دلوقتي اتناشر ونص', 'asked back'],
    ['en', 'main-fuse', "that one's an 80 amp", 'asked back'],
  ]);
});

describe('the age of the battery is a figure beside an answer in words', () => {
  const old = 'battery-age=8 a, complaint=slow-crank';
  hold([
    ['en', 'complaint', "turns over slow. the battery's eight years old", old],
    ['de', 'complaint', 'dreht recht träge, Akku ist acht Jahre', old],
    ['pl', 'complaint', 'wolniutko kręci, a aku ma już z osiem lat', old],
  ]);
});

describe('of two clamps the worse is taken, and of two batteries the difference', () => {
  const worse = 'drop-clamps=0.4 V';
  const apart = 'battery-halves=0.4 V';
  hold([
    ['en', 'drop-clamps', '0.02 at the minus and 0.4 at the plus', worse],
    ['en', 'drop-clamps', '0.4 on one and 0.05 on the other', worse],
    ['es', 'drop-clamps', '0,4 en el negativo, el otro 0,02', worse],
    ['de', 'drop-clamps', 'am Minus 0,4, der andere hat nur 0,02', worse],
    ['fr', 'drop-clamps', '0,4 sur la moins et 0,02 sur la plus', worse],
    ['pl', 'drop-clamps', 'na plusie 0,4, na minusie 0,03', worse],
    ['ar', 'drop-clamps', '0.4 عالموجب والتاني 0.03', worse],
    ['en', 'drop-clamps', '0.3 or 0.4 on the positive', 'offered'],
    ['en', 'battery-halves', 'one is 12.6 and the other 12.2 so 0.4 apart', apart],
    ['es', 'battery-halves', 'una da 12,7 y la otra 12,3', apart],
    ['de', 'battery-halves', '12,7 und 12,3', apart],
    ['fr', 'battery-halves', "l'une 12,6 l'autre 12,2, donc 0,4 d'écart", apart],
    ['pl', 'battery-halves', 'jeden ma 12,8 a drugi 12,4', apart],
    ['ar', 'battery-halves', 'واحدة 12.7 والثانية 12.3', apart],
    ['en', 'battery-halves', '12.6 and 12.2, 0.9 apart', 'asked back'],
  ]);
});

describe('what is printed, what was before and what is rounded gives way to what was read', () => {
  hold([
    ['en', 'battery-rest', 'label says 12V 60Ah but I measure only 10.6', rest(10.6)],
    ['pl', 'battery-rest', 'na naklejce 12 V 74 Ah a mierzę 9,4', rest(9.4)],
    ['fr', 'battery-rest', "l'écran donne 12,58 mais il est réglé sur le 20", rest(12.58)],
    ['en', 'battery-rest', '-12.6 as I had the leads the wrong way round', 'offered'],
    ['de', 'battery-rest', 'minus 12,2, hab die Kabel vertauscht', 'offered'],
    ['pl', 'battery-rest', 'minus 12,4', 'offered'],
    ['en', 'battery-crank', 'dips to just under 9, say 8.9', 'battery-crank=8.9 V'],
    ['fr', 'battery-rest', 'onze volts et des poussières, onze virgule trois', rest(11.3)],
    ['pl', 'battery-crank', 'niecałe jedenaście, 10,9', 'battery-crank=10.9 V'],
    ['en', 'crank-after', 'holds 10.4 now, it used to sink to 8.5', 'crank-after=10.4 V'],
    ['es', 'crank-after', 'diez uno ya, antes hacía 8', 'crank-after=10.1 V'],
    ['fr', 'crank-after', "10,6 alors qu'avant c'était 8,9", 'crank-after=10.6 V'],
    ['ar', 'drop-ground-after', '٠.١، كانت ٠.٨', 'drop-ground-after=0.1 V'],
    ['en', 'charging', '12.2 and slowly dropping, it was 12.4 before', 'charging=12.2 V'],
    ['de', 'battery-recharged', '12,71 nach drei Stunden Ruhe', 'battery-recharged=12.71 V'],
    ['fr', 'air-temperature', 'il fait plus ou moins douze', 'air-temperature=12 Cel'],
  ]);
});

describe('frost, and the age and the voltage of the battery, are told by the way', () => {
  const cold = (value: number): string => `air-temperature=${String(value)} Cel`;
  hold([
    [
      'en',
      'when',
      'after standing overnight, it was minus ten here',
      `${cold(-10)}, when=after-standing`,
    ],
    ['de', 'complaint', 'orgelt langsam, hat heut minus 9', `${cold(-9)}, complaint=slow-crank`],
    ['pl', 'when', 'po nocy, a było minus piętnaście', `${cold(-15)}, when=after-standing`],
    ['es', 'place', 'en un parking subterráneo, planta -2', 'place=parking'],
    [
      'en',
      'charge-lamp',
      "It was lit. Battery's only a year old.",
      'battery-age=1 a, charge-lamp=was-lit',
    ],
    [
      'de',
      null,
      'minus 14 grad, batterie is 7 jahre alt und er dreht ganz langsam',
      `${cold(-14)}, battery-age=7 a, complaint=slow-crank`,
    ],
    [
      'en',
      null,
      'parked up since September, three months, now just rapid clicking',
      'complaint=rapid-clicking, history=parked-long',
    ],
    [
      'de',
      'terminals',
      'fest und sauber, Batterie hat 12,3',
      `${rest(12.3)}, terminals=clean-tight`,
    ],
    ['ar', 'terminals', 'نظيفة ومشدودة، البطارية 12.3', `${rest(12.3)}, terminals=clean-tight`],
    [
      'fr',
      'battery-crank',
      '8,7 avec 290 a qui passent',
      'battery-crank=8.7 V, crank-current=290 A',
    ],
  ]);
});

describe('numbers as they are said', () => {
  hold([
    ['en', 'battery-rest', 'twelve oh five', rest(12.05)],
    ['en', 'crank-current', 'three oh five', 'crank-current=305 A'],
    ['en', 'drop-positive', 'three fifty millivolts', 'drop-positive=350 mV'],
    ['en', 'battery-rest', 'twelvepoint four', rest(12.4)],
    ['en', 'crank-current', 'a couple hundred', 'asked back'],
    ['en', 'battery-age', 'a couple of decades', 'asked back'],
    ['es', 'battery-age', 'unas décadas', 'asked back'],
    ['es', 'battery-age', 'esa vieja, unos diez años', 'battery-age=10 a'],
    ['en', 'battery-rest', 'somewhere in the twelves', 'asked back'],
    ['de', 'battery-rest', 'zwölf ein Viertel', rest(12.25)],
    ['de', 'air-temperature', 'so zwanzig fünfundzwanzig', 'offered'],
    ['fr', 'drop-positive', "la moitié d'un volt", 'drop-positive=0.5 V'],
    ['fr', 'drop-positive', 'un volt cinq', 'drop-positive=1.5 V'],
    ['fr', 'relay-feed', 'douze volts un', 'relay-feed=12.1 V'],
    ['pl', 'charging', 'czternaście i jedna', 'charging=14.1 V'],
    ['ar', 'charging', 'اثنا عشر وواحد بالعشره', 'charging=12.1 V'],
    ['ar', 'drop-clamps', 'خمسة عشر ملي فوت', 'drop-clamps=15 mV'],
    ['en', 'drop-clamps', 'fifteen milli vlots', 'drop-clamps=15 mV'],
    ['ar', 'drop-ground', '٠٬٠٩', 'drop-ground=0.09 V'],
    ['ar', 'battery-rest', '١٢٬٢', rest(12.2)],
    ['de', 'battery-tester', 'fünfhundertzwanig', 'battery-tester=520 A'],
    ['de', 'battery-rest', 'zehneinhlab', rest(10.5)],
    ['pl', 'battery-tester', 'pińćset dwajścia', 'battery-tester=520 A'],
    ['pl', 'battery-rest', 'jedynka dwójka kropka zero trzy', rest(12.03)],
    ['ar', 'battery-tester', 'ستميه وعشره امبر', 'battery-tester=610 A'],
    ['en', 'crank-current', 'nothing at all on the clamp meter, zero', 'crank-current=0 A'],
    ['pl', 'battery-rest', 'dwanaście i cztery', rest(12.4)],
    ['pl', 'battery-rest', 'dwanaście i sześćdziesiąt pięć setnych', rest(12.65)],
    ['pl', 'air-temperature', 'pięć na plusie', 'air-temperature=5 Cel'],
    ['ar', 'battery-rest', 'تلتاشر الا ربع', rest(12.75)],
    ['ar', 'battery-rest', 'اتناشر واربعة من عشرة', rest(12.4)],
    ['ar', 'battery-rest', 'الاثني عشر', rest(12)],
    ['ar', 'battery-crank', 'بينزل لستة فولت', 'battery-crank=6 V'],
  ]);
});

describe('a text is said back as it was written', () => {
  const given = (locale: string, text: string): string => {
    const understood = understandIn[locale]!('battery-rest', text);
    return understood.type === 'unclear' ? understood.given : show(understood);
  };

  test('with its accents', () => {
    expect(given('es', '12 montañas')).toBe('12 montañas');
  });

  test('and where it is cut, with a sign that it is', () => {
    const said = given('en', `less than 12 ${'and so on '.repeat(20)}`);
    expect(said).toHaveLength(80);
    expect(said).toMatch(/…$/);
  });
});

describe('of two clamps the worse is taken, also where it is said once more', () => {
  const worse = (value: number): string => `drop-clamps=${String(value)} V`;
  hold([
    ['en', 'drop-clamps', 'plus 0.08, minus 0.5, so 0.5 it is', worse(0.5)],
    ['en', 'drop-clamps', 'one was 0.04 the other 0.7, so 0.7', worse(0.7)],
    ['es', 'drop-clamps', 'en el menos 0,02 y en el mas 0,45, o sea 0,45', worse(0.45)],
    ['de', 'drop-clamps', '0,3 am plus und 0,06 am minus also 0,3', worse(0.3)],
    ['fr', 'drop-clamps', 'au négatif 0,02 et au positif 0,45, alors 0,45', worse(0.45)],
    ['pl', 'drop-clamps', '0,3 na plusie i 0,06 na minusie czyli 0,3', worse(0.3)],
    ['ar', 'drop-clamps', 'السالب ٠٫٠٢ والموجب ٠٫٤٥ يعني ٠٫٤٥', worse(0.45)],
    ['en', 'drop-clamps', 'plus 0.08, minus 0.5, so 0.3', 'offered'],
    ['en', 'drop-clamps', 'fifty mil on red, half a volt on black', worse(0.5)],
  ]);
});

describe('whole volts give way to the figure behind them, and so does nought to degrees close by', () => {
  hold([
    ['es', 'battery-rest', 'doce voltios enteros, 12,05', rest(12.05)],
    ['de', 'battery-rest', 'zwölf volt glatt, 12,05', rest(12.05)],
    ['fr', 'battery-rest', 'douze volts tout rond, 12,05', rest(12.05)],
    ['pl', 'battery-rest', 'równe dwanaście woltów, 12,05', rest(12.05)],
    ['ar', 'battery-rest', '١٢ فولت بالتمام، ١٢٫٠٥', rest(12.05)],
    ['en', 'battery-rest', 'just shy of 12 volts, 11.9', rest(11.9)],
    ['en', 'battery-rest', '12, 12.4', 'offered'],
    ['de', 'air-temperature', 'knapp über null, drei grad vielleicht', 'air-temperature=3 Cel'],
    ['pl', 'air-temperature', 'koło zera, minus jeden chyba', 'air-temperature=-1 Cel'],
    ['ar', 'air-temperature', 'ناقص ستة الصبح', 'air-temperature=-6 Cel'],
  ]);
});

describe('what a battery or its label is called by is not what was read of it', () => {
  hold([
    ['en', 'battery-rest', '10.7 on a 12 volt one, its knackered', rest(10.7)],
    ['es', 'battery-rest', '10,7 en la de 12, creo que esta muerta', rest(10.7)],
    ['fr', 'battery-rest', '10,7 sur une batterie de 12', rest(10.7)],
    ['de', 'battery-rest', '10,7 bei einer 12er, die ist wohl hin', rest(10.7)],
    ['pl', 'battery-rest', '10,7 na akumulatorze 12 V, chyba padł', rest(10.7)],
    [
      'de',
      'battery-tester',
      'zeigt 520 A und auf der batterie steht 640',
      'battery-tester=520 A, label 640 A',
    ],
    [
      'fr',
      'battery-tester',
      "ça affiche 520 A et l'étiquette dit 640",
      'battery-tester=520 A, label 640 A',
    ],
  ]);
});

describe('a bit more of tens of amperes and of years is as good as none', () => {
  hold([
    ['pl', 'battery-tester', 'trzysta pięćdziesiąt amper z hakiem', 'battery-tester=350 A'],
    ['en', 'battery-tester', 'three hundred and fifty odd amps', 'battery-tester=350 A'],
    ['en', 'battery-tester', 'three hundred and a bit', 'asked back'],
    ['es', 'battery-age', 'cinco años y pico', 'battery-age=5 a'],
    ['de', 'battery-age', 'ist eine sechsjährige batterie', 'battery-age=6 a'],
    ['pl', 'battery-age', 'piętnastoletni', 'battery-age=15 a'],
    ['ar', 'battery-age', 'سنتين بالتمام', 'battery-age=2 a'],
  ]);
});

describe('of two voltages the lower is the one while the starter turns', () => {
  const turning = (value: number): string => `battery-crank=${String(value)} V`;
  hold([
    ['en', 'battery-crank', '12.6 to start with and 9.9 when my lad turns the key', turning(9.9)],
    ['fr', 'battery-crank', '12,6 au départ et 9,9 quand ma fille démarre', turning(9.9)],
    ['es', 'battery-crank', 'de 12,6 a nueve y medio', turning(9.5)],
    ['pl', 'battery-crank', 'z 12,6 na dziewięć i pół', turning(9.5)],
    ['es', 'battery-crank', 'de 9,4 a 9,6', 'offered'],
  ]);
});

describe('how long it is since the charging names no charger', () => {
  hold([
    [
      'fr',
      'battery-recharged',
      "trois heures après la charge j'ai 12,78",
      'battery-recharged=12.78 V',
    ],
    [
      'fr',
      'battery-recharged',
      "quatre heures après avoir débranché le chargeur j'ai 12,71",
      'battery-recharged=12.71 V',
    ],
  ]);
});

describe('below what it never falls is where it ends', () => {
  hold([
    ['en', 'battery-crank', 'never went under 10.2', 'battery-crank=10.2 V'],
    ['es', 'battery-crank', 'no baja de 10,8', 'battery-crank=10.8 V'],
    ['de', 'battery-crank', 'nie unter 10,2', 'battery-crank=10.2 V'],
    ['en', 'battery-crank', 'not even 10', 'asked back'],
    ['fr', 'battery-crank', 'même pas 10', 'asked back'],
  ]);
});

describe('two batteries one behind the other make 24 V', () => {
  hold([
    [
      'en',
      'battery-rest',
      'its 24.9, two batteries in series',
      '24 V vehicle, battery-rest=24.9 V',
    ],
    ['pl', 'battery-rest', '24,7 na dwóch', '24 V vehicle, battery-rest=24.7 V'],
    ['en', 'battery-rest', '12.4 on both batteries', rest(12.4)],
  ]);
});

describe('decimals are said digit by digit', () => {
  hold([
    ['en', 'battery-rest', '12 point 6 5', rest(12.65)],
    ['en', 'battery-rest', '12 point nought 5', rest(12.05)],
    ['en', 'battery-rest', '12 point 6 5 minutes later', rest(12.6)],
  ]);
});

describe('a figure below nought of leads that were held the wrong way round is questioned', () => {
  hold([
    ['en', 'battery-rest', 'it says negative 12.44, red and black are flipped', 'offered'],
    ['en', 'charging', '-14.2, mixed the leads up', 'offered'],
    ['en', 'drop-ground', '-0.15, i think the probes may be the wrong way round', 'offered'],
    ['es', 'drop-ground', '-0,15, me parece que puse las puntas al revés', 'offered'],
    ['de', 'battery-rest', 'minus zwölf vier, messspitzen verdreht', 'offered'],
    ['en', 'battery-rest', 'swapped the leads, 12.4', rest(12.4)],
    ['fr', 'drop-ground', "-0,3 j'ai du intervertir les cables", 'offered'],
    ['fr', 'charging', '-14,2 jai confondu le rouge avec le noir', 'offered'],
    ['es', 'charging', '-14,2 me equivoqué de puntas', 'offered'],
    ['es', 'battery-rest', 'marca -12,4, se me cruzaron las pinzas', 'offered'],
    ['pl', 'battery-crank', 'minus 9,8 bo mi sie kabelki zamieniły', 'offered'],
    ['pl', 'battery-rest', 'Minus 12,5 bo mi się sondy zamieniły', 'offered'],
    ['ar', 'battery-rest', '-12.6 اظن قلبت المجسات', 'offered'],
    ['ar', 'battery-crank', 'سالب 9.8 لاني مبدل الاحمر بالاسود', 'offered'],
  ]);
});

describe('a mistyped half is a half, in one word and behind "and"', () => {
  hold([
    ['en', 'battery-rest', 'elevn and a half', 'battery-rest=11.5 V'],
    ['en', 'battery-crank', 'nien and a half', 'battery-crank=9.5 V'],
    ['de', 'battery-rest', 'elfeinhlab', 'battery-rest=11.5 V'],
    ['de', 'charging', 'virzehneinhalb', 'charging=14.5 V'],
    ['fr', 'battery-crank', 'huit et dmi', 'battery-crank=8.5 V'],
    ['fr', 'battery-rest', 'onze et demmi', 'battery-rest=11.5 V'],
    ['es', 'battery-crank', 'ocho y medyo', 'battery-crank=8.5 V'],
    ['es', 'battery-crank', 'nueve boltios con tres', 'battery-crank=9.3 V'],
    ['pl', 'battery-rest', 'dwanascie i pul', 'battery-rest=12.5 V'],
    ['pl', 'battery-crank', 'dziewieć i puł', 'battery-crank=9.5 V'],
    ['ar', 'battery-rest', 'احداش ونص', 'battery-rest=11.5 V'],
  ]);
});

describe('a part behind the unit belongs to its volts', () => {
  hold([
    ['en', 'battery-rest', 'eleven volts three quarters', 'battery-rest=11.75 V'],
    ['en', 'battery-rest', 'twelve volts a half', 'battery-rest=12.5 V'],
    ['de', 'battery-rest', 'elf volt dreiviertel', 'battery-rest=11.75 V'],
    ['de', 'battery-crank', 'neun volt einhalb', 'battery-crank=9.5 V'],
    ['fr', 'battery-rest', 'douze volts un quart', 'battery-rest=12.25 V'],
    ['fr', 'battery-crank', 'neuf volts trois quarts', 'battery-crank=9.75 V'],
    ['es', 'battery-crank', 'nueve voltios tres cuartos', 'battery-crank=9.75 V'],
    ['pl', 'battery-crank', 'dziewięć woltów trzy czwarte', 'battery-crank=9.75 V'],
    ['ar', 'battery-rest', 'اتناشر فولت الا ربع', 'battery-rest=11.75 V'],
    ['ar', 'battery-crank', 'عشرة فولت إلا ربع', 'battery-crank=9.75 V'],
  ]);
});

describe('a part is taken from the whole before it', () => {
  hold([
    ['en', 'battery-rest', 'twelve less a tenth', 'battery-rest=11.9 V'],
    ['en', 'battery-rest', 'thirteen minus a quarter', 'battery-rest=12.75 V'],
    ['de', 'battery-rest', 'zwölf weniger ein zehntel', 'battery-rest=11.9 V'],
    ['de', 'battery-rest', 'zwölf minus ein zehntel also 11,9', 'battery-rest=11.9 V'],
    ['fr', 'battery-rest', 'douze moins un dixième', 'battery-rest=11.9 V'],
    ['fr', 'battery-rest', 'douze moins un dixième soit 11,9', 'battery-rest=11.9 V'],
    ['es', 'battery-rest', 'doce menos una décima', 'battery-rest=11.9 V'],
    ['es', 'battery-rest', 'doce menos una décima, o sea 11,9', 'battery-rest=11.9 V'],
    ['pl', 'battery-rest', 'dwanaście bez jednej dziesiątej', 'battery-rest=11.9 V'],
    ['pl', 'battery-rest', 'trzynaście bez ćwierci czyli 12,75', 'battery-rest=12.75 V'],
    ['ar', 'battery-rest', 'طنعش ناقص ربع', 'battery-rest=11.75 V'],
  ]);
});

describe('a voltage that comes back once the starter is let go is read at its lowest', () => {
  hold([
    ['en', 'battery-crank', 'drops to 10.2 then goes back to 12.4', 'battery-crank=10.2 V'],
    [
      'en',
      'battery-crank',
      'dips to 9.6 then climbs back to 12.3 when i let go',
      'battery-crank=9.6 V',
    ],
    [
      'de',
      'battery-crank',
      'geht auf 10,2 runter und dann wieder auf 12,4',
      'battery-crank=10.2 V',
    ],
    [
      'de',
      'battery-crank',
      'fällt auf 9,6 danach steigt sie wieder auf 12,3',
      'battery-crank=9.6 V',
    ],
    ['fr', 'battery-crank', 'ça tombe à 10,2 puis ça remonte à 12,4', 'battery-crank=10.2 V'],
    ['fr', 'battery-crank', 'descend à 9,6 et revient à 12,3 ensuite', 'battery-crank=9.6 V'],
    ['es', 'battery-crank', 'baja a 10,2 y luego vuelve a 12,4', 'battery-crank=10.2 V'],
    ['es', 'battery-crank', 'cae a 9,6 y después se recupera a 12,3', 'battery-crank=9.6 V'],
    ['pl', 'battery-crank', 'leci do 9,6 i potem wraca do 12,3', 'battery-crank=9.6 V'],
    ['pl', 'battery-crank', 'siada na 10,1, po puszczeniu znowu 12,3', 'battery-crank=10.1 V'],
    ['ar', 'battery-crank', 'تنزل ل 10.2 وبعدين ترجع 12.4', 'battery-crank=10.2 V'],
    ['ar', 'battery-crank', 'بينزل 9.6 ويرجع 12.3 لما اسيب المفتاح', 'battery-crank=9.6 V'],
  ]);
});

describe('a figure behind "instead of" is what it was', () => {
  hold([
    ['en', 'crank-after', 'up from 8.2 to 10.7', 'crank-after=10.7 V'],
    ['de', 'crank-after', '10,6 statt 8 vorher', 'crank-after=10.6 V'],
    ['de', 'drop-positive-after', 'nur noch 0,15 statt 0,9', 'drop-positive-after=0.15 V'],
    ['fr', 'crank-after', '10,6 au lieu de 8 avant', 'crank-after=10.6 V'],
    ['es', 'crank-after', '10,6 en vez de los 8 de antes', 'crank-after=10.6 V'],
    ['es', 'drop-positive-after', 'solo 0,15 en lugar de 0,9', 'drop-positive-after=0.15 V'],
    ['pl', 'crank-after', '10,6 zamiast wcześniejszych 8', 'crank-after=10.6 V'],
    ['pl', 'crank-after', 'z 8,2 na 10,7 skoczyło', 'crank-after=10.7 V'],
    ['ar', 'crank-after', '10.6 بدل 8 قبل', 'crank-after=10.6 V'],
  ]);
});

describe('that it was charged for a night is what was asked for, and no news', () => {
  hold([
    [
      'de',
      'battery-recharged',
      'zehneinhalb und das nach einer nacht laden',
      'battery-recharged=10.5 V',
    ],
    [
      'es',
      'battery-recharged',
      'once y medio y mira que estuvo enchufada toda la noche',
      'battery-recharged=11.5 V',
    ],
    ['es', 'battery-recharged', '11,9, la dejé cargando toda la noche', 'battery-recharged=11.9 V'],
  ]);
});

describe('of two clamps the one that loses is told beside the one that does not', () => {
  hold([
    ['en', 'drop-clamps', 'plus side nothing, minus 0.25', 'drop-clamps=0.25 V'],
    ['de', 'drop-clamps', 'plus nix, minus 0,25', 'drop-clamps=0.25 V'],
    ['de', 'drop-clamps', 'viertelvolt an der minusklemme, null am plus', 'drop-clamps=0.25 V'],
    ['fr', 'drop-clamps', '0,4 côté plus, presque rien côté moins', 'drop-clamps=0.4 V'],
    ['pl', 'drop-clamps', 'na plusie nic, na minusie 0,25', 'drop-clamps=0.25 V'],
    ['pl', 'drop-clamps', '400 miliwoltów na minusie, na plusie tyle co nic', 'drop-clamps=400 mV'],
    ['ar', 'drop-clamps', 'الموجب 0.4 والسالب تقريبا ولا شي', 'drop-clamps=0.4 V'],
    ['ar', 'drop-clamps', 'الموجب مافي شي والسالب 0.25', 'drop-clamps=0.25 V'],
  ]);
});

describe('whole volts and something unsaid are asked back', () => {
  hold([
    ['en', 'battery-rest', 'twelve and a wee bit', 'asked back'],
    ['en', 'battery-crank', 'nine and odd', 'asked back'],
    ['de', 'battery-rest', 'zwölf und ein bissl was', 'asked back'],
    ['fr', 'battery-rest', 'douze et quelque', 'asked back'],
    ['es', 'battery-crank', 'nueve y un poquitín', 'asked back'],
    ['pl', 'battery-rest', 'dwanaście i ileś', 'asked back'],
    ['ar', 'battery-rest', 'اتناشر وحبة', 'asked back'],
    ['de', 'battery-rest', 'zwölf und ein gutes stück', 'asked back'],
    ['es', 'battery-rest', 'doce y un buen trozo', 'asked back'],
  ]);
});

describe('below nought is said before the degrees as well, and half a season is no figure', () => {
  hold([
    ['en', 'air-temperature', 'below zero by three degrees', 'air-temperature=-3 Cel'],
    ['en', 'air-temperature', 'its three degrees under freezing', 'air-temperature=-3 Cel'],
    ['de', 'air-temperature', 'drei grad unter dem gefrierpunkt', 'air-temperature=-3 Cel'],
    ['de', 'air-temperature', 'unter null, so drei grad', 'air-temperature=-3 Cel'],
    ['fr', 'air-temperature', 'sous zéro de trois degrés', 'air-temperature=-3 Cel'],
    ['fr', 'air-temperature', 'ni froid ni chaud, une demi saison quoi', 'air-temperature=mild'],
    ['es', 'air-temperature', 'bajo cero, unos tres grados', 'air-temperature=-3 Cel'],
    ['es', 'air-temperature', 'tres grados por debajo de cero', 'air-temperature=-3 Cel'],
    ['pl', 'air-temperature', 'poniżej zera jakieś trzy stopnie', 'air-temperature=-3 Cel'],
    ['ar', 'air-temperature', 'تحت الصفر بثلاث درجات', 'air-temperature=-3 Cel'],
    ['ar', 'air-temperature', 'تحت الصفر حوالي 4 درجات', 'air-temperature=-4 Cel'],
  ]);
});

describe('both batteries together are a pair', () => {
  hold([
    ['en', 'battery-rest', '24.9 over both of them', '24 V vehicle, battery-rest=24.9 V'],
    ['en', 'battery-rest', '25.3 across the two together', '24 V vehicle, battery-rest=25.3 V'],
    ['de', 'battery-rest', '24,9 über beide', '24 V vehicle, battery-rest=24.9 V'],
    ['de', 'battery-rest', '25,3 über das paar gemessen', '24 V vehicle, battery-rest=25.3 V'],
    ['fr', 'battery-rest', '24,9 sur les deux', '24 V vehicle, battery-rest=24.9 V'],
    ['fr', 'battery-rest', '25,3 aux bornes de la paire', '24 V vehicle, battery-rest=25.3 V'],
    ['es', 'battery-rest', '24,9 entre las dos', '24 V vehicle, battery-rest=24.9 V'],
    ['es', 'battery-rest', '25,3 en el par', '24 V vehicle, battery-rest=25.3 V'],
    ['pl', 'battery-rest', '24,9 na obu', '24 V vehicle, battery-rest=24.9 V'],
    ['pl', 'battery-rest', '25,3 na parze', '24 V vehicle, battery-rest=25.3 V'],
    ['ar', 'battery-rest', '24.9 على الثنتين', '24 V vehicle, battery-rest=24.9 V'],
    ['ar', 'battery-rest', '25.3 على الجوز', '24 V vehicle, battery-rest=25.3 V'],
  ]);
});

describe('what a tester does with its figure is no unit', () => {
  hold([
    ['de', 'battery-tester', 'das ding wirft 430 aus', 'battery-tester=430 A'],
    ['de', 'battery-tester', 'tester gibt 512 aus', 'battery-tester=512 A'],
  ]);
});

describe('what is read again later has the names of the first time', () => {
  hold([
    ['en', 'charging-later', 'still 14.2 with the engine running', 'charging-later=14.2 V'],
    ['de', 'charging-later', '13,9 bei laufendem motor', 'charging-later=13.9 V'],
    ['de', 'charging-later', '14,05 motor läuft', 'charging-later=14.05 V'],
    ['fr', 'charging-later', '13,9 moteur tournant', 'charging-later=13.9 V'],
    ['fr', 'charging-later', 'toujours 14,2 moteur en marche', 'charging-later=14.2 V'],
    ['es', 'charging-later', '13,9 con el motor en marcha', 'charging-later=13.9 V'],
    ['es', 'charging-later', 'a los 20 minutos 14,1 en ralentí', 'charging-later=14.1 V'],
    ['pl', 'charging-later', 'dalej 14,2 przy pracującym silniku', 'charging-later=14.2 V'],
    ['ar', 'charging-later', '13.9 والمحرك شغال', 'charging-later=13.9 V'],
    ['ar', 'charging-later', 'بعد 20 دقيقة 14.1 وهي شغالة', 'charging-later=14.1 V'],
  ]);
});

describe('which of two figures it is must be asked back', () => {
  hold([
    ['en', 'battery-rest', '12.1 or was it 12.7', 'offered'],
    ['de', 'battery-rest', '12,1 oder wars 12,7', 'offered'],
    ['ar', 'battery-rest', '12.1 ولا 12.7 مش متأكد', 'offered'],
    ['en', 'battery-rest', 'measured twice, 12.7 and then 11.8', 'offered'],
    ['fr', 'battery-rest', "d'abord 12,6 puis 11,2, lequel je mets", 'offered'],
    ['de', 'battery-rest', 'zuerst 12,6 dann 11,2, welchen wert nehm ich', 'offered'],
    ['es', 'drop-clamps', 'una vez 0,1 y la otra vez 0,8', 'offered'],
    ['pl', 'battery-rest', 'mierzyłem dwa razy, 12,7 a potem 11,8', 'offered'],
    ['ar', 'battery-rest', 'قستها مرتين، 12.7 وبعدين 11.8', 'offered'],
    ['ar', 'battery-rest', 'قستها مرتين ونفس القراية 12.2', rest(12.2)],
    ['es', 'drop-clamps', 'una 0,1 y la otra 0,8', 'drop-clamps=0.8 V'],
  ]);
});

describe('a word that is ten as well as a tenth is a tenth of what is lost, and ten of a battery', () => {
  hold([
    ['ar', 'drop-positive', 'عشر فولت', 'drop-positive=0.1 V'],
    ['ar', 'drop-positive', 'عشر الفولت', 'drop-positive=0.1 V'],
    ['ar', 'control-signal', 'عشر فولت', 'offered'],
    ['ar', 'battery-crank', 'عشر فولت', 'battery-crank=10 V'],
    ['ar', 'drop-positive', 'عشرة فولت', 'drop-positive=10 V'],
    ['ar', 'drop-ground', 'عشر واحد من الفولت', 'drop-ground=0.1 V'],
    ['ar', 'drop-positive', 'حوالي عشر فولت', 'drop-positive=0.1 V'],
    ['ar', 'drop-positive', 'عشر فولت بالزبط', 'drop-positive=0.1 V'],
    ['ar', 'drop-ground', 'جزء من عشرة من الفولت', 'drop-ground=0.1 V'],
  ]);
});

describe('when a signal was read names no voltage of the battery', () => {
  hold([
    ['en', 'control-signal', '9.6 while starting', 'control-signal=9.6 V'],
    ['de', 'control-signal', '10,2 beim Starten', 'control-signal=10.2 V'],
    ['fr', 'control-signal', '9,2 au démarrage', 'control-signal=9.2 V'],
    ['es', 'relay-command', '11,3 al arrancar', 'relay-command=11.3 V'],
    ['pl', 'relay-command', '11,7 podczas rozruchu', 'relay-command=11.7 V'],
    ['ar', 'control-signal', '9.3 مع المارش', 'control-signal=9.3 V'],
    ['en', 'control-signal', 'battery 9.8 cranking', 'battery-crank=9.8 V'],
  ]);
});

describe('what it costs is no answer', () => {
  hold([
    ['en', 'place', 'how much do you charge to come out', 'asked back'],
    ['en', 'fuel-level', 'whats this going to cost me', 'asked back'],
    ['de', 'dash', 'wird das teuer', 'asked back'],
    ['de', 'place', 'was wird mich das kosten', 'asked back'],
    ['fr', 'history', 'combien ça va me coûter', 'asked back'],
    ['es', 'dash', 'cuánto me cuesta la grúa', 'asked back'],
    ['pl', 'dash', 'ile to będzie kosztowało', 'asked back'],
    ['ar', 'headlamps', 'كم بيكلفني', 'asked back'],
    ['en', 'battery-age', 'cost me 90 quid last year, so 1 year', 'battery-age=1 a'],
  ]);
});

test.each([
  ['en', 'bout 6 or 7 yrs'],
  ['en', 'six or seven'],
  ['es', 'unos 6 o 7 años'],
  ['de', 'so 6 oder 7 Jahre'],
  ['fr', '6 ou 7 ans'],
  ['pl', '6 lub 7 lat'],
  ['pl', 'sześć albo siedem'],
  ['ar', '6 أو 7 سنوات'],
])('in %s “%s” is asked back, either figure offered', (locale, text) => {
  const offers = [6, 7].map((value) => ({ check: 'battery-age', value: { value, unit: 'a' } }));
  expect(understandIn[locale]!('battery-age', text)).toMatchObject({ type: 'offers', offers });
});

describe('which attempt it was is no figure', () => {
  hold([
    ['en', 'crank-current', '640A on the clamp, 3rd attempt', 'crank-current=640 A'],
    ['de', 'battery-crank', '9,8 im 2. Versuch', 'battery-crank=9.8 V'],
    ['fr', 'battery-crank', '9,6 à la 3e tentative', 'battery-crank=9.6 V'],
    ['de', 'drop-ground', '0,8 mit dem 15-Euro-Messgerät', 'drop-ground=0.8 V'],
    ['pl', 'battery-crank', 'raz 9 a raz 11', 'offered'],
  ]);
});

describe('what it barely is, or still is, was read where it has decimals', () => {
  hold([
    ['fr', 'battery-rest', 'à peine 11,7 volts', rest(11.7)],
    ['fr', 'drop-ground', 'plus que 0,08', 'drop-ground=0.08 V'],
    ['fr', 'battery-crank', 'plus que 9', 'asked back'],
    ['fr', 'battery-rest', 'plus de 12,2', 'asked back'],
  ]);
});

describe('whole volts less a little give way to the figure behind them', () => {
  hold([
    ['ar', 'battery-lamps', '12 فولت الا شوي، 11.9', 'battery-lamps=11.9 V'],
    ['es', 'battery-rest', 'ni llega a 12, marca 11,8', rest(11.8)],
    ['de', 'battery-rest', 'so um die zwölf rum, 12,2 genau', rest(12.2)],
    ['pl', 'crank-current', 'dwieście z groszem, 215', 'crank-current=215 A'],
    ['es', 'crank-current', 'doscientos y pico, 215', 'crank-current=215 A'],
  ]);
});

describe('what follows from the figures before it, or is said of them alone, is what is meant', () => {
  hold([
    ['en', 'battery-crank', 'eleven first, then 8.5, so 8.5', 'battery-crank=8.5 V'],
    [
      'de',
      'battery-tester',
      'erst 430, klemmen gerüttelt, dann 470, also 470',
      'battery-tester=470 A',
    ],
    ['ar', 'charging', 'أربعتاش وربعمية 14.4', 'charging=14.4 V'],
    ['en', 'battery-rest', '24.1 no sorry, wrong van, 12.3', rest(12.3)],
    ['fr', 'battery-rest', '12,1 puis 12,6 la deuxième fois', 'offered'],
    ['en', 'battery-crank', '8.7 and I need at least 9.6 right?', 'battery-crank=8.7 V'],
    ['de', 'battery-crank', '9,9, sollte über 9,6 sein', 'battery-crank=9.9 V'],
    ['ar', 'battery-crank', 'من 8 لحد 10 يرقص', 'asked back'],
    ['pl', 'air-temperature', 'minus 4, na wietrze minus 11', 'air-temperature=-4 Cel'],
    ['fr', 'air-temperature', 'deux degrés, ressenti moins six', 'air-temperature=2 Cel'],
    ['es', 'battery-age', 'traía 3 años de garantía y ya tiene 5', 'battery-age=5 a'],
    ['en', 'battery-age', 'the old one did 9 years, this one is 2', 'battery-age=2 a'],
    ['pl', 'battery-age', 'auto kupiłem miesiąc temu', 'asked back'],
    ['en', 'crank-after', '9.9, up from 6', 'crank-after=9.9 V'],
    ['es', 'battery-crank', '11,4→10,1 mientras le doy', 'battery-crank=10.1 V'],
  ]);
});

describe('a terminal, a cable, a second end and what is said behind a figure leave it what it is', () => {
  hold([
    ['en', 'relay-feed', 'terminal 87: 11.9', 'relay-feed=11.9 V'],
    ['pl', 'control-signal', 'na pięćdziesiątce 10,9', 'control-signal=10.9 V'],
    [
      'fr',
      'drop-positive-after',
      '0,12 avec le câble neuf de 35 carrés',
      'drop-positive-after=0.12 V',
    ],
    ['de', 'drop-clamps', 'der schlechtere 140 mV, der andere nur 15', 'drop-clamps=140 mV'],
    [
      'es',
      'drop-clamps',
      '30 en el positivo y 210 milivoltios en el negativo',
      'drop-clamps=210 mV',
    ],
    ['ar', 'drop-ground', 'سبعة من عشرة', 'drop-ground=0.7 V'],
    ['ar', 'battery-crank', 'عشرة فولت وثلاثة', 'battery-crank=10.3 V'],
    ['pl', 'drop-contacts', 'jeden i siedem', 'drop-contacts=1.7 V'],
    ['de', 'charging', 'dreizehn neun mit licht und gebläse', 'charging=13.9 V'],
    ['de', 'control-signal', '4,5v und der magnetschalter zuckt nur', 'control-signal=4.5 V'],
    ['en', 'charging', '1.42 kilovolts', 'asked back'],
    ['es', 'place', 'en el arcén con 3 grados', 'air-temperature=3 Cel, place=shoulder'],
    [
      'en',
      'start-after',
      'running sweet, 14.3 at the battery',
      'charging=14.3 V, start-after=starts',
    ],
  ]);
});

describe('Arabic numbers are known in Latin letters, however their vowels are spelled', () => {
  hold([
    ['ar', 'air-temperature', 'khamsa w 3ishreen daraja', 'air-temperature=25 Cel'],
    ['ar', 'battery-rest', 'etnashar w nos', rest(12.5)],
    ['ar', 'battery-rest', '12 w rob3', rest(12.25)],
    ['ar', 'battery-age', '3 snin', 'battery-age=3 a'],
  ]);
});

describe('the "and" of Arabic may be written on to what a figure is said of', () => {
  hold([
    ['ar', 'battery-tester', '280 والمكتوب عليها 600', 'battery-tester=280 A, label 600 A'],
    ['ar', 'battery-age', 'سنتين والسيارة عمرها عشرة', 'battery-age=2 a'],
    [
      'ar',
      'battery-crank',
      'نازل 8.1 وقبلها كان 12.4 وهي مطفية',
      'battery-crank=8.1 V, battery-rest=12.4 V',
    ],
  ]);
});

describe('two batteries may be a volt apart, and a tenth is said behind the whole', () => {
  hold([
    ['en', 'battery-halves', 'a whole volt difference', 'battery-halves=1 V'],
    ['pl', 'battery-halves', 'cały wolt różnicy', 'battery-halves=1 V'],
    ['pl', 'battery-rest', 'mniej więcej dwanaście jeden', rest(12.1)],
  ]);
});

describe('a letter typed for a digit is asked back with the figure that it looks like', () => {
  test.each([
    ['en', 'battery-rest', '12.l', '12.1 V'],
    ['en', 'battery-crank', 'it says 1o.3', '10.3 V'],
    ['en', 'battery-rest', 'I2.4v', '12.4 V'],
    ['en', 'drop-positive', 'o.3', '0.3 V'],
    ['en', 'crank-current', '1l0 amps', '110 A'],
    ['es', 'battery-rest', '1O,3', '10,3 V'],
    ['de', 'battery-rest', '12,l', '12,1 V'],
    ['fr', 'battery-rest', '1l,8 volts', '11,8 V'],
    ['pl', 'drop-ground', '0,o4', '0,04 V'],
  ])('%s, at %s "%s" may be %s', (locale, check, text, label) => {
    const understood = understandIn[locale]!(check, text);
    const offers = understood.type === 'offers' ? understood.offers : [];
    expect(offers.map((offer) => offer.label)).toEqual([label]);
  });
  hold([
    ['en', 'battery-rest', '2.0l diesel 12.4', 'battery-rest=12.4 V, drive=diesel, engine of 2 L'],
    ['fr', 'battery-rest', "12,6 l'autre", rest(12.6)],
    ['es', 'air-temperature', '12º', 'air-temperature=12 Cel'],
    ['es', 'battery-rest', 'en el 2º intento 12,3', rest(12.3)],
  ]);
});

describe('of two figures of two tries nobody can tell which holds', () => {
  hold([
    ['en', 'battery-crank', '9.1 first go, 10.3 second go', 'asked back'],
    ['es', 'battery-crank', '9.1 en una, 10.3 en la otra prueba', 'offered'],
    ['pl', 'drop-ground', 'najpierw 0,1 potem 0,9', 'offered'],
    ['ar', 'drop-ground', '0.1 مرة و 0.9 مرة ثانية', 'offered'],
    // Two losses are no whole volt and a part of one.
    ['en', 'drop-clamps', '0.3 V and 0.05 V', 'offered'],
  ]);
});

describe('what belongs to a figure and what does not', () => {
  hold([
    ['de', 'battery-crank', 'bricht auf 5 komma 5 ein', 'battery-crank=5.5 V'],
    ['de', 'drop-contacts', '10,9 zwischen den beiden Bolzen', 'drop-contacts=10.9 V'],
    ['de', 'battery-age', 'ein Vierteljahr', 'battery-age=0.25 a'],
    [
      'de',
      'battery-age',
      'fünf Jahre. Wir haben 28 Grad',
      'air-temperature=28 Cel, battery-age=5 a',
    ],
    ['en', 'battery-age', '5 years. we have 28 degrees', 'air-temperature=28 Cel, battery-age=5 a'],
    ['pl', 'battery-age', 'pięciolatek', 'battery-age=5 a'],
    [
      'pl',
      'battery-age',
      'pięć lat, a przed chwilą 12,1 w spoczynku',
      'battery-age=5 a, battery-rest=12.1 V',
    ],
    ['pl', 'battery-rest', 'dwa w szeregu, 25,1', '24 V vehicle, battery-rest=25.1 V'],
    ['pl', 'battery-tester', '265 przy nominalnym 680', 'battery-tester=265 A, label 680 A'],
    ['fr', 'battery-crank', 'à peine six volts', 'battery-crank=6 V'],
    ['fr', 'relay-command', '0 nada', 'relay-command=0 V'],
    ['en', 'relay-command', 'nothing 0', 'relay-command=0 V'],
    ['en', 'relay-command', 'not 0', 'asked back'],
    ['ar', 'air-temperature', 'تحت الصفر بدرجتين', 'air-temperature=-2 Cel'],
    ['ar', null, 'تحت الصفر بخمسة والمارش تقيل', 'air-temperature=-5 Cel, complaint=slow-crank'],
    ['en', null, 'below zero 5, cranks slow', 'air-temperature=-5 Cel, complaint=slow-crank'],
    ['ar', null, 'البطارية عمرها سنة بس', 'battery-age=1 a'],
    ['ar', 'battery-age', '3andha sb3 snin', 'battery-age=7 a'],
    ['ar', 'battery-age', 'rb3 snin', 'battery-age=4 a'],
    ['ar', 'drop-contacts', 'الـ 12 كلها', 'drop-contacts=12 V'],
    ['ar', 'battery-rest', '12.4 كيلو فولت', 'asked back'],
    ['de', 'air-temperature', '90 Grad', 'offered'],
  ]);
});

describe('a range is two figures, whichever way it is said, and a thing between two ends is one', () => {
  hold([
    ['en', 'battery-load-test', 'between 8 and 10', 'offered'],
    ['en', 'charging-later', 'bouncing all over from 12.9 to 15.6', 'offered'],
    ['en', 'drop-clamps', 'between post and clamp 0.2', 'drop-clamps=0.2 V'],
    ['de', 'battery-crank', 'zwischen neun und zehn', 'offered'],
    ['de', 'drop-contacts', 'zwischen den Bolzen 0,2', 'drop-contacts=0.2 V'],
    ['es', 'charging-later', 'entre 12 y 15', 'offered'],
    ['fr', 'charging-later', 'entre 12 et 15', 'offered'],
    ['pl', 'air-temperature', 'między zerem a minus pięć', 'offered'],
    ['pl', 'air-temperature', 'pięć stopni pod zerem', 'air-temperature=-5 Cel'],
    ['ar', 'battery-crank', 'يتراقص بين السبعة والعشرة', 'offered'],
    ['ar', 'control-signal', 'ma bayn 4 w 10', 'offered'],
  ]);
});

describe('a reading is named with small words between its own', () => {
  hold([
    [
      'en',
      null,
      'drop on positive 0.3, drop on ground 0.1',
      'drop-ground=0.1 V, drop-positive=0.3 V',
    ],
    ['en', 'drop-positive', 'drop on the ground was 0.1', 'drop-ground=0.1 V'],
  ]);
});

describe('at least so much is a bound and no frost, and nearly nought gives way to the amperes behind it', () => {
  hold([
    ['fr', 'air-temperature', 'au moins 38 dehors', 'asked back'],
    ['es', 'air-temperature', 'por lo menos 38 afuera', 'asked back'],
    ['fr', 'air-temperature', 'moins 8 dehors', 'air-temperature=-8 Cel'],
    ['es', 'air-temperature', 'menos 8 afuera', 'air-temperature=-8 Cel'],
    ['fr', 'crank-current', 'presque zéro, 2 ampères si on veut', 'crank-current=2 A'],
    ['en', 'crank-current', 'almost zero, 2 amps', 'crank-current=2 A'],
  ]);
});

describe('the tenth of what a battery has is questioned, and both are offered', () => {
  hold([
    ['en', 'battery-rest', '1.24', 'offered'],
    ['de', 'battery-rest', '1,24 Volt', 'offered'],
    ['pl', 'battery-rest', '1,26', 'offered'],
    ['fr', 'battery-rest', '1,2', 'offered'],
    ['ar', 'battery-rest', '١٫٢٤', 'offered'],
  ]);
});

describe('of two that nobody chooses between neither is taken', () => {
  hold([
    ['es', 'battery-rest', '12,2 anoche, 12,6 hoy, elige', 'offered'],
    ['de', 'battery-rest', '12,2 gestern Abend, 12,6 heute, such dir eine aus', 'offered'],
    ['fr', 'battery-rest', '12,2 hier soir, 12,6 ce matin, choisissez', 'offered'],
    ['pl', 'battery-rest', '12,2 wczoraj, 12,6 dzisiaj, do wyboru', 'offered'],
    ['ar', 'battery-rest', '12.2 امبارح و 12.6 اليوم، اختر', 'offered'],
  ]);
});

describe('what was measured is no rating, though the label says another', () => {
  hold([
    [
      'fr',
      'battery-tester',
      '330 A alors que l’étiquette dit 540',
      'battery-tester=330 A, label 540 A',
    ],
    [
      'de',
      'battery-tester',
      '330 A obwohl das Etikett 540 sagt',
      'battery-tester=330 A, label 540 A',
    ],
    [
      'es',
      'battery-tester',
      '355 A aunque la etiqueta dice 600',
      'battery-tester=355 A, label 600 A',
    ],
  ]);
});

describe('of the two sides of a loss the worse is taken', () => {
  hold([
    ['pl', 'drop-clamps', 'plus 0,2, masa 1,1', 'drop-clamps=1.1 V'],
    ['ar', 'drop-clamps', 'موجب 0.2 وأرضي 1.1', 'drop-clamps=1.1 V'],
    ['de', 'drop-clamps', 'Plus 0,2, Masse 1,1', 'drop-clamps=1.1 V'],
  ]);
});

describe('a unit behind “de”, tenths behind the volts, and thousands of millivolts', () => {
  hold([
    ['fr', 'battery-age', 'une trentaine de mois', 'battery-age=30 mo'],
    ['fr', 'battery-age', 'une dizaine d’années', 'battery-age=10 a'],
    ['es', 'battery-age', 'una docena de meses', 'battery-age=12 mo'],
    ['ar', 'battery-rest', 'عشرة فولت وستة من عشرة', 'battery-rest=10.6 V'],
    ['ar', 'battery-rest', 'عشرة فولت ونص', 'battery-rest=10.5 V'],
    ['es', 'drop-clamps', 'tres voltios con dos', 'drop-clamps=3.2 V'],
    ['es', 'battery-rest', 'doce voltios con cuatro', 'battery-rest=12.4 V'],
    ['es', 'battery-crank', '9 voltios con la llave puesta', 'battery-crank=9 V'],
    // A meter of millivolts shows whole ones; the mark parts the thousands.
    ['es', 'battery-rest', 'en la pantalla pone 12.400 mV', 'battery-rest=12400 mV'],
    ['es', 'drop-positive', '1.200 mV', 'drop-positive=1200 mV'],
    ['de', 'battery-rest', '12,400 mV', 'battery-rest=12400 mV'],
  ]);
});

describe('the current that is drawn meanwhile stands beside a loss', () => {
  const both = 'crank-current=410 A, drop-ground=0.35 V';
  const three = 'crank-current=310 A, drop-ground=0.15 V, drop-positive=0.6 V';
  hold([
    ['en', 'drop-ground', '0.35 at 410 amps', both],
    ['es', 'drop-ground', '0,35 a 410 amperes', both],
    ['es', 'drop-ground', '0,35 con 410 amperes', both],
    ['en', 'drop-positive', 'plus side 0.6, ground 0.15, 310 A while cranking', three],
    ['es', 'drop-positive', 'lado positivo 0.6, masa 0.15, con 310 A de consumo', three],
    ['ar', 'drop-positive', 'خط الموجب ٠٫٦ وخط الارضي ٠٫١٥، وسحب السلف ٣١٠ أمبير', three],
    [
      'fr',
      'drop-positive',
      'côté + 0,35v, entre les gros plots du solénoïde 0,05',
      'drop-contacts=0.05 V, drop-positive=0.35 V',
    ],
    // “Con” is the point of a number, and with.
    ['es', 'battery-rest', '12 con 40', rest(12.4)],
    ['es', 'battery-rest', 'doce... con cuatro', rest(12.4)],
    ['es', 'battery-crank', '9 con 180 A', 'battery-crank=9 V, crank-current=180 A'],
  ]);
});

describe('what was measured of the battery is told beside what asks for words', () => {
  hold([
    ['en', 'terminals', 'loose. i measured 12.3', `${rest(12.3)}, terminals=loose`],
    ['en', 'terminals', 'loose clamp, got 12.3 volts', `${rest(12.3)}, terminals=loose`],
    ['de', 'terminals', 'minus locker, hab 12,3 gemessen', `${rest(12.3)}, terminals=loose`],
    ['ar', null, 'طقة واحدة من السلف، وقستها لقيتها 12.6', `${rest(12.6)}, complaint=single-click`],
    // At a fuse it is what stands there.
    ['en', 'main-fuse', 'fine, 12.4V on both sides', 'main-fuse=intact'],
    [
      'en',
      'battery-look',
      'nothing wrong with it, bought it 18 months back',
      'battery-age=18 mo, battery-look=sound',
    ],
    [
      'ar',
      'charge-lamp',
      'اي كانت ضاوية، والبطارية جديدة عمرها سنة',
      'battery-age=1 a, charge-lamp=was-lit',
    ],
    ['pl', 'complaint', 'wolno kręci, akumulator swoje lata ma', 'complaint=slow-crank'],
    ['en', 'battery-look', 'fine, jumped it 2 years ago', 'battery-look=sound'],
  ]);
});

describe('the clause that tells how cold it is tells nothing else', () => {
  hold([
    [
      'es',
      'terminals',
      'flojos los dos, y afuera hay como 3 grados bajo cero',
      'air-temperature=-3 Cel, terminals=loose',
    ],
    [
      'fr',
      'complaint',
      'a vire pas vite pantoute, y fait -24 icitte',
      'air-temperature=-24 Cel, complaint=slow-crank',
    ],
    ['es', 'terminals', 'con -6 grados están flojos', 'air-temperature=-6 Cel, terminals=loose'],
    ['es', null, 'hoy con -10 apenas gira', 'air-temperature=-10 Cel, complaint=slow-crank'],
  ]);
});
