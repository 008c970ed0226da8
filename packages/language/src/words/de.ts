import { list } from './list.ts';
import type { Words } from './words.ts';

/** The jährig of "sechsjährig": of so many years. */
const ofYears = list(`jährig, jährige, jährigen, jähriger, jähriges`);

/** German as it is typed at the roadside, in Germany, Austria and Switzerland. */
export const deWords: Words = {
  spelling: {
    letters: [
      // An ü is never written behind another vowel: "neuen" is not "neun".
      ['kommaei', 'komma ei'],
      // No minus: "plus minus 12".
      ['plus minus', 'etwa'],
      ['plusminus', 'etwa'],
      // No new clause: "das Licht geht aber nicht" says that it does not.
      [' aber nicht', ' nicht'],
      [' aber auch nicht', ' nicht'],
      // Where one parks and rides on there is no lever on P.
      ['p+r', 'park and ride'],
      ['p&r', 'park and ride'],
      // What moves not a bit does not move.
      [' kein stuck', ' nicht'],
      [' kein stueck', ' nicht'],
      [' kein bisschen', ' nicht'],
      [' keinen millimeter', ' nicht'],
      [' kein millimeter', ' nicht'],
      ['eue', 'eve'],
      ['aue', 'ave'],
      ['ae', 'a'],
      ['oe', 'o'],
      ['ue', 'u'],
    ],
    compounds: true,
    unitsBehind: [...ofYears, 'jahr', 'volt', 'ampere'],
    unitsFirst: true,
    refusals: ['nein', 'nö', 'nee'],
    denyBefore: list(`
      nicht, nich, nichts, nix, nie, niemals, net, ned, nit, nid, nöd, keins, keine, keinen, keiner, keen, keene
    `),
  },
  cardinals: {
    null: 0,
    ein: 1,
    eins: 1,
    eine: 1,
    einen: 1,
    zwei: 2,
    zwo: 2,
    drei: 3,
    vier: 4,
    fünf: 5,
    sechs: 6,
    sieben: 7,
    acht: 8,
    neun: 9,
    zehn: 10,
    elf: 11,
    zwölf: 12,
    dreizehn: 13,
    vierzehn: 14,
    fünfzehn: 15,
    fuffzehn: 15,
    sechzehn: 16,
    siebzehn: 17,
    siebenzehn: 17,
    achtzehn: 18,
    neunzehn: 19,
    zwanzig: 20,
    dreißig: 30,
    dreizig: 30,
    vierzig: 40,
    fünfzig: 50,
    fuffzig: 50,
    sechzig: 60,
    sechszig: 60,
    siebzig: 70,
    siebenzig: 70,
    achtzig: 80,
    neunzig: 90,
    anderthalb: 1.5,
    'ein einhalb': 1.5,
    anderthalbe: 1.5,
    eineinhalb: 1.5,
    'ein halb': 0.5,
    'ein halbes': 0.5,
    'ein halber': 0.5,
    'eine halbe': 0.5,
    'einen halben': 0.5,
    'ein viertel': 0.25,
    'eine viertel': 0.25,
    'ein dreiviertel': 0.75,
    'eine dreiviertel': 0.75,
  },
  scales: { hundert: 100, tausend: 1000, jahrzehnt: 10, jahrzehnte: 10, jahrzehnten: 10 },
  decimalZero: [],
  point: ['komma', 'koma', 'punkt', 'beistrich'],
  joins: ['und'],
  articles: ['einer', 'eines', 'einem'],
  fractions: {
    zehntel: 1 / 10,
    hundertstel: 1 / 100,
    halb: 1 / 2,
    halbe: 1 / 2,
    halben: 1 / 2,
    halber: 1 / 2,
    halbes: 1 / 2,
    einhalb: 1 / 2,
    viertel: 1 / 4,
    dreiviertel: 3 / 4,
  },
  below: [
    'minus',
    'unter null',
    'unter Null',
    'Frost',
    'unter dem gefrierpunkt',
    'unter gefrierpunkt',
    'minusgrade',
    'grad frost',
  ],
  minus: ['minus', 'negativ'],
  days: {
    back: { heute: 0, 'heute früh': 0, gestern: 1, vorgestern: 2, vorvorgestern: 3 },
    times: list(`
      gestern, gestern abend, gestern früh, vorgestern, heute, heut, heute früh, heut früh, heute morgen, heute abend, letzte nacht, nachts, in der nacht, den ganzen tag
    `),
    day: list(`Tag, Tage, Tagen`),
    week: list(`Woche, Wochen`),
    ago: list(`vor, her`),
    last: list(
      `letzte, letzten, letzter, letztem, vorige, vorigen, voriger, vergangene, vergangenen, vergangener`,
    ),
    seasons: list(`Winter, Sommer, Frühjahr, Frühling, Herbst, Weihnachten, Ostern`),
    weekdays: { Sonnabend: 6 },
  },
  ordinals: {
    erste: 1,
    erster: 1,
    erstes: 1,
    ersten: 1,
    zweite: 2,
    zweiter: 2,
    zweites: 2,
    zweiten: 2,
    dritte: 3,
    dritter: 3,
    drittes: 3,
    dritten: 3,
    vierte: 4,
    vierter: 4,
    viertes: 4,
    vierten: 4,
    fünfte: 5,
    fünfter: 5,
    fünftes: 5,
    fünften: 5,
    sechste: 6,
    sechster: 6,
    sechstes: 6,
    sechsten: 6,
    siebte: 7,
    siebter: 7,
    siebtes: 7,
    siebten: 7,
    siebente: 7,
    achte: 8,
    achter: 8,
    achtes: 8,
    achten: 8,
    neunte: 9,
    neunter: 9,
    neuntes: 9,
    neunten: 9,
    zehnte: 10,
    zehnter: 10,
    zehntes: 10,
    zehnten: 10,
    elfte: 11,
    elfter: 11,
    elftes: 11,
    elften: 11,
    zwölfte: 12,
    zwölfter: 12,
    zwölftes: 12,
    zwölften: 12,
  },
  grouping: '.',
  units: {
    V: list(`
      v, volt, volts, vol, vlt, vdc, v dc, volt dc, volt gleichspannung, v gleichspannung
    `),
    mV: ['mv', 'milli', 'millivolt', 'milli volt'],
    A: list(`
      a, amp, amps, ampere, amper, cca, a cca, ampere cca, a en, ampere en, a din, ampere din
    `),
    kA: ['ka', 'kiloampere', 'kilo ampere'],
    mA: ['ma', 'milliampere', 'milliamper', 'milli ampere'],
    'A.h': ['ah', 'amperestunde', 'amperestunden', 'ampere stunden'],
    Ohm: ['ω', 'ohm'],
    mOhm: ['mω', 'mohm', 'milliohm', 'milli ohm'],
    Cel: list(`
      cel, °c, c, celsius, grad c, grad celsius, celsiusgrad
    `),
    '[degF]': list(`
      °f, f, fahrenheit, grad f, grad fahrenheit
    `),
    'N.m': ['nm', 'n m', 'newtonmeter', 'newton meter'],
    '[lbf_av].[ft_i]': ['lbf ft', 'lb ft', 'ft lb', 'ft lbs', 'ft lbf'],
    '[lbf_av].[in_i]': ['lbf in', 'lb in', 'in lb', 'in lbs'],
    'kgf.m': ['kgf m', 'kpm', 'kilopondmeter', 'mkg', 'kg m'],
    ms: ['ms', 'millisekunde', 'millisekunden'],
    s: ['s', 'sek', 'sec', 'sekunde', 'sekunden'],
    min: ['min', 'minute', 'minuten'],
    h: ['h', 'std', 'stunde', 'stunden'],
    d: ['tag', 'tage', 'tagen'],
    wk: ['woche', 'wochen'],
    mo: ['monat', 'monate', 'monaten'],
    a: [...list(`jahr, jahre, jahren, jahre alt, jahr alt, jährchen, winter, j`), ...ofYears],
    Hz: ['hz', 'hertz'],
    '/min': list(`
      u min, upm, rpm, umdrehungen, umdrehung, touren, umdrehungen pro minute,
      umdrehungen je minute, umdrehungen in der minute
    `),
    L: ['l', 'liter', 'litern'],
    W: ['w', 'watt'],
    kW: ['kw', 'kilowatt'],
    bar: ['bar'],
    kPa: ['kpa', 'kilopascal'],
    '[psi]': ['psi'],
    '%': ['%', 'prozent', 'perzent'],
  },
  bareUnits: ['grad', 'grd', '°'],
  boundsOnly: list(`
    weniger als, kleiner als, niedriger als, tiefer als, mehr als, größer als, höher als, unter,
    über, unterhalb, unterhalb von, oberhalb, oberhalb von, mindestens, wenigstens, zumindest,
    höchstens, maximal, bis zu, nicht mal, nicht einmal, keine
  `),
  nearly: list(`
    kurz, etwas, knapp, bisschen, leicht, wenig, minimal, gerade, eben, hauch, bissl, tick
  `),
  vague: list(`
    paar, mehrere, einige, und ein bisschen, und bisschen, und ein paar, und etwas, irgendwas, komma irgendwas, komma noch was, und noch was, und ein wenig, und ein paar zerquetschte, und a bissl, komma etwas, und ein bissl was, und a bisserl, und bissl was, irgendwas mit, komma nochwas, und irgendwas, etwas mehr, bissl mehr, bisschen mehr, und a bissl was, a bissl was
  `),
  besideFigures: list(`
    bis, oder, auf, bei, in, mit, während, wenn, nach, vor, an, am, im, beim, von, für, als, hier,
    dort, da, heute, draußen, genau, exakt, stabil, konstant, ich, es, er, sie, ist, war, sind,
    waren, wird, und, aber, dann, der, die, das, den, dem, jetzt, bitte, danke, nur, wieder, so,
    ab, noch, eben, grad, gerade, sage, habe, hab, gemessen, abgelesen, angezeigt, zeigt, steht, stehen, liegt, liegen, an,
    rest, messung, messgerät, multimeter, voltmeter, gerät, insgesamt, alt, plus, ungefähr, circa,
    ca, etwa, rund, runter, rauf, hoch, ein, glatt, glatte, früh, morgens, abends, haargenau, okay, ok, gut, schlecht, aus, raus, heraus, rein, durch, hin, ersetzen, tauschen, austauschen, nachladen, schwach, geworden, laut, lt, rum, herum, mini, maxi, nix, nichts, nüscht, würd, würde, würden, müsst, müsste
  `),
  figureWords: {
    asideBefore: list(`
      pin, pins, klemme, kl, um halb, halb, um viertel nach, um viertel vor, messbereich, bereich, baujahr, bj, zylinder, zelle, spitze, in der spitze, spitzenwert, auf stellung, eingestellt auf, gekostet, im ersten moment, kurz auf, gestellt auf, gedreht auf, ebene, etage, deck, stock, untergeschoss, garantie, gewährleistung, garantie sind, garantie von
    `),
    asideBehind: list(`
      uhr, uhr morgens, uhr früh, uhr abends, mal, male, versuche, versuch, versuchen, zellen, zylinder, zylindern, zöpfe, türen, euro, eur, franken, bereich, messbereich, volt bereich, v bereich, kilometer, km, meter, messungen, personen, leute, kabel, bolzen, digits, stellen, er bereich, gleichspannung, volt gleichspannung, er bereich, v gleichspannung, heut nacht, heute nacht, in der nacht, nachts, heut früh, heute früh, anläufe, anläufen, anlauf, durchgänge, durchgängen, garantie, gewährleistung, jahre garantie, quadrat, er kabel, quadratmillimeter, er quadrat, qmm, mm2, mm, mm²
    `),
    engine: list(`
      benziner, diesel, motor, tdi, hdi, liter, hubraum, turbo, benzin, dieselmotor
    `),
    instead: list(`
      nein, ne, nee, nein warte, warte, moment, halt, stopp, sorry, entschuldigung, äh, ähm, quatsch, blödsinn, pardon, ich meine, ich mein, meine, meinte, ich meinte, besser gesagt, korrigiere, korrektur, ups, hoppla, verlesen, hab mich verlesen, vertippt, falsch, verschrieben, genau, sagen wir, sagen wir mal, sag ma, exakt, genauer, genau gesagt, um genau zu sein, sag mal, oder eher, korrigiert, zahlendreher
    `),
    settles: list(`
      schreib, schreiben sie, nehmen wir, nimm
    `),
    again: list(`
      zweimal, 2 mal, beim zweiten mal, zweites mal, das andere mal, beim anderen mal, ein andermal, zweite messung, zweiten messung, welchen, welche nehm, welche soll, welche gilt, welcher gilt, welcher stimmt, welche stimmt, welcher wert, was gilt, was stimmt, was nehm, such dir
    `),
    unsteady: list(
      `springt hin, hin und her, springt dauernd, schwankt dauernd, wechselt dauernd, wechselt ständig, ändert sich dauernd, ändert sich ständig, springt immer, springt rum, springt ständig, schwankt, pendelt zwischen, tanzt zwischen, mal so mal so, hüpft`,
    ),
    undecided: list(
      `such dir eins aus, such dir eine aus, suchen sie sich eins aus, such dir was aus, such dir einen aus, weiß nicht welcher, weiß nicht welche, weiß nicht welches, welcher stimmt, welche stimmt, welches stimmt, welcher gilt, welche gilt, keine ahnung welcher, keine ahnung welche`,
    ),
    between: list(`zwischen`),
    past: list(`
      gestern, gestern abend, vorhin, vorher, letzte nacht, zuvor, war, warens, wars, waren, neulich, vorgestern, zuerst, anfangs, heute früh, letzte woche, davor, früher, hatte, hatten, lag, letztes mal, beim letzten mal, am anfang, im stand, vorm, vor dem, fing bei, fing mit, begann bei, begann mit, startete bei, im neuzustand, als sie neu, ich sagte, hab gesagt, die alte, der alte, die vorige, die davor
    `),
    present: list(`
      jetzt, heute, nun, aktuell, gerade, momentan, inzwischen, mittlerweile, am ende, am schluss, zum schluss, zuletzt, schließlich, endete bei, letztlich, richtig gemessen, richtig, diesmal, draußen
    `),
    expected: list(`
      sollte, sollten, müsste, müssten, erwartet, statt, anstatt, normal wäre, normal wären, anstelle, anstelle von, im vergleich zu, verglichen mit, gegenüber, sollt, müsst, haben sollte, soll, sollen, grenze, grenzwert, vorgabe, will man, will ich, sonst, normalerweise, normal, laut buch, handbuch, im handbuch, laut anleitung, angesagt waren, angesagt war, vorhersage, vorhergesagt
    `),
    felt: list(`
      gefühlt, gefühlte, gefühlten, im wind, mit wind, fühlt sich an wie
    `),
    concludes: list(`
      also, macht, folglich, somit, demnach, sprich, ergo
    `),
    changes: list(`
      fällt, fiel, gefallen, sinkt, sank, gesunken, sackt, sackte, geht, ging, bricht, brach, rutscht, rutschte, steigt, stieg, runter, herunter, hinunter, rauf, pendelt sich bei, pendelt sich auf, pendelt sich ein bei, einpendelt, stabilisiert sich bei, bleibt bei, bleibt dann bei, dann bei, eingebrochen, abgesackt, absackt, kommt, runter auf, stürzt, stürzte, klettert, kletterte, gestiegen, springt
    `),
    from: list(`
      von
    `),
    until: list(`
      bis zu
    `),
    barely: list(`keine, nicht ganz, minimal, minimum, mindestens`),
    moments: list(`
      während, wenn, beim, als, sobald, wo, solange, derweil
    `),
    after: list(`
      nach, seit, nachdem
    `),
    unread: list(`
      ol, o l, überlauf, zeigt nichts, zeigt nichts an, zeigt gar nichts, zeigt gar nichts an, keine anzeige, nichts angezeigt, display leer, display bleibt leer, display ist leer, anzeige leer, anzeige bleibt leer, nichts auf dem display, kein wert, keinen wert, striche, nur striche, springt hin und her, springt rum, schwankt ständig, keine zahl, display schwarz, display dunkel, misst nichts, anzeige dunkel
    `),
    thousand: list(`k, kv, ka, kilo, kilometer, kilovolt, kiloampere, kiloamper`),
    display: list(`
      display, anzeige, messgerät, multimeter, voltmeter, gerät
    `),
    measured: list(`gemessen, messe, misst, messung`),
    otherMeters: list(`
      säureheber, aräometer, säuredichte, dichte, hydrometer, säure, refraktometer
    `),
    label: list(`
      etikett, etikett sagt, etikett steht, etikett stehen, aufkleber, aufkleber sagt, aufkleber steht, typenschild, nennwert, nominell, nominal, aufdruck, steht drauf, draufsteht, schild, kälteprüfstrom, aufgedruckt, aufgedruckte, drauf stehen, draufstehen, nennstrom, beschriftet, draufgedruckt, steht auf der batterie, laut etikett, laut aufdruck, aufschrift, auf der batterie steht, batterie steht, steht auf dem akku, auf dem akku steht, angegeben, angegeben mit, laut batterie, auf der batterie stehen, batterie stehen, drauf steht, auf dem akku stehen, steht auf der, stehen auf der, aufm akku steht, aufm akku stehen
    `),
    outOf: list(`
      von, aus
    `),
    above: list(`
      über null, plus, über dem gefrierpunkt
    `),
    less: list(`
      weniger, minus
    `),
    oneBefore: list(`
      vor einem, seit einem, einem, ein, ganzes, ganzer, ganzen, volles, volles
    `),
    oneBehind: [],
    cranking: list(`
      start, anlass, orgel, dreh, schlüssel, zünd
    `),
    standing: list(`
      stand, steht, gestanden, parkt, bewegt, gefahren
    `),
    vehicle: list(`
      auto, autos, wagen, karre, fahrzeug, kfz, lkw, transporter, kiste, pkw, bus, traktor, schlepper, laster, kombi, limousine, kleinwagen, wohnmobil, camper, van, suv, cabrio
    `),
    battery: list(`
      akku, batterie, batt, accu, batterien
    `),
    worse: list(`
      schlechter, schlechtere, schlechteste, schlimmer, schlimmere, schlimmste, schlechteren, schlimmeren, höher, höhere, höchste, größere
    `),
    clock: list(`
      es ist halb, es ist, um halb, wir haben
    `),
    sides: list(`
      plus, minus, pluspol, minuspol, plusklemme, minusklemme, plusseite, minusseite, rot, roten, schwarz, schwarzen, masse, andere, anderer, anderen, anderem, andre, einen, einer, eine, eines
    `),
    difference: list(`
      unterschied, differenz, auseinander, abweichung, abstand
    `),
    swapped: list(`
      vertauscht, verkehrt herum, verkehrtherum, verkehrt rum, falsch herum, falsch rum, falschrum, verpolt, andersrum, andersherum, umgekehrt, verdreht, verwechselt, vertausch, verwechsel, verpol, umgedreht, falsch gepolt, falsch dran, falsch angelegt, gegengepolt
    `),
    roughly: list(`
      etwa, ungefähr, ca, circa, rund, fast, knapp, beinahe, gut, so, um die, nahezu, an die
    `),
    recovers: list(`
      wieder, zurück, erhol, loslass, loslässt, losgelassen, danach, hinterher, anschließend
    `),
    climbs: list(`
      geht, kommt, steigt, klettert, gehen, kommen, will
    `),
    pair: list(`
      zwei batterien, beide batterien, beide zusammen, in reihe, in serie, zwei akkus, beide, beiden, das paar, alle zwei, die zwei, zwei hintereinander, beide hintereinander
    `),
    onto: list(`
      auf
    `),
    round: list(`
      glatt, glatte, ganze, ganzen, rund, genau, gerade, satte, volle, vollen, ungerade, oder so
    `),
    ratedAt: list(`
      bei einer, bei der, an einer, an der, auf einer, von einer, von, ist eine, bei ner, an ner, spule mit, spule hat
    `),
    allOff: list(`
      alles aus, alles ausgeschaltet, alles abgeschaltet, alles ist aus, alles abgestellt, zündung aus, motor aus, ohne verbraucher, verbraucher aus, in ruhe, im ruhezustand, ruhespannung, allem aus, bei allem aus, allem ausgeschaltet, alles aus gemacht, unbelastet, ohne last
    `),
  },
  negators: list(`
    nicht, nich, nüscht, nimma, nichts, nix, nie, niemals, niemand, kein, keen, keene, kee, keine, keinen, keinem, keiner, keines, keins,
    ohne, weder, net, ned, nit, nid, nöd, koa, koan, nimmer
  `),
  exceptives: {
    behind: list(`nichts, nix, nüscht`),
    between: list(`da, hier, dabei, anderes, passiert`),
    words: list(`außer`),
  },
  subjects: list(`nur, bloß, eher, ich, wir, er, sie, es, der, das, man`),
  asides: list(`
    guten morgen, guten abend, guten tag, übrigens, nebenbei, nebenbei gesagt, falls das hilft, falls es hilft, wenn das hilft,
    falls das wichtig ist, falls wichtig, falls es wichtig ist, falls das was hilft, nur zur info,
    zur info, wohlgemerkt, würd ich sagen, würde ich sagen, würd ich mal sagen, sag ich mal, würd ich meinen
  `),
  likewise: [
    'auch',
    'genauso',
    'ebenso',
    'ebenfalls',
    'genau so',
    'auch so',
    'gleich',
    'dasselbe',
    'das gleiche',
    'gleichfalls',
    'aa',
    'au',
  ],
  exclaims: list(`
    super, lol, haha, hahaha, ha, oh, ach, ah, aha, wow, juhu, hurra, puh, huch, ups, hm, hmm, äh, ähm, ok, okay, so, na, na sowas, naja, nvm, moment, warte, sorry, danke, danke schön, hey, hallo, ja, alles gut, egal, schon gut, gott, mensch, stopp, stop, ui
  `),
  untried: list(`
    lassts gut sein, lasst es gut sein, lass gut sein, lassen sie es gut sein, von allein, von alleine, von selbst, von selber, von sich aus, aus dem nichts, aus heiterem
    himmel, hat sich erledigt, hat sich schon erledigt, hat sich grad erledigt, sich erledigt,
    erledigt sich, erübrigt sich, vergiss es, vergesst es, vergessen sie es, vergessen sie das,
    vergiss das, vergiss alles, vergessen sie alles, nicht mehr nötig, nimmer nötig, nicht
    nötig, nicht mehr notwendig, brauch ich nicht mehr, brauche ich nicht mehr, braucht es nicht
    mehr, braucht ihr nicht, brauchen wir nicht mehr, lass gut sein, lassen sie gut sein, lasst
    gut sein, lass stecken, schon gut, fehlalarm, ohne dass ich, ohne was zu tun, ohne zu tun,
    hab nichts gemacht, nichts gemacht, nix gemacht, gar nichts gemacht, bevor ich, ehe ich, gar
    nicht erst, noch gar nicht probiert, wie durch ein wunder, oh wunder, während ich, weiß
    nicht warum, keine ahnung warum, keine ahnung wieso, problem gelöst, problem hat sich
    gelöst, entwarnung, kommando zurück, stopp, halt stop, du glaubst es nicht, sie glauben es
    nicht
  `),
  runsOn: list(`
    in den, in die, in das, ins, im, in meinen, in meine, in mein, in einen, in nen, in unseren, in n, mein, meine, meinen, meinem, unser, unseren, den, der, ist ein, is ein, ist n, is n, ist aber ein, braucht, statt, anstatt, anstelle von
  `),
  sayings: list(`
    ich rauch, ich rauche, rauch ich, rauche ich, rauch mir, rauche mir, raucht sich, raucht eine, eine rauchen, eine geraucht,
    zum rauchen, rauch ? nein, qualm ? nein, feuer ? nein, flammen ? nein, lkw hier, laster hier, der rasen, den rasen, dem rasen,
    riemen gerissen, riemen ist gerissen, zahnriemen gerissen, zahnriemen ist gerissen,
    zahnriemen gebrochen, keilriemen gerissen, keilriemen ist gerissen, unter den nägeln,
    in flammen vor, unter uns gesagt, direkt auf den pol, direkt auf die pole,
    direkt auf die klemme, rettungswagen vom, rettungswagen der, krankenwagen vom,
    krankenwagen der, wir sind ein rettungswagen, wir sind ein krankenwagen, im rettungswagen,
    im krankenwagen, freiwillige feuerwehr, freiwilligen feuerwehr, krankenwagen der feuerwehr
  `),
  price: list(`
    kosten, kostet, preis, teuer, rechnung, was nehmt ihr, muss ich zahlen, muss ich das zahlen, wer zahlt
  `),
  rails: list(
    `zug, bahn, gleis, gleise, gleisen, schiene, schienen, bahnübergang, tram, straßenbahn`,
  ),
  whether: ['ob'],
  alternatives: list(`oder, entweder, beziehungsweise, bzw`),
  turns: list(
    `mal, manchmal, einmal, das eine mal, das andere mal, beim einen mal, beim nächsten mal, ab und zu, teils`,
  ),
  perhaps: list(`vielleicht, kann sein, eventuell, womöglich, könnte sein, möglich dass`),
  clauseBreaks: list(`
    aber, und, dann, wenn, während, weil, obwohl, sondern, jedoch, danach, bevor, sobald
  `),
  fillers: list(`
    der, die, das, den, dem, des, dieser, diese, dieses, diesen, diesem, einer, eines, einem, er,
    sie, es, ihn, ihm, ihr, ich, du, wir, man, uns, unser, unsere, mein, meine, meinem, meiner,
    sein, seine, seiner, ist, sind, bin, war, waren, hat, hatte, in, im, am, beim, bei, vom, von,
    mit, für, zum, zur, um, sich, so, auch, nur, mal, eben, halt, doch, denn, noch, schon,
    bereits, sehr, ganz, ziemlich, recht, etwas, ungefähr, circa, ca, zirka, etwa, knapp, rund,
    vielleicht, wohl, eventuell, evtl, vermutlich, wahrscheinlich, glaub, glaube, denke, denk,
    scheint, scheinbar, wirkt, irgendwie, gar, überhaupt, absolut, komplett, völlig, total, bitte,
    danke, sorry, hallo, hi, moin, grüezi, äh, ähm, hm, hmm, also, nun, nämlich, auto, wagen,
    karre, kiste, kfz, pkw, als, dass, einfach, leider, eh, grad, gerade, und, is, ists, sinds, dürfte, dürft
  `),
  courtesies: list(`
    danke, bitte, schön, vielen, dank, alter, mann, herr, chef, mei, ach, oh, na, doch, schon, eh, halt, mal, dann, gell, freund, kollege, merci
  `),
  endings: list(`
    tem, ten, tes, tet, te, em, en, es, et, e, n, s, t
  `),
  optionWords: list(`
    option, nummer, nr, antwort, auswahl, möglichkeit, ein, eine, einen, der, die, das, und, es,
    ist, ich, nehme, wähle, glaube
  `),
  talk: {
    yes: list(`
      habe alles gelesen, hab alles gelesen, ich habe es gelesen, ich hab es gelesen, ist sicher, hier ist es sicher, wir sind sicher, bin vorsichtig, ich passe auf,
      ja, j, jo, jep, jepp, jap, jup, jawohl, jawoll, joa, ja bitte, ja klar, ja genau,
      ja habe ich, ja das stimmt, klar, na klar, sicher, freilich, passt, ok, okay, oke, genau,
      stimmt, richtig, korrekt, natürlich, selbstverständlich, bestätigt, bestätige,
      ich bestätige, verstanden, gelesen, gelesen und verstanden, weiter, weitermachen,
      mach weiter, machen wir weiter, geht klar, alles klar, alles sicher, es ist sicher,
      einverstanden, in Ordnung,
      eh klar, logo, jou, aber sicher, sicher doch, mhm, auf jeden Fall, definitiv, absolut, gerne, so ist es, exakt, basst, passt schon, yes, jawoi, aber ja, ja freilich, unbedingt,
      mach ich, mache ich, wird gemacht, habe ich gelesen, hab ich gelesen, hab es gelesen, habe es gelesen, hab ich verstanden, habe verstanden, kapiert, ist klar, kann weitergehen
    `),
    no: list(`
      nein, n, nö, ne, nee, na, nope, nein danke, auf keinen Fall, sicher nicht, keinesfalls,
      nicht sicher, es ist nicht sicher, noch nicht,
      eher nicht, nicht wirklich, ned, des ned, na des ned, sicher ned, überhaupt nicht, auf gar keinen Fall, niemals, keineswegs, leider nein, leider nicht, natürlich nicht, bestimmt nicht, glaub nicht, nööö
    `),
    done: list(`
      fertig, bin fertig, alles fertig, erledigt, gemacht, habe ich gemacht, ist gemacht, bereit,
      abgeschlossen, geschafft, getan, gewartet, habe gewartet, Zeit ist um, Zeit ist abgelaufen,
      Zeit ist vorbei, Wartezeit um
    `),
    over: list(`
      vorbei, es ist vorbei, alles vorbei, Gefahr vorbei, Gefahr ist vorüber, vorüber, überstanden,
      alles wieder gut, alles wieder in Ordnung, wieder in Ordnung, wieder sicher, jetzt sicher,
      ist jetzt sicher, jetzt ist es sicher, wir sind sicher, in Sicherheit, jetzt in Sicherheit,
      weg, ist weg, gelöscht, Feuer ist aus, aus, hat aufgehört, aufgehört, behoben, beseitigt,
      geregelt, Entwarnung, nicht mehr, kann weitergehen, wieder normal, es ist sicher, hier ist es
      sicher, alles sicher, alle sicher, alle sind sicher, wir sind alle sicher, alle in
      Sicherheit, alle sind in Sicherheit, wir sind in Sicherheit, wir sind alle in Sicherheit,
      keiner ist in Gefahr, niemand ist in Gefahr, keine Gefahr mehr, Gefahr gebannt, ist
      gesichert, alles gesichert, Feuerwehr sagt es ist sicher, die Feuerwehr sagt es ist sicher,
      Rettungsdienst hat übernommen, Hilfe hat übernommen, ist versorgt
    `),
    'false-alarm': list(`
      Fehlalarm, war ein Fehlalarm, das war ein Fehlalarm, ist ein Fehlalarm, falscher Alarm, war
      falscher Alarm, blinder Alarm, es gab nie eine Gefahr, es gab keine Gefahr, es war nie
      Gefahr, es gibt keinen Notfall, das war kein Notfall, ist kein Notfall
    `),
    'dont-know': list(`
      weiß nicht, weiß ich nicht, ich weiß es nicht, weiß es nicht, weiß ned, weiß nimmer, keine
      Ahnung, kA, k a, null Ahnung, kein Plan, keinen Plan, keinen Schimmer, keinen blassen
      Schimmer, unklar, unbekannt, nicht sicher, bin mir nicht sicher, unsicher, kann ich nicht
      sagen, kann man nicht sagen, schwer zu sagen, kann ich nicht erkennen, kann man nicht
      erkennen, erinnere mich nicht, kann mich nicht erinnern, vergessen, habe ich vergessen, wer
      weiß, nicht bekannt, woher soll ich das wissen, ungewiss, nicht sicher zu sagen, bin
      überfragt, überfragt, entzieht sich meiner Kenntnis, kenne mich nicht aus, habe nicht drauf
      geachtet, nicht aufgepasst, nicht darauf geschaut, nicht gemerkt, keinen Dunst
    `),
    cannot: list(`
      mache ihn nicht mehr aus, mach ihn nicht mehr aus, mach den nicht mehr aus, mache den Motor nicht mehr aus,
      mach den Motor nicht aus, stelle ihn nicht mehr ab, stell ihn nicht mehr ab, stell den Motor nicht ab,
      schalte ihn nicht mehr aus, will ihn nicht mehr ausmachen, lass ihn laufen, lasse ihn laufen, lass den
      Motor laufen,
      kann nicht, kann ich nicht, kann das nicht, kann es nicht, ich kann das nicht machen, geht
      nicht, geht gerade nicht, geht hier nicht, geht leider nicht, kann ich nicht messen, kann es
      nicht messen, nicht messbar, nicht möglich, unmöglich, komme nicht ran, komm nicht ran, komme
      nicht dran, komm nicht dran, komme nicht hin, komm da nicht hin, finde ich nicht, finde es
      nicht, find ich nicht, nicht gefunden, nicht vorhanden, nicht verbaut, nicht eingebaut, gibt
      es nicht, gibts nicht, habe ich nicht, hab ich nicht, habe keins, hab keins, habe so was
      nicht, überspringen, auslassen, Frage überspringen, skip, zu gefährlich, mag ich nicht
      machen, das mache ich nicht, lieber nicht, trau mich nicht, traue mich nicht, schaffe ich nicht,
      bringe ich nicht fertig, nicht machbar, mir fehlt das Gerät, fehlt mir das Werkzeug dafür,
      komme nicht dazu, komme da nicht dran, sehe es nicht, kann es nicht sehen, traue ich mir
      nicht zu, zu schwierig, zu dunkel dafür, kein Zugang, nicht erreichbar, Abdeckung geht nicht
      ab, bin dazu nicht in der Lage
    `),
    why: list(`
      warum, warum das, wieso, wieso das, weshalb, wozu, wozu das, wofür, warum fragen Sie, warum
      fragst du, wieso fragen Sie, warum wollen Sie das wissen, wozu brauchen Sie das, wozu soll
      das gut sein, was bringt das, was bedeutet das, was heißt das, aus welchem Grund, Grund,
      Begründung, erklären, erkläre das, erklären Sie das, Erklärung, weswegen, was nützt das, was
      hat das damit zu tun, welchen Zweck hat das, zu welchem Zweck, was ist der Sinn, Sinn der
      Frage, begründen, ist das nötig, ist das wichtig, was verrät das, inwiefern hilft das
    `),
    numbers: list(`
      Zahlen, die Zahlen, zeig die Zahlen, zeigen Sie die Zahlen, welche Zahlen,
      woher kommen die Zahlen, woher kommt die Zahl, Messwerte zeigen, alle Messwerte, wie sicher,
      wie sicher ist das, wie sicher sind Sie, wie genau, wie genau ist das, Quelle, Quellen,
      Sollwert, Sollwerte, was ist zu erwarten, was sollte es sein, wie viel sollte es sein,
      wo gehen die Volt verloren, wo geht die Spannung verloren
    `),
    back: list(`
      zurück, geh zurück, gehen Sie zurück, einen Schritt zurück, Schritt zurück, eins zurück, eine
      Frage zurück, vorherige, vorherige Frage, vorige Frage, letzte Frage, rückgängig, rückgängig
      machen, retour, zurück zur Frage davor, die Frage davor, vorheriger Schritt, zurückgehen,
      zurückblättern, zurückspringen, nochmal zurück, wieder zurück, rückkehren, mach das
      rückgängig, letzten Schritt rückgängig, zurücksetzen auf vorher, vorhin nochmal, davor
      nochmal, umkehren
    `),
    repeat: list(`
      wiederholen, wiederhole, bitte wiederholen, Frage wiederholen, nochmal, nochmals, noch mal,
      noch einmal, bitte nochmal, sag das nochmal, sagen Sie das nochmal, wie bitte, hä, was war
      die Frage, wie war die Frage, was meinen Sie, wie meinen Sie das, wie ist das gemeint, nicht
      verstanden, verstehe ich nicht, häh, was war das, kapiere ich nicht, check ich nicht, versteh
      nur Bahnhof, bin verwirrt, frag nochmal, stell die Frage nochmal, einfacher bitte, nicht
      mitgekommen, nochmals lesen, lies nochmal vor
    `),
    person: list(`
      Mensch, einen Menschen, Person, eine Person, echte Person, echter Mensch, Mitarbeiter,
      Mitarbeiterin, mit einem Menschen sprechen, mit einem Menschen reden, mit jemandem sprechen,
      mit jemandem reden, mit einer Person sprechen, mit einer Person reden, mit einem Mitarbeiter
      sprechen, ich will einen Menschen, ich brauche einen Menschen, ich will mit jemandem reden,
      ich möchte mit jemandem sprechen, ich möchte mit einem Menschen sprechen, ruf mich an, rufen
      Sie mich an, Rückruf, bitte um Rückruf, verbinden Sie mich, Hotline, jemand Echtes, bist du
      ein Roboter, Sachbearbeiter, Berater, Kundendienst, Kundenservice, Telefonnummer, Rufnummer
      bitte, wen kann ich anrufen, möchte telefonieren, bitte zurückrufen, weiterverbinden,
      durchstellen, Vermittlung, Fachmann sprechen, Chef sprechen, Techniker ans Telefon,
      Pannendienst rufen, Pannenhelfer sprechen, Zentrale, kein Bot bitte
    `),
    stop: list(`
      stopp, stop, halt, abbrechen, Abbruch, aufhören, ich höre auf, hören wir auf, beenden, Ende,
      Schluss, Schluss jetzt, tschüss, ciao, auf Wiedersehen, auf Wiederschauen, Pause, später,
      später weiter, mache später weiter, ich gebe auf, gebe auf, mir reicht es, will nicht mehr,
      Gespräch beenden, Chat beenden, verlassen, mag nicht mehr, keine Lust mehr, genug jetzt, es
      reicht, lass mich in Ruhe, keine Fragen mehr, vergiss es, hat keinen Zweck mehr, lassen wir
      das, servus und tschüss, ich bin raus, wegklicken
    `),
    language: list(`
      Sprache, andere Sprache, Sprache wechseln, Sprache ändern, Sprache umstellen, fremde Sprache
    `),
  },
  retractions: list(`
    Quatsch, so ein Quatsch, das ist Quatsch, Blödsinn, so ein Blödsinn, Unsinn, das ist Unsinn,
    Schmarrn, stimmt nicht, das stimmt nicht, stimmt doch gar nicht, das war falsch, das ist
    falsch, falsch, falsch verstanden, da haben Sie mich falsch verstanden, Sie haben mich falsch
    verstanden, du hast mich falsch verstanden, Missverständnis, ein Missverständnis, das war ein
    Missverständnis, so war das nicht gemeint, das meinte ich nicht, das habe ich nicht gesagt, das
    hab ich nicht gesagt, habe ich nie gesagt, mein Fehler, Irrtum, das war ein Irrtum, aus
    Versehen, nichts dergleichen
  `),
  neverWas: list(`
    es gab nie, es gab keinen, es gab keine, es gab kein, gab keinen, gab keine, gab kein, gab nie,
    da war kein, da war keine, da war nie, es war kein, es war keine, war kein, war keine, war nie,
    war gar kein, war gar keine, hat nie, hatte nie, ich habe nie, ich habe nicht gesagt, habe
    nicht gesagt
  `),
  corrections: list(`
      war falsch, Korrektur, korrigiere, korrigieren, ich korrigiere, muss korrigieren, ich muss korrigieren,
      Berichtigung, ich meinte, meinte, ich meine, Antwort ändern, vertippt, habe mich vertippt,
      verschrieben, Tippfehler, mein Fehler, Irrtum, das stimmt nicht, sollte sein, sollte heißen,
      eigentlich, ich korrigiere, geirrt, mein Fehler, vertan, falsch gedrückt, falsche Taste
      erwischt, falsch geantwortet, falsche Antwort, will meine Antwort ändern, ich nehme es
      zurück, meinte was anderes, so war das nicht gemeint, habe es verwechselt,
      durcheinandergebracht, vergiss meine Antwort, das war falsch, berichtige
    `),
  earlier: ['war', 'waren', 'sollte sein', 'müsste sein', 'sollte heißen'],
  statements: [
    {
      set: { 'vehicle.nominal': 24 },
      said: list(`
        24 V Fahrzeug, 24 V System, 24 V Anlage, 24 V Bordnetz, 24 V Lkw, 24 V Laster, 24 V Bus,
        24 Volt Fahrzeug, 24 Volt System, 24 Volt Anlage, 24 Volt Bordnetz, 24 Volt Lkw,
        24 Volt Laster, 24 Volt Bus, Fahrzeug hat 24 V, Fahrzeug hat 24 Volt, Lkw hat 24 V,
        Lkw hat 24 Volt, Lkw mit 24 Volt, vierundzwanzig Volt Fahrzeug, vierundzwanzig Volt System
      `),
    },
    {
      set: { 'vehicle.nominal': 12 },
      said: list(`
        12 V Fahrzeug, 12 V System, 12 V Anlage, 12 V Bordnetz, 12 Volt Fahrzeug, 12 Volt System,
        12 Volt Anlage, 12 Volt Bordnetz, Fahrzeug hat 12 V, Fahrzeug hat 12 Volt,
        zwölf Volt Fahrzeug, zwölf Volt System
      `),
    },
    {
      set: { 'vehicle.fuel': 'diesel' },
      said: list(`
        Diesel, es ist ein Diesel, Dieselmotor, ein Dieselmotor, fährt mit Diesel, Dieselauto,
        Dieselfahrzeug
      `),
    },
    {
      set: { 'vehicle.fuel': 'petrol' },
      said: list(`
        Benzin, Benziner, es ist ein Benziner, Benzinmotor, ein Benzinmotor, fährt mit Benzin,
        Ottomotor
      `),
    },
    {
      set: { 'vehicle.transmission': 'automatic' },
      said: list(`
        Automatik, es ist eine Automatik, Automatikgetriebe, hat Automatik, Automatikauto
      `),
    },
    {
      set: { 'vehicle.transmission': 'manual' },
      said: list(`
        Schaltgetriebe, Handschaltung, Schalter, es ist ein Schalter, Schaltwagen,
        hat Schaltgetriebe, Gangschaltung
      `),
    },
    {
      set: { 'vehicle.ignition': 'button' },
      said: list(`
        Startknopf, hat Startknopf, hat einen Startknopf, Start per Knopf, startet auf Knopfdruck,
        Starttaste
      `),
    },
    {
      set: { 'vehicle.ignition': 'key' },
      said: ['Zündschlüssel', 'startet mit Schlüssel', 'Start mit Schlüssel', 'mit Zündschlüssel'],
    },
    {
      set: { 'meter.class': 'simple' },
      said: list(`
        einfaches Messgerät, ein einfaches Messgerät, billiges Messgerät, ein billiges Messgerät,
        mein Messgerät ist billig, billiges Multimeter, einfaches Multimeter,
        ein billiges Multimeter, billiges Voltmeter, Baumarktgerät
      `),
    },
    {
      set: { 'meter.class': 'fine' },
      said: list(`
        gutes Messgerät, ein gutes Messgerät, genaues Messgerät, präzises Messgerät,
        mein Messgerät ist genau, teures Messgerät, kalibriertes Messgerät, geeichtes Messgerät,
        gutes Multimeter, genaues Multimeter
      `),
    },
    {
      set: { 'vehicle.hybrid': 'full' },
      said: ['Hybrid', 'Vollhybrid', 'es ist ein Hybrid', 'ein Hybrid', 'Hybridauto'],
    },
  ],
  accuracy: {
    meter: ['messgerät', 'voltmeter', 'multimeter', 'dmm', 'spannungsmesser'],
    clamp: ['stromzange', 'zange', 'zangenamperemeter', 'amperezange', 'strommesszange'],
    percent: ['%', 'prozent', 'perzent'],
    counts: ['counts', 'count', 'messpunkte', 'anzeigepunkte', 'zählschritte'],
  },
  speaking: list(`
    sprechen, sprichst, sprecht, spreche, reden, redest, weiter, schreiben, schreibst, verstehe, kannst, auf, in, zu
  `),
  having: list(`
    habe, hab, haben, gefunden, geliehen, ausgeliehen, ausgeborgt, gekauft, mitgebracht, besorgt,
    dabei, jetzt da, da ist, hier ist, ist da, gibt es, angekommen, eingetroffen, kann benutzen,
    zur Verfügung
  `),
  kit: {
    voltmeter: ['Voltmeter', 'Multimeter', 'Messgerät', 'Spannungsmesser', 'Vielfachmessgerät'],
    'test-lamp': ['Prüflampe', 'Lampenprüfer', 'Spannungsprüfer'],
    'clamp-meter': ['Stromzange', 'Zangenamperemeter', 'Amperezange', 'Strommesszange'],
    'load-tester': ['Belastungstester', 'Lasttester', 'Belastungsprüfer'],
    'electronic-tester': ['Batterietester', 'elektronischer Tester', 'Leitwerttester'],
    'boost-source': list(`
      Starthilfekabel, Überbrückungskabel, Starterkabel, Startkabel, Starthilfegerät, Booster,
      Startbooster, Spenderauto, Spenderfahrzeug, Powerpack
    `),
    charger: ['Ladegerät', 'Batterieladegerät', 'Batterielader'],
    'code-reader': ['Auslesegerät', 'Diagnosegerät', 'Fehlercode-Lesegerät', 'OBD-Gerät', 'OBD'],
    'second-key': ['zweiter Schlüssel', 'zweiten Schlüssel', 'Zweitschlüssel', 'Ersatzschlüssel'],
    helper: ['Helfer', 'Helferin', 'jemand zum Helfen', 'zweite Person', 'Hilfe von jemandem'],
    'hand-tools': [
      'Werkzeug',
      'Handwerkzeug',
      'Werkzeugkiste',
      'Werkzeugkasten',
      'Schraubenschlüssel',
    ],
    'bench-tester': ['Prüfstand', 'Anlasserprüfstand', 'Starterprüfstand'],
  },
};
