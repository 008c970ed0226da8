import { list } from './list.ts';
import type { Words } from './words.ts';

const units: Readonly<Record<string, number>> = {
  uno: 1,
  dos: 2,
  tres: 3,
  cuatro: 4,
  cinco: 5,
  seis: 6,
  siete: 7,
  ocho: 8,
  nueve: 9,
};

const tens: Readonly<Record<string, number>> = {
  treinta: 30,
  cuarenta: 40,
  cincuenta: 50,
  sesenta: 60,
  setenta: 70,
  ochenta: 80,
  noventa: 90,
};

/** 31 to 99 written as one word, as many do: `treintaiuno`, `treintayuno`. */
const joinedTens: Readonly<Record<string, number>> = Object.fromEntries(
  Object.entries(tens).flatMap(([ten, value]) =>
    Object.entries(units).flatMap(([unit, more]) => [
      [`${ten}i${unit}`, value + more],
      [`${ten}y${unit}`, value + more],
    ]),
  ),
);

/** Spanish as it is typed at the roadside, in Spain and in Latin America. */
export const esWords: Words = {
  spelling: {
    denyBefore: ['no', 'tampoco'],
    // Without accents "no sé" and the "no se" of "no se apaga" are the same; where a word follows,
    // the pronoun goes, unless that word can only follow the verb. "12 voltios y medio" is put in
    // the order in which a number stands before its unit.
    letters: [
      ...[
        'que ',
        'si ',
        'cual',
        'cuant',
        'como ',
        'donde',
        'bien',
        'nada',
        'pero',
        'la verdad',
      ].map((word): [string, string] => [`no se ${word}`, `no sabria ${word}`]),
      // No minus: "mas o menos 9,8".
      ['mas o menos', 'aprox'],
      ['por ciento', '%'],
      ['aunq ', 'aunque '],
      ['no lo se ', 'no lo sabria '],
      ['no se ', 'no '],
      ['ni se ', 'ni '],
      ['nunca se ', 'nunca '],
      ['tampoco se ', 'tampoco '],
      ['voltios y medio', 'y medio voltios'],
      ['volts y medio', 'y medio volts'],
      ['anos y medio', 'y medio anos'],
    ],
  },
  cardinals: {
    cero: 0,
    // "un" alone is an article; before these words it is a number.
    'una década': 10,
    'un año': 1,
    'un voltio': 1,
    'un volt': 1,
    'un amperio': 1,
    'un ampere': 1,
    'un grado': 1,
    'una docena': 12,
    'una decena': 10,
    'una veintena': 20,
    'un cuarto': 1 / 4,
    'una décima': 1 / 10,
    'una centésima': 1 / 100,
    // As they are heard in Latin America.
    sero: 0,
    quatro: 4,
    sinco: 5,
    dies: 10,
    onse: 11,
    dose: 12,
    trese: 13,
    catorse: 14,
    quinse: 15,
    beinte: 20,
    ...units,
    diez: 10,
    once: 11,
    doce: 12,
    trece: 13,
    catorce: 14,
    quince: 15,
    dieciséis: 16,
    diecisiete: 17,
    dieciocho: 18,
    diecinueve: 19,
    'diez y seis': 16,
    'diez y siete': 17,
    'diez y ocho': 18,
    'diez y nueve': 19,
    veinte: 20,
    veintiuno: 21,
    veintiún: 21,
    veintiuna: 21,
    veintidós: 22,
    veintitrés: 23,
    veinticuatro: 24,
    veinticinco: 25,
    veintiséis: 26,
    veintisiete: 27,
    veintiocho: 28,
    veintinueve: 29,
    ...tens,
    ...joinedTens,
    cien: 100,
    ciento: 100,
    doscientos: 200,
    doscientas: 200,
    trescientas: 300,
    cuatrocientas: 400,
    trescientos: 300,
    cuatrocientos: 400,
    quinientos: 500,
    seiscientos: 600,
    setecientos: 700,
    ochocientos: 800,
    novecientos: 900,
  },
  scales: { mil: 1000, décadas: 10 },
  decimalZero: ['cero'],
  // "doce con cuatro" is said as often as "doce coma cuatro" or "doce punto cuatro".
  point: ['coma', 'comma', 'punto', 'con'],
  joins: ['y'],
  // "a" is a preposition, so it is ampere only where no other word follows it.
  articles: ['a'],
  partitive: ['de'],
  fractions: {
    medio: 1 / 2,
    media: 1 / 2,
    medios: 1 / 2,
    cuarto: 1 / 4,
    cuartos: 1 / 4,
    décima: 1 / 10,
    décimas: 1 / 10,
    centésima: 1 / 100,
    centésimas: 1 / 100,
    mitad: 1 / 2,
  },
  // No "negativo": it names a side of the battery.
  below: ['bajo cero', 'negativos', 'por debajo de cero', 'debajo de cero', 'bajo el cero'],
  minus: ['menos'],
  days: {
    back: { hoy: 0, 'esta mañana': 0, ayer: 1, anteayer: 2, 'antes de ayer': 2, antier: 2 },
    times: list(`
      ayer, anteayer, anoche, hoy, esta mañana, esta noche, por la noche, por la mañana, todo el día
    `),
    day: list(`día, días`),
    week: list(`semana, semanas`),
    ago: list(`hace, atrás`),
    last: list(`pasado, pasada, último, última, anterior`),
    seasons: list(`invierno, verano, primavera, otoño, Navidad, Navidades, Semana Santa`),
    weekdays: {},
  },
  ordinals: {
    primero: 1,
    primera: 1,
    primer: 1,
    segundo: 2,
    segunda: 2,
    tercero: 3,
    tercera: 3,
    tercer: 3,
    cuarto: 4,
    cuarta: 4,
    quinto: 5,
    quinta: 5,
    sexto: 6,
    sexta: 6,
    séptimo: 7,
    séptima: 7,
    octavo: 8,
    octava: 8,
    noveno: 9,
    novena: 9,
    décimo: 10,
    décima: 10,
    undécimo: 11,
    undécima: 11,
    onceavo: 11,
    onceava: 11,
    duodécimo: 12,
    duodécima: 12,
    doceavo: 12,
    doceava: 12,
  },
  // Decimals take a comma in some countries and a point in others, so neither groups thousands.
  grouping: ' ',
  units: {
    V: list(`
      v, vdc, v dc, vcc, v cc, voltio, voltios, boltio, boltios, bolt, bolts, voltos, volt, volts, volteos, de voltio, de volt, voltios
      dc, volts dc, voltios cc
    `),
    mV: list(`
      mv, mili, mili volt, milis, milivoltio, milivoltios, milivolt, milivolts, mili voltios, mili volts
    `),
    A: list(`
      a, amp, amps, amper, ampers, ampere, amperes, amperio, amperios, cca, a cca, a en, amperios
      cca, amperes cca, amps cca
    `),
    kA: ['ka', 'kiloamperio', 'kiloamperios', 'kiloamperes'],
    mA: list(`
      ma, miliamperio, miliamperios, miliampere, miliamperes, miliamps
    `),
    'A.h': list(`
      ah, amperio hora, amperios hora, amperes hora, ampere hora, amperios por hora
    `),
    Ohm: ['ω', 'ohm', 'ohms', 'ohmio', 'ohmios'],
    mOhm: list(`
      mω, mohm, mohms, miliohmio, miliohmios, miliohm, miliohms, mili ohmios
    `),
    Cel: list(`
      cel, °c, c, celsius, centígrado, centígrados, grados c, grados celsius, grado celsius,
      grados centígrados, grado centígrado
    `),
    '[degF]': list(`
      °f, f, fahrenheit, grados f, grados fahrenheit, grado fahrenheit
    `),
    'N.m': list(`
      nm, n m, newton metro, newton metros, newtons metro, newtonmetro, newtonmetros
    `),
    '[lbf_av].[ft_i]': list(`
      lbf ft, lb ft, lbs ft, ft lb, ft lbs, ft lbf, lb pie, lbs pie, libra pie, libras pie, libras
      pies, pie libra, pies libra, pies libras
    `),
    '[lbf_av].[in_i]': list(`
      lbf in, lb in, in lb, in lbs, libra pulgada, libras pulgada, libras pulgadas, pulgada libra,
      pulgadas libra
    `),
    'kgf.m': ['kgf m', 'kg m', 'kgm', 'kilográmetro', 'kilográmetros', 'kilos metro'],
    ms: ['ms', 'milisegundo', 'milisegundos'],
    s: ['s', 'seg', 'segs', 'segundo', 'segundos', 'segunditos'],
    min: ['min', 'mins', 'minuto', 'minutos', 'minutito', 'minutitos'],
    h: ['h', 'hr', 'hrs', 'hora', 'horas'],
    d: ['día', 'días'],
    wk: ['semana', 'semanas'],
    mo: ['mes', 'meses'],
    a: list(`
      año, años, ano, anos, añito, añitos, años de uso, años de edad, inviernos
    `),
    Hz: ['hz', 'hercio', 'hercios', 'hertz', 'hertzios'],
    '/min': list(`
      rpm, r min, revoluciones, revoluciones por minuto, vueltas, vueltas por minuto
    `),
    L: ['l', 'lt', 'lts', 'litro', 'litros'],
    W: ['w', 'vatio', 'vatios', 'watt', 'watts', 'watio', 'watios'],
    kW: ['kw', 'kilovatio', 'kilovatios', 'kilowatt', 'kilowatts'],
    bar: ['bar', 'bares'],
    kPa: ['kpa', 'kilopascal', 'kilopascales'],
    '[psi]': ['psi', 'libras'],
    '%': ['%', 'por ciento', 'porciento'],
  },
  bareUnits: ['grados', 'grado', '°'],
  // Only the two words before a figure are looked at: "por debajo de" ends in "debajo de".
  boundsOnly: list(`
    menos de, más de, menor que, mayor que, menor a, mayor a, menor de, mayor de, inferior a,
    superior a, debajo de, encima de, arriba de, abajo de, bajo, sobre los, al menos, por lo
    menos, lo menos, como mínimo, como máximo, como mucho, mínimo, máximo, hasta, no llega a,
    llega a, pasa de, baja de, supera los, ni siquiera, ni
  `),
  nearly: list(`
    poco, pelín por, poco por, poquito por, pelo por, justo por, ligeramente por, algo por, poquito, pelín, pelo, algo, ligeramente, justo, apenas, tantito, pizca, nada, casi, lo más
  `),
  vague: list(`
    unos, unas, par, varios, varias, cuantos, cuantas, pocos, y pico, y algo, algo, coma algo, punto algo, y tantos, y un poco, con algo, y un poquito, y monedas, coma y pico, y un pelín, y tanto, y un piquito, y un poquitín, y alguito, un poco más, algo más, y feria, y un poco más, y picos
  `),
  besideFigures: list(`
    ok, vale,
    a, al, o, u, e, en, con, de, del, por, para, entre, desde, según, como, sin, cuando, mientras,
    durante, después, antes, tras, luego, ahora, ahorita, hoy, aquí, acá, ahí, allí, allá, fuera,
    afuera, midió, medí, midieron, patatero, justitos, pelado, pelados, pelao, redondos, rayando, exacto, exactos, exactas, justo, justos, fijo, fijos, estable, estables, clavados,
    clavadas, y, pero, el, la, los, las, un, una, me, se, lo, le, yo, que, es, era, son, está,
    favor, gracias, solo, otra, vez, nada, más, menos, pico, digamos, casi, aprox, aproximadamente,
    marca, da, dice, lee, mide, sale, indica, muestra, queda, lectura, medidor, multímetro,
    voltímetro, polímetro, tester, probador, pinza, pantalla, total, ambos, ambas, cada, prueba, tiene, está a, clavado, clavada, reemplazar, reemplace, sustituir, cambiar, recargar, débil, pelaos, clavao, clavaos, rasos, raspados, dijo, esposo, apenas, entero, entera, escasos, raspaos, mini
  `),
  figureWords: {
    asideBefore: list(`
      pin, pines, borne, bornes, terminal, terminales, a las, las, a la, escala de, rango de, escala, posición de, calibre de, modelo, año, cilindro, pico de, pico, llega a un pico de, costó, pagué, celda, vaso, picó a, picó, puesto en, ajustado en, ajustado a, seleccionado, planta, piso, sótano, nivel, garantía, garantía de, garantizada por, cable de, segundo, al segundo
    `),
    asideBehind: list(`
      de la mañana, de la tarde, de la noche, h, horas de la mañana, veces, vez, intentos, intento, celdas, vasos, cilindros, puertas, euros, euro, pesos, dólares, soles, kilómetros, km, metros, mediciones, pruebas, personas, cables, pernos, dígitos, cuentas, en continua, voltios continua, dc, esta noche, por la noche, anoche, esta mañana, intentonas, pasadas, tomas, lecturas, de garantía, años de garantía, garantía, mm cuadrados, cuadrados, mm2, milímetros, mm
    `),
    engine: list(`
      motor, gasolina, diésel, diesel, litros, nafta, turbo, tdi, hdi, motor de, es un
    `),
    instead: list(`
      perdón, perdon, digo, quiero decir, quise decir, espera, espere, miento, mejor dicho, corrijo, me equivoqué, me confundí, en realidad, disculpa, disculpe, ay no, ups, uy, rectifico, ojo, no no, no perdón, equivocado, leí mal, digamos, exactamente, exacto, pongamos, o sea, para ser exactos, concretamente, en concreto, o más bien, corrige
    `),
    settles: list(`
      póngale, ponle, ponga, póngalo, dejémoslo en, déjalo en, déjelo en, digámosle, échale, anota, anote, pon, ponga usted, apunta, apúntame
    `),
    again: list(`
      dos veces, 2 veces, la otra vez, otra vez me, segunda vez, segundo intento, segunda medición, cuál tomo, cuál pongo, cuál vale, cuál es, cuál uso, cuál anoto, cuál de, cuál le, cuál será, no sé cuál, con cuál
    `),
    unsteady: list(
      `va saltando, va cambiando, va variando, cambia todo el, cambia a cada, no para de cambiar, no para de saltar, salta de uno, baila entre, sube y baja, no se queda quieta, no se queda quieto, brinca de, brinca entre, salta entre`,
    ),
    undecided: list(
      `no sé cuál, cuál vale, cuál pongo, cuál es la buena, cuál quiere, cuál te doy, elige, elija, elija usted, escoja usted, elige tú, el que quiera, la que quiera, la que prefiera`,
    ),
    between: list(`entre`),
    past: list(`
      ayer, anoche, antes, antier, anteayer, la semana pasada, hace rato, tenía, marcaba, estaba, daba, era, al principio, antes de ayer, hacía, daban, había, solía, la vez pasada, antes de eso, al inicio, de entrada, al empezar, empezó en, empieza en, arrancó en, comenzó en, de nueva, cuando era nueva, dije, había dicho, puse, la anterior, la vieja, la otra tenía, la otra era, la otra duró
    `),
    present: list(`
      ahora, hoy, ahorita, actualmente, ya, en este momento, al final, al último, lo último, por último, terminó en, acabó en, finalmente, último que vi, a lo último, bien medido, midiendo bien, afuera, fuera
    `),
    expected: list(`
      debería, debería ser, debería dar, debería estar, debería marcar, tendría que, se supone, esperaba, en vez de, en lugar de, lo normal, frente a, frente a los, comparado con, en comparación con, en vez de los, en lugar de los, límite, pide, piden, piden un, lo ideal, normalmente, suele, suele dar, de costumbre, el manual, el libro, según el manual, anunciaban, pronosticaban, el pronóstico
    `),
    felt: list(`
      sensación, sensación térmica, se siente como, se sienten como, parecen, con el viento, con viento
    `),
    concludes: list(`
      así que, o sea, entonces, por tanto, es decir, total, cuento
    `),
    changes: list(`
      baja, bajó, bajo, bajando, cayendo, hasta, cae, se cae, cayó, pasa, pasó, pasaba, va, fue, sube, subió, desciende, se va, se fue, se hunde, cambia, cambió, se estabiliza en, se queda en, se quedó en, queda en, quedó en, termina en, luego se estabiliza en, se viene abajo
    `),
    from: list(`
      de, desde
    `),
    until: list(`
      hasta
    `),
    barely: list(`mínimo, como mínimo`),
    moments: list(`
      mientras, cuando, al, durante, con mi, con el, con la, con un, con una, en cuanto
    `),
    after: list(`
      después de, tras, desde, desde que, luego de, después
    `),
    unread: list(`
      ol, sobrecarga, no marca nada, no marca, no sale nada, no aparece nada, no muestra nada, no lee nada, no da nada, la pantalla está en blanco, pantalla en blanco, pantalla apagada, pantalla vacía, no da lectura, sin lectura, rayitas, puras rayas, no se estabiliza, no para de saltar, salta mucho, no sale ningún número, ningún número, guiones, no indica nada, nada en la pantalla, no enciende el tester
    `),
    thousand: list(
      `k, kv, ka, kilo, kilometer, kilovoltio, kilovoltios, kiloamperio, kiloamperios`,
    ),
    display: list(`
      pantalla, tester, multímetro, polímetro, voltímetro, medidor, display
    `),
    measured: list(`medí, medido, mide, midió, medición, lectura`),
    otherMeters: list(`
      hidrómetro, densímetro, densidad, gravedad, pesa ácido, ácido, densimetro, pesaacidos
    `),
    label: list(`
      etiqueta, etiqueta dice, etiqueta pone, etiqueta marca, pegatina, pegatina dice, nominal, nominales, placa, calcomanía, pone en la batería, rótulo, impreso en la batería, viene en la batería, marcada, marcado, impreso, especificada, según la etiqueta, rotulada, cartel, cartelito, adhesivo, la batería dice, la batería pone, pone la etiqueta, pone en la pegatina, en la batería pone, en la batería dice, trae la etiqueta
    `),
    outOf: list(`
      de, sobre, de los
    `),
    above: list(`
      sobre cero, por encima de cero, encima de cero
    `),
    less: list(`
      menos
    `),
    oneBefore: list(`
      hace un, un, tiene un, hará un, cosa de un, como un
    `),
    oneBehind: [],
    cranking: list(`
      arran, marcha, girar, gira, prend, encend, llave, contacto
    `),
    standing: list(`
      parad, guardad, sin mover, estacionad, quiet
    `),
    vehicle: list(`
      coche, carro, auto, vehículo, camioneta, furgoneta, furgo, camión, moto, tractor, nave, troca
    `),
    battery: list(`
      batería, pila, acumulador, bate
    `),
    worse: list(`
      peor, mayor, más alto, más alta
    `),
    clock: list(`
      son las, es la, eran las, a las, sobre las
    `),
    sides: list(`
      más, menos, positivo, positiva, negativo, negativa, rojo, roja, negro, negra, masa, tierra, otro, otra, uno, una
    `),
    difference: list(`
      diferencia, difieren, diferencian, de diferencia, separadas
    `),
    swapped: list(`
      al revés, invertidas, invertidos, invertí, cruzados, cruzadas, crucé, cambiadas, cambiados, cambié, polaridad, invert, cruzar, cruce, cruzad, confund, equivoqué de, equivocado de, contrario, cambiad, trocad
    `),
    roughly: list(`
      como, unos, casi, alrededor de, aproximadamente, más o menos, cerca de, rozando, sobre los, cosa de, por ahí de
    `),
    recovers: list(`
      vuelve, volvi, recuper, regres, soltar, suelt, solté, soltó, otra vez, de nuevo, retorn
    `),
    climbs: list(`
      pasa, sube, supera, levanta, pasaba, subía
    `),
    pair: list(`
      dos baterías, las dos baterías, las dos juntas, en serie, las dos, el par, par de baterías, ambas, entre ambas, los dos, entre ellas
    `),
    onto: list(`
      a
    `),
    round: list(`
      enteros, redondos, justos, justitos, pelados, pelado, clavados, exactos, en punto, completos, pelaos, clavaos, rasos, o así, o por ahí, o algo así
    `),
    ratedAt: list(`
      en la de, en una de, en una, en la, de una de, y es de, es de, para una de, de los, batería de, siendo de, bobina de, relé de, sistema de
    `),
    allOff: list(`
      todo apagado, con todo apagado, todo está apagado, todo desconectado, todo quitado, sin nada encendido, nada encendido, contacto quitado, motor apagado, en reposo, en vacío, sin carga, quieto, sin darle, parado
    `),
  },
  negators: list(`
    no, nop, nada, ni, nunca, jamás, tampoco, sin, ningún, ninguna, ninguno, nadie
  `),
  exceptives: {
    behind: list(`no, nada`),
    between: list(`tengo, tenemos, hay, hace, suena, más, otra, cosa, aquí`),
    words: list(`salvo, excepto`),
  },
  sayings: list(`
    a fumar, para fumar, fumarme, fumar un, fumando un, mientras fumo, mientras fuma, fuma mientras, un pitillo, un pucho,
    un cigarrito, humo ? no, fuego ? no, llamas ? no, fuga ? no, camión aquí, camión acá, el dedo encima, los dedos encima,
    se me parten los dedos, se me caen los dedos, se me congelan los dedos, se me hielan los dedos, se me congelan las
    manos, se me hielan las manos, ojo de la cara, ojo que chorrea, ojo q chorrea, ojo que gotea, ojo q gotea,
    ojo que pierde, ojo q pierde, ojo que huele, ojo q huele, ojo que hay, ojo q hay, ojo que sale, ojo q sale,
    manos al fuego, mano al fuego, manos en el fuego, mano en el fuego, que echo
    humo, echando chispas, echo chispas, que ardo, hierve la sangre, hirviendo la sangre, sangre
    fría, mala sangre, sudé sangre, sudar sangre, sudando sangre, dejarse los brazos, dejarse el
    brazo, partirse el lomo, romperse el lomo, rompí la cabeza, rompo la cabeza, romperse la cabeza,
    dolor de cabeza, dolores de cabeza, quema baterías, quema una al, quema una cada, vender humo,
    venden humo, puro humo, con el corazón en la mano, tengo extintor, tengo un extintor, cruzo los
    dedos, no responde cuando lo quiero, no
    responde cuando le doy, no responde cuando giro, no responde cuando doy, no responde al girar,
    no responde al darle, no responde a la llave, coche no responde, carro no responde, auto no responde
  `),
  asides: list(`
    estoy harta, estoy harto, no puedo más, no aguanto más, ya no sé qué hacer, qué desesperación,
    por si sirve, por si acaso, por si ayuda, por si le sirve, por si importa, por si vale,
    por si te sirve, por cierto, si sirve de algo, para que sepa, para que sepas,
    dicho sea de paso, ojo que, le aclaro que, aclaro que, diría yo, yo diría, digo yo
  `),
  likewise: [
    'también',
    'tambien',
    'igual',
    'lo mismo',
    'tampoco',
    'asimismo',
    'igualmente',
    'hacen lo mismo',
    'hace lo mismo',
    'iguales',
  ],
  subjects: list(`solo, sólo, solamente, nomás`),
  untried: list(`
    solo de repente, por sí solo, por sí sola, por si mismo, él solo, ella sola, ella solita, él
    solito, solito, solita, olvídalo, olvídelo, olvídate, olvídese, olvida todo, olvide todo,
    olvidalo todo, déjalo, déjelo, déjenlo, dejalo estar, ya no hace falta, no hace falta, ya no
    es necesario, no es necesario, ya no lo necesito, ya no necesito, no se preocupe, no te
    preocupes, falsa alarma, cancela, cancelen, cancele, sin hacer nada, sin tocar nada, no hice
    nada, no he hecho nada, no toqué nada, sin probar, antes de probar, antes de que, ni llegué
    a, ni la probé, ni lo probé, de la nada, de milagro, milagrosamente, mientras esperaba,
    mientras buscaba, mientras hablábamos, no sé por qué, no sé cómo, problema resuelto,
    problema solucionado, asunto resuelto, se arregló solo, se acabó el problema, ya está todo,
    no lo vas a creer, no se lo va a creer, espera espera, pare todo, paren todo
  `),
  runsOn: list(`
    al, en un, en una, en mi, en el, en la, a mi, a un, mi, es, era, es un, es una, en vez de, en lugar de, usa, lleva, al de
  `),
  price: list(`
    cuánto cuesta, cuánto me cuesta, cuánto costar, cuánto le cuesta, va a costar, costará, costaría, precio, factura, tarifa, salir todo, cuánto vale, cuánto cobra, cuánto me va a, quién paga
  `),
  rails: list(`tren, vías, vía del tren, rieles, paso a nivel, tranvía`),
  whether: ['si'],
  alternatives: list(`o, u, o bien, ya sea`),
  turns: list(
    `a veces, unas veces, otras veces, otras, a ratos, de a ratos, por ratos, en ocasiones, un rato, otro rato`,
  ),
  perhaps: list(`quizás, quizá, tal vez, puede que, a lo mejor, puede ser que, capaz que`),
  clauseBreaks: list(`
    y, pero, entonces, luego, cuando, mientras, porque, aunque, sino, pues
  `),
  // "se", "por" and "que" are no fillers, though they say little: without accents "no sé" would be a
  // plain "no", and "para qué" the same as "para".
  fillers: list(`
    jaja, jajaja, jajaj, jeje, jejeje, jiji,
    el, la, los, las, lo, le, les, me, te, nos, mi, mis, su, sus, tu, al, del, de, a, en, con, o,
    u, como, es, son, ser, sea, está, están, estaba, estaban, era, eran, hay, había, ha, he, han,
    hace, hacen, hizo, haciendo, hacer, muy, más, tan, bastante, solo, sólo, solamente, nomás, ya,
    aún, todavía, ahora, ahorita, aquí, acá, ahí, allí, allá, este, esta, esto, estos, estas, ese,
    esa, eso, esos, esas, eh, pues, bueno, mire, mira, oye, creo, parece, quizá, quizás, tal,
    acaso, casi, unos, unas, así, tipo, digamos, aproximadamente, aprox, hola, buenas, perdón,
    disculpe, disculpa, gracias, favor, porfa, yo, usted, él, ella, coche, carro, auto, camioneta,
    furgoneta, troca, nave
  `),
  courtesies: list(`
    gracias, muchas, por favor, porfa, señor, señora, amigo, amiga, jefe, tío, tía, hombre, mujer, che, güey, wey, parce, hermano, compa, pana, pues, mano, patrón, joven
  `),
  endings: list(`
    amente, emente, mente, ieron, aron, aban, arse, erse, irse, arlo, arla, erlo, erla, itos,
    itas, ito, ita, aba, ar, er, ir, an, en, os, as, es, o, a, e, s
  `),
  optionWords: list(`
    opción, número, num, nro, respuesta, elección, alternativa, la, el, los, las, y, es, son,
    creo, que, casilla, pondría, elijo, escojo
  `),
  talk: {
    yes: list(`
      he leído todo, lo he leído todo, ya lo he leído, leí todo, ya leí, es seguro aquí, está seguro, estamos seguros, tendré cuidado,
      sí, si si, sip, s, claro, claro que sí, por supuesto, vale, ok, okay, okey, oka, dale, de
      acuerdo, correcto, exacto, así es, sí señor, afirmativo, confirmo, confirmado, entendido,
      entiendo, leído, leído y entendido, lo leí, ya lo leí, sí lo leí, lo he leído, adelante,
      sigamos, seguimos, sigo, seguir, continuar, continúe, continuemos, es seguro, sí es seguro,
      sí seguro, seguro, todo seguro, se puede seguir, perfecto, órale, ándale, va, sí por favor,
      creo que sí, sí adelante, sí sigamos, sí sigo, sí continuar, sí entendido, sí puedo, sí se
      puede, sí todo bien, sí ok, ok sí, sí claro, sí correcto, está bien, todo en orden,
      ajá, aja, simón, sipi, sep, desde luego, efectivamente, bueno sí, obvio, obvio que sí, seguro que sí, cómo no, ya lo creo, cabal, eso es, mero, sí hombre,
      entendí, ya entendí, lo entendí, comprendido, comprendo, me queda claro, ya la leí, la leí, hecho y leído, así lo haré, lo haré
    `),
    no: list(`
      no, n, nop, no no, nel, qué va, para nada, claro que no, negativo, no es seguro, no seguro,
      todavía no, aún no, creo que no, no por favor, de ninguna manera, ni hablar,
      no gracias, ni de broma, ni loco, jamás, nones, nanay, tampoco, en absoluto, desde luego que no, no no no, más bien no, no señor
    `),
    done: list(`
      hecho, ya está hecho, listo, lista, ya está, ya, ya estuvo, ya lo cambié, ya la cambié, ya
      lo arreglé, ya lo puse, ya lo monté, reparado, arreglado, cambiado, cambiada, montado,
      montada, instalado, instalada, quedó listo, quedó lista, trabajo hecho, ya quedó, terminado,
      terminé, ya terminé, acabado, ya acabé, lo hice, ya lo hice, completado, completo, todo
      hecho, cumplido, esperé, ya esperé, he esperado, pasó el tiempo, ya pasó el tiempo, se
      cumplió el tiempo, ya se cumplió, tiempo cumplido, ya pasó el minuto, ya pasaron los minutos
    `),
    over: list(`
      ya pasó, pasó, ya pasó todo, pasó el peligro, se acabó, ya se acabó, ya no hay peligro, no
      hay peligro, ya no hay humo, ya no sale humo, ya no hay fuego, ya no gotea, ya no pierde, ya
      no sale nada, ya no hay fuga, fuera de peligro, estamos a salvo, estoy a salvo, todos a
      salvo, ya es seguro, es seguro ahora, dicen que ya es seguro, ya estamos seguros, se apagó el
      fuego, se apagó, ya se apagó, apagado, se fue, ya se fue, se detuvo, se paró, se volvió a
      parar, se volvió a apagar, se apagó otra vez, controlado, está controlado, bajo control,
      resuelto, solucionado, arreglado, despejado, volvió a la normalidad, es seguro, está seguro,
      está todo seguro, todo seguro, todos seguros, todos están a salvo, todos estamos a salvo,
      estamos todos a salvo, nadie corre peligro, ya no corremos peligro, los bomberos dicen que es
      seguro, los bomberos dicen que ya es seguro, la ambulancia ya se hizo cargo, la ayuda ya se
      hizo cargo
    `),
    'false-alarm': list(`
      falsa alarma, fue una falsa alarma, era una falsa alarma, es una falsa alarma, nunca hubo
      peligro, no hubo peligro, no hubo ningún peligro, no hubo ninguna emergencia, no hay ninguna
      emergencia
    `),
    'dont-know': list(`
      no sé, no lo sé, yo no sé, no sé bien, no sabría decir, no sabría, ni idea, no tengo idea, no
      tengo ni idea, ni la menor idea, no estoy seguro, no estoy segura, no estoy muy seguro, no me
      acuerdo, no recuerdo, no lo recuerdo, se me olvidó, lo olvidé, no me fijé, no vi, no conozco,
      desconozco, lo desconozco, ignoro, quién sabe, sepa, sabe dios, vaya uno a saber, difícil de
      decir, no podría decir, no te sé decir, no le sé decir, no puedo decir, no queda claro, ns,
      nc, vaya usted a saber, a saber, no me he fijado, no me consta, no soy mecánico, dudo,
      quizás, a lo mejor, no caigo
    `),
    cannot: list(`
      no lo apago otra vez, no lo vuelvo a apagar, no voy a apagarlo otra vez, no lo voy a apagar, no quiero
      apagarlo, no voy a apagar el motor, no apago el motor, no pienso apagarlo, lo dejo en marcha, lo dejo
      encendido, dejo el motor en marcha, lo dejo andando, lo dejo prendido,
      no puedo, no se puede, no lo puedo hacer, no puedo hacerlo, no puedo hacer eso, no puedo
      ahora, no podemos, no es posible, imposible, no soy capaz, no alcanzo, no llego, no llego
      ahí, no lo encuentro, no la encuentro, no encuentro, no lo veo, no veo, no se ve, no lo
      hallo, no existe, no lo trae, no lo tengo, no tengo, no tengo eso, no tengo uno, no traigo,
      no me atrevo, no quiero hacerlo, prefiero no hacerlo, mejor no, demasiado peligroso, paso,
      saltar, sáltalo, saltarlo, salta, omitir, omítelo, siguiente, no viene de fábrica, no lleva,
      imposible hacerlo, no hay forma, me falta la herramienta, sin aparato para eso, está
      inaccesible, está tapado, no sé hacerlo, no quiero tocarlo, está demasiado oscuro para ver,
      saltar este paso, sáltatelo, pasemos a otra, siguiente pregunta, eso me supera,
      el capó no abre, el capó no me abre, no me abre el capó, no se abre el capó
    `),
    why: list(`
      por qué, porqué, y eso por qué, por qué eso, por qué esto, por qué pregunta, por qué me
      pregunta, por qué preguntas, por qué lo pregunta, por qué quiere saber, por qué necesita
      saber, para qué, para qué es, para qué sirve, para qué sirve eso, para qué quiere saberlo,
      con qué fin, cuál es la razón, qué razón, qué significa, qué significa eso, qué significaría,
      qué quiere decir eso, explique, explícame, explíqueme, explicación, motivo, qué tiene que
      ver, qué importa eso, con qué objeto, cuál es el motivo, explica por qué, dime por qué, a
      cuento de qué, qué sentido tiene, qué utilidad tiene, de qué sirve, de qué sirve medir eso,
      qué buscas con eso, qué averiguas así, cuál es el propósito, justifícalo
    `),
    numbers: list(`
      números, los números, cifras, las cifras, muestra los números, muéstreme los números, ver
      los números, ver las cifras, qué números, de dónde salen los números, de dónde sale ese
      número, de dónde sale la cifra, qué tan seguro, qué tan seguro es, qué tan seguro estás, qué
      tan seguro está, qué tan exacto, qué tan exacto es, con qué certeza, con qué precisión, qué
      precisión tiene, fuentes, qué se espera, cuánto debería ser, cuánto debería dar, cuánto debe
      marcar, dónde se pierden los voltios, dónde se pierde el voltaje, dónde se pierden los volts
    `),
    back: list(`
      atrás, volver, volver atrás, regresar, regresa, vuelve, anterior, pregunta anterior, la
      anterior, paso atrás, un paso atrás, ir atrás, retroceder, deshacer, pregunta de antes,
      vuelve atrás, paso anterior, volvamos a la anterior, deshaz lo último, la de antes,
      regresemos, echa para atrás, llévame a la anterior, página anterior, una pregunta menos,
      rebobina, retorna, retornar un paso, quiero ver la anterior, una pantalla antes
    `),
    repeat: list(`
      repetir, repite, repita, repítelo, repítalo, otra vez, una vez más, repítelo de nuevo, cómo,
      cómo dice, cómo dijo, mande, qué dijo, dígalo otra vez, repita la pregunta, repite la
      pregunta, cuál era la pregunta, no entendí, no entendí la pregunta, no entiendo, no entiendo
      la pregunta, qué dijiste, qué has dicho, no he entendido, no comprendo, no te sigo, no capto,
      vuelve a decirlo, vuelve a preguntar, de nuevo por favor, qué preguntaste, dilo con otras
      palabras, no leí bien la pregunta, estoy perdido, a qué te refieres
    `),
    person: list(`
      persona, una persona, persona real, una persona real, humano, un humano, operador, operadora,
      un operador, agente, un agente, asesor, un asesor, hablar con una persona, hablar con
      alguien, hablar con un humano, hablar con un agente, hablar con un operador, hablar con un
      asesor, quiero hablar con alguien, quiero hablar con una persona, necesito una persona,
      necesito hablar con alguien, páseme con alguien, pásame con alguien, comuníqueme con alguien,
      que me llamen, llámenme, llámeme, que me llame alguien, atención humana, atención personal,
      ayuda humana, comunícame con alguien, con el encargado, asesor humano, un técnico de verdad,
      que venga alguien, llámame por teléfono, número de teléfono, teléfono de asistencia, manden
      una grúa, envíen una grúa, asistencia en carretera, no quiero hablar con una máquina, eres un
      robot, no me sirve un bot, contacto humano
    `),
    stop: list(`
      parar, para, detener, detente, alto, basta, salir, fin, adiós, chao, chau, hasta luego, hasta
      aquí, hasta acá, cancelar, abandonar, lo dejo, dejarlo, dejarlo aquí, lo dejo aquí, me rindo,
      quiero parar, quiero terminar, más tarde, pausa, nos vemos, sigo después, dejémoslo, desisto,
      no quiero seguir, no sigas, no preguntes más, ya no quiero continuar, cierra la conversación,
      interrumpir, detén el cuestionario, déjalo ya, déjame en paz, paremos aquí, termina la
      conversación, corta la conversación, cancelar todo, olvídalo todo
    `),
    language: list(`
      idioma, cambiar idioma, cambiar de idioma, cambia el idioma, otro idioma, otra lengua
    `),
  },
  retractions: list(`
    tonterías, qué tontería, eso es una tontería, no es cierto, no es verdad, eso no es cierto, eso
    no es verdad, eso está mal, eso estaba mal, está mal, me entendió mal, me has entendido mal, me
    entendiste mal, lo entendió mal, malentendido, un malentendido, fue un malentendido, no quise
    decir eso, no dije eso, yo no dije eso, nunca dije eso, no es lo que dije, fue un error, es un
    error, eso fue un error, me equivoqué, nada de eso
  `),
  neverWas: list(`
    no hubo, no había, nunca hubo, nunca había, no ha habido, nunca ha habido, no era, no fue,
    jamás hubo, yo no dije, no dije, nunca dije
  `),
  corrections: list(`
      eso estaba mal, estaba mal, eso fue un error,
      corrección, corrijo, corregir, quiero corregir, me equivoqué, me he equivocado, quise decir,
      quería decir, perdón quise decir, en realidad, en realidad era, error mío, fue un error, lo
      dije mal, lo puse mal, cambiar la respuesta, cambio la respuesta, cambia la respuesta,
      cambiar respuesta, debería ser, debía ser, rectifico, mejor dicho, digo, me equivoqué, me he
      equivocado, rectificación, quiero cambiar la respuesta, déjame corregir, me retracto, metí la
      pata, leí mal el aparato, retiro lo dicho, borra eso
    `),
  earlier: [
    'era',
    'eran',
    'fue',
    'fueron',
    'estaba en',
    'debía ser',
    'debería ser',
    'tenía que ser',
  ],
  statements: [
    {
      set: { 'vehicle.nominal': 24 },
      said: list(`
        vehículo de 24 v, sistema de 24 v, camión de 24 v, bus de 24 v, colectivo de 24 v,
        vehículo de 24 voltios, sistema de 24 voltios, camión de 24 voltios, autobús de 24
        voltios, vehículo de 24 volts, sistema de 24 volts, camión de 24 volts, vehículo de
        veinticuatro voltios, sistema de veinticuatro voltios, trabaja a 24 v, trabaja con 24
        voltios
      `),
    },
    {
      set: { 'vehicle.nominal': 12 },
      said: list(`
        vehículo de 12 v, sistema de 12 v, vehículo de 12 voltios, sistema de 12 voltios, vehículo
        de 12 volts, sistema de 12 volts, vehículo de doce voltios, sistema de doce voltios,
        trabaja a 12 v
      `),
    },
    {
      set: { 'vehicle.fuel': 'diesel' },
      said: list(`
        diésel, es diésel, es un diésel, motor diésel, a diésel, lleva gasoil, gasoil, gasóleo, a
        gasoil, petrolero, gasolero, coche diésel, carro a diésel
      `),
    },
    {
      set: { 'vehicle.fuel': 'petrol' },
      said: list(`
        gasolina, es de gasolina, motor de gasolina, a gasolina, usa gasolina, nafta, a nafta,
        naftero, motor a nafta, bencina, bencinero, a bencina, coche de gasolina, carro a gasolina
      `),
    },
    {
      set: { 'vehicle.transmission': 'automatic' },
      said: list(`
        automático, es automático, es un automático, caja automática, cambio automático,
        transmisión automática
      `),
    },
    {
      set: { 'vehicle.transmission': 'manual' },
      said: list(`
        manual, es manual, es un manual, caja manual, cambio manual, transmisión manual, estándar,
        es estándar, caja mecánica, sincrónico
      `),
    },
    {
      set: { 'vehicle.ignition': 'button' },
      said: list(`
        botón de arranque, botón de encendido, arranca con botón, tiene botón de arranque, tiene
        botón de encendido, prende con botón, enciende con botón
      `),
    },
    {
      set: { 'vehicle.ignition': 'key' },
      said: list(`
        arranca con llave, prende con llave, enciende con llave, es de llave
      `),
    },
    {
      set: { 'meter.class': 'simple' },
      said: list(`
        medidor sencillo, medidor barato, multímetro barato, multímetro sencillo, tester barato,
        tester sencillo, voltímetro barato, polímetro barato, mi medidor es barato, mi multímetro
        es barato, mi tester es barato, multímetro económico
      `),
    },
    {
      set: { 'meter.class': 'fine' },
      said: list(`
        buen medidor, medidor bueno, buen multímetro, multímetro bueno, medidor preciso,
        multímetro preciso, medidor exacto, multímetro exacto, medidor calibrado, multímetro
        calibrado, medidor caro, multímetro caro, tester bueno, buen tester, mi medidor es
        preciso, multímetro profesional
      `),
    },
    {
      set: { 'vehicle.hybrid': 'full' },
      said: list(`
        híbrido, es híbrido, es un híbrido, coche híbrido, carro híbrido, auto híbrido
      `),
    },
  ],
  accuracy: {
    meter: ['medidor', 'multímetro', 'voltímetro', 'polímetro', 'tester'],
    clamp: ['pinza', 'gancho'],
    // "por" is the first word of "por ciento".
    percent: ['%', 'por', 'porciento'],
    counts: ['cuentas', 'cuenta', 'puntos', 'counts'],
  },
  speaking: list(`
    habla, hablas, hablan, hablar, hablamos, hablo, hablemos, seguir, seguimos, continuar, escribir, entiendo, al, a, en, en el
  `),
  having: list(`
    tengo, tenemos, hay, ya tengo, conseguí, conseguimos, encontré, encontramos, me prestaron, me
    prestó, pedí prestado, compré, traje, trajeron, me trajeron, llegó, llegaron, dispongo, cuento
    con, puedo usar, traigo, llevo, apareció
  `),
  kit: {
    voltmeter: list(`
      voltímetro, multímetro, polímetro, tester, multitester, medidor de voltaje
    `),
    'test-lamp': list(`
      lámpara de prueba, lámpara de pruebas, luz de prueba, foco de prueba, bombillo de prueba,
      buscapolos
    `),
    'clamp-meter': list(`
      pinza amperimétrica, pinza amperométrica, amperímetro de gancho, amperímetro de pinza, pinza
      de corriente
    `),
    'load-tester': [
      'probador de descarga',
      'probador de carga',
      'comprobador de carga',
      'descargador de baterías',
    ],
    'electronic-tester': list(`
      probador electrónico, comprobador electrónico, probador de batería, comprobador de batería,
      analizador de batería, probador de conductancia
    `),
    'boost-source': list(`
      cables de arranque, cables para pasar corriente, cables pasa corriente, cables de puente,
      pinzas de batería, pinzas para arrancar, arrancador portátil, arrancador, booster, batería
      auxiliar
    `),
    charger: ['cargador', 'cargador de batería', 'cargador de baterías'],
    'code-reader': list(`
      lector de códigos, lector de averías, lector de fallas, escáner, scanner, máquina de
      diagnosis
    `),
    'second-key': list(`
      segunda llave, otra llave, llave de repuesto, copia de la llave, duplicado de la llave, otro
      mando, otro control
    `),
    helper: list(`
      ayudante, alguien que ayude, alguien que me ayude, alguien que me ayuda, un amigo, un
      vecino, otra persona, un compañero, acompañante
    `),
    'hand-tools': list(`
      herramientas, herramientas de mano, caja de herramientas, juego de llaves, llaves fijas,
      llave de tuercas
    `),
    'bench-tester': ['banco de pruebas', 'probador de banco', 'banco de prueba'],
  },
};
