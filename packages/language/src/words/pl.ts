import { list } from './list.ts';
import type { Words } from './words.ts';

/** The letni of "siedmioletni": of so many years. */
const ofYears = list(`
  letni, letnia, letnie, letniego, letniej, letnią, letnim, roczny, roczna, roczne, rocznego,
  latek, latka, latkiem
`);

/** Polish as it is typed at the roadside. */
export const plWords: Words = {
  spelling: {
    ampere: 'amper',
    // Without its ending "rano", in the morning, would be "ranny", hurt.
    // No minus: "plus minus 12".
    letters: [
      ['rano', 'ranek'],
      ['plus minus', 'okolo'],
    ],
    denyBefore: ['nie', 'brak'],
    joinsDecimals: true,
    unitsBehind: ofYears,
  },
  cardinals: {
    zero: 0,
    zerem: 0,
    jedynka: 1,
    dwójka: 2,
    trójka: 3,
    trzydziestka: 30,
    pięćdziesiątka: 50,
    czwórka: 4,
    piątka: 5,
    szóstka: 6,
    siódemka: 7,
    ósemka: 8,
    zerko: 0,
    zera: 0,
    jeden: 1,
    jedna: 1,
    jedno: 1,
    jednego: 1,
    jednej: 1,
    jednym: 1,
    półtora: 1.5,
    półtorej: 1.5,
    dwa: 2,
    dwie: 2,
    dwóch: 2,
    dwu: 2,
    trzy: 3,
    trzech: 3,
    cztery: 4,
    czterech: 4,
    pięć: 5,
    pięciu: 5,
    sześć: 6,
    sześciu: 6,
    siedem: 7,
    siedmiu: 7,
    osiem: 8,
    ośmiu: 8,
    dziewięć: 9,
    dziewięciu: 9,
    dziesięć: 10,
    dziesięciu: 10,
    jedenaście: 11,
    jedenastu: 11,
    dwanaście: 12,
    dziewiątka: 9,
    dziesiątka: 10,
    jedenastka: 11,
    dwunastka: 12,
    trzynastka: 13,
    dwunastu: 12,
    trzynaście: 13,
    trzynastu: 13,
    czternaście: 14,
    czternastu: 14,
    cztero: 4,
    pięcio: 5,
    sześcio: 6,
    siedmio: 7,
    ośmio: 8,
    dziewięcio: 9,
    dziesięcio: 10,
    jedenasto: 11,
    dwunasto: 12,
    piętnasto: 15,
    piętnaście: 15,
    piętnastu: 15,
    szesnaście: 16,
    szesnastu: 16,
    siedemnaście: 17,
    siedemnastu: 17,
    osiemnaście: 18,
    osiemnastu: 18,
    dziewiętnaście: 19,
    dziewiętnastu: 19,
    dwadzieścia: 20,
    dwajścia: 20,
    dwaścia: 20,
    trzyści: 30,
    dwudziestu: 20,
    trzydzieści: 30,
    czydzieści: 30,
    trzydziestu: 30,
    czterdzieści: 40,
    czterdziestu: 40,
    pięćdziesiąt: 50,
    pięćdziesięciu: 50,
    sześćdziesiąt: 60,
    sześćdziesięciu: 60,
    siedemdziesiąt: 70,
    siedemdziesięciu: 70,
    osiemdziesiąt: 80,
    osiemdziesięciu: 80,
    dziewięćdziesiąt: 90,
    dziewięćdziesięciu: 90,
    sto: 100,
    stu: 100,
    dwieście: 200,
    dwustu: 200,
    trzysta: 300,
    trzystu: 300,
    czterysta: 400,
    czterystu: 400,
    pięćset: 500,
    pińćset: 500,
    pińcet: 500,
    pińset: 500,
    pięciuset: 500,
    sześćset: 600,
    sześciuset: 600,
    siedemset: 700,
    siedmiuset: 700,
    osiemset: 800,
    ośmiuset: 800,
    dziewięćset: 900,
    dziewięciuset: 900,
  },
  scales: {
    tysiąc: 1000,
    tysiące: 1000,
    tysięcy: 1000,
    tysiąca: 1000,
    dekada: 10,
    dekadę: 10,
    setka: 100,
    setki: 100,
  },
  decimalZero: [],
  point: ['przecinek', 'kropka', 'koma'],
  joins: ['i', 'oraz'],
  // "a" is a conjunction, so it is ampere only where nothing follows it.
  articles: ['a'],
  fractions: {
    dziesiąta: 1 / 10,
    dziesiątą: 1 / 10,
    pół: 1 / 2,
    połowa: 1 / 2,
    połowę: 1 / 2,
    ćwierć: 1 / 4,
    dziesiątych: 1 / 10,
    dziesiąte: 1 / 10,
    czwarte: 1 / 4,
    czwarta: 1 / 4,
    dziesiątej: 1 / 10,
    setnej: 1 / 100,
    ćwierci: 1 / 4,
    połowy: 1 / 2,
    setna: 1 / 100,
    setnych: 1 / 100,
    setne: 1 / 100,
  },
  below: [
    'mrozu',
    'poniżej zera',
    'na minusie',
    'pod zerem',
    'pod kreską',
    'poniżej zero',
    'stopni mrozu',
  ],
  minus: ['minus', 'ujemne', 'mróz'],
  days: {
    back: { dzisiaj: 0, dziś: 0, 'dziś rano': 0, wczoraj: 1, przedwczoraj: 2 },
    times: list(`
      wczoraj, wczoraj wieczorem, przedwczoraj, dziś, dzisiaj, dziś rano, rano, w nocy, nocą, wieczorem, cały dzień
    `),
    day: list(`dzień, dni`),
    week: list(`tydzień, tygodnie, tygodni, tygodniu`),
    ago: list(`temu`),
    last: list(
      `zeszły, zeszłą, zeszłym, zeszłej, zeszłego, ostatni, ostatnią, ubiegły, ubiegłą, ubiegłym, ubiegłego, poprzednim, minionym`,
    ),
    seasons: list(
      `zima, zimą, zimę, zimy, zimie, lato, latem, wiosna, wiosną, wiosnę, jesień, jesienią, jesieni, Boże Narodzenie, Wielkanoc`,
    ),
    weekdays: { środę: 3, sobotę: 6, niedzielę: 0 },
  },
  ordinals: {
    pierwszy: 1,
    pierwsza: 1,
    pierwsze: 1,
    pierwszej: 1,
    drugi: 2,
    druga: 2,
    drugie: 2,
    drugiej: 2,
    trzeci: 3,
    trzecia: 3,
    trzecie: 3,
    trzeciej: 3,
    czwarty: 4,
    czwarta: 4,
    czwarte: 4,
    czwartej: 4,
    piąty: 5,
    piąta: 5,
    piąte: 5,
    piątej: 5,
    szósty: 6,
    szósta: 6,
    szóste: 6,
    szóstej: 6,
    siódmy: 7,
    siódma: 7,
    siódme: 7,
    siódmej: 7,
    ósmy: 8,
    ósma: 8,
    ósme: 8,
    ósmej: 8,
    dziewiąty: 9,
    dziewiąta: 9,
    dziewiąte: 9,
    dziewiątej: 9,
    dziesiąty: 10,
    dziesiąta: 10,
    dziesiątej: 10,
    jedenasty: 11,
    jedenasta: 11,
    jedenaste: 11,
    jedenastej: 11,
    dwunasty: 12,
    dwunasta: 12,
    dwunaste: 12,
    dwunastej: 12,
  },
  grouping: ' ',
  units: {
    V: list(`
      v, volt, volty, voltów, volta, wolt, wolty, woltów, wolta, woltach, v dc, vdc, woltów dc
    `),
    mV: list(`
      mv, mili, milli, miliwolt, miliwolty, miliwoltów, miliwolta, milivolt, milivolty, milivoltów, mili wolt,
      mili wolty, mili woltów
    `),
    A: list(`
      a, amp, amper, amper cca, amper en, amper sae, amper rozruchu, ampery, amperów, ampera, amperach, cca, a cca, a en, a sae, amperów cca,
      amperów en, a rozruchu
    `),
    kA: ['ka', 'kiloamper', 'kiloampery', 'kiloamperów', 'kiloampera'],
    mA: list(`
      ma, miliamper, miliampery, miliamperów, miliampera, mili amper, mili ampery, mili amperów
    `),
    'A.h': ['ah', 'amperogodzina', 'amperogodziny', 'amperogodzin', 'amperogodzinach'],
    Ohm: ['ω', 'om', 'omy', 'omów', 'oma', 'ohm', 'ohmy', 'ohmów'],
    mOhm: list(`
      mω, mohm, miliom, miliomy, miliomów, milioma, mili om, mili omy, mili omów
    `),
    Cel: list(`
      cel, °c, c, celsjusza, celsiusza, st c, stopni c, stopnie c, stopień c, stopni celsjusza,
      stopnie celsjusza, stopień celsjusza, stopnia celsjusza
    `),
    '[degF]': list(`
      °f, f, fahrenheita, st f, stopni f, stopni fahrenheita, stopnie fahrenheita
    `),
    'N.m': list(`
      nm, n m, niutonometr, niutonometry, niutonometrów, niutonometra, niuton metr, niuton metrów
    `),
    '[lbf_av].[ft_i]': ['lbf ft', 'lb ft', 'ft lb', 'ft lbs', 'ft lbf', 'funtostopa', 'funtostóp'],
    '[lbf_av].[in_i]': ['lbf in', 'lb in', 'in lb', 'in lbs', 'funtocal', 'funtocali'],
    'kgf.m': list(`
      kgf m, kg m, kgm, kilogramometr, kilogramometry, kilogramometrów
    `),
    ms: ['ms', 'milisekunda', 'milisekundy', 'milisekund'],
    s: ['s', 'sek', 'sekunda', 'sekundy', 'sekund', 'sekundę', 'sekundach'],
    min: ['min', 'minuta', 'minuty', 'minut', 'minutę', 'minutach'],
    h: ['h', 'godz', 'godzina', 'godziny', 'godzin', 'godzinę', 'godzinach'],
    d: ['dzień', 'dni', 'dnia', 'doba', 'doby'],
    wk: ['tydzień', 'tygodnie', 'tygodni', 'tygodnia'],
    mo: list(`
      msc, mies, miesiąc, miesiące, miesięcy, miesiąca
    `),
    a: [...list(`rok, roku, lata, lat, latek, latka, roczek, roków, zim, zimy`), ...ofYears],
    Hz: ['hz', 'herc', 'herce', 'herców', 'herca'],
    '/min': list(`
      rpm, obr min, obr na min, obroty, obrotów, obrotu, obrotów na minutę, obroty na minutę,
      obrotów min
    `),
    L: ['l', 'litr', 'litry', 'litrów', 'litra', 'litrach'],
    // No "w" alone: it is the preposition of "12,4 w spoczynku".
    W: ['wat', 'waty', 'watów', 'wata'],
    kW: ['kw', 'kilowat', 'kilowaty', 'kilowatów', 'kilowata'],
    bar: ['bar', 'bary', 'barów', 'bara'],
    kPa: ['kpa', 'kilopaskal', 'kilopaskale', 'kilopaskali'],
    '[psi]': ['psi'],
    '%': ['%', 'procent', 'procenta', 'proc'],
  },
  bareUnits: ['stopni', 'stopnie', 'stopień', 'stopnia', 'st', '°'],
  boundsOnly: list(`
    mniej niż, niżej niż, więcej niż, wyżej niż, poniżej, powyżej, ponad, przeszło, co najmniej,
    przynajmniej, najmniej, najwyżej, co najwyżej, maksymalnie, minimalnie, minimum, maksimum, nie
    więcej niż, nie mniej niż, niecałe, niecałych, niespełna, nawet nie
  `),
  nearly: list(`
    trochę, tuż, nieco, lekko, odrobinę, ciut, minimalnie, troszkę, tylko, zaraz
  `),
  vague: list(`
    parę, kilka, kilkanaście, z kawałkiem, z hakiem, i trochę, z groszem, z groszami, coś, przecinek coś, i coś, z czymś, z ogonkiem, i troszkę, z małym hakiem, i kawałek, z górką, z kawałeczkiem, z okładem, i ileś, i ciut, przecinek coś tam, z czymś tam, z ułamkiem, trochę więcej, ciut więcej
  `),
  besideFigures: list(`
    ok, okej,
    plus, to, lub, albo, czyli, na, w, we, z, ze, przy, podczas, gdy, kiedy, jak, po, przed, przez, od, do,
    za, dla, o, u, tu, tutaj, tam, dziś, dzisiaj, dokładnie, równo, stale, a, i, ale, potem, teraz,
    tylko, znowu, znów, jest, było, mam, wyszło, wychodzi, pokazuje, pokazał, pokazało, wskazuje,
    wskazuje mi, odczyt, wynik, miernik, multimetr, woltomierz, na mierniku, spadło, spada, spadł,
    skacze, trzyma, stoi, zmierzone, zmierzyłem, zmierzyłam, dziękuję, dzięki, proszę, razem, reszta,
    rano, wieczorem, równe, okrągłe, zatrzymało, na zewnątrz, na dworze, na polu, ma, wymienić, wymień, wymiana, doładować, słaby, lot, mini, maks, nic
  `),
  figureWords: {
    asideBefore: list(`
      pin, pinie, pinu, zacisk, zacisku, styk, styku, o, o godzinie, godzina, godz, na zakresie, zakres, zakresie, rocznik, cylinder, cela, w piku, szczyt, w szczycie, za, kosztował, kosztowała, pik, pik poboru, w pierwszej chwili, skoczyło do, ustawiony na, ustawiona na, ustawione na, nastawiony na, przełączony na, ustawiłem na, poziom, poziomie, piętro, piętrze, skacze na, skacze do, skacze pod, skoczyło pod, skoczyło na, podskoczyło do, skok do, skok na, wskoczyło na, gwarancja, gwarancję, gwarancji, gwarancja na, gwarancję na, gwarancja jest na, kabel, przewód
    `),
    asideBehind: list(`
      rano, wieczorem, po południu, w nocy, nad ranem, razy, raz, prób, próby, próba, próbach, cel, cele, cylindrów, cylindry, drzwi, zł, złotych, złote, euro, dolarów, pln, kilometrów, km, metrów, pomiarów, pomiary, osoby, kable, śruby, zakres, zakresie, godzinie, dc, prądu stałego, nocą, tej nocy, dziś w nocy, podejścia, podejść, podejściach, odczyty, odczytów, próbie, sekundzie, sekundzie testu, gwarancji, gwarancja, gwarancję, kwadrat, kwadratów, mm2, milimetrów, mm
    `),
    engine: list(`
      benzyna, diesel, silnik, silnika, litra, litrów, benzyniak, tdi, hdi, turbo, pojemność, pojemności
    `),
    instead: list(`
      nie czekaj, czekaj, chwila, chwilę, chwileczkę, chwilkę, sekundę, sorry, sory, przepraszam, znaczy, to znaczy, chodziło mi o, miało być, pomyłka, pomyliłem się, pomyliłam się, poprawka, ups, oj, źle, kurde, moment, wróć, źle spojrzałem, źle odczytałem, sorki, tfu, no, powiedzmy, dokładnie, dokładniej, niech będzie, a dokładnie, ściślej, a konkretnie, konkretnie, a raczej, poprawia
    `),
    settles: list(`
      wpisz, wpisujemy, zapisz, niech pan wpisze, dajmy
    `),
    again: list(`
      2 razy, najpierw, dwukrotnie, drugim razem, drugi raz, drugi pomiar, innym razem, który wpisać, który wziąć, która wartość, który wynik, który mam, którą mam, które mam, którą wziąć, które wziąć, który podać, którą podać, który dobry, który z nich, która z nich, co wpisać
    `),
    unsteady: list(
      `skacze, waha się, ciągle się zmienia, cały czas się zmienia, wciąż się zmienia, zmienia się cały, zmienia się ciągle, raz tak raz tak, lata między, pływa, waha, raz pokazuje`,
    ),
    undecided: list(
      `nie wiem które, nie wiem która, nie wiem który, nie wiem ktore, nie wiem ktora, które jest dobre, które podać, ktore podac, do wyboru, wybierz sobie, proszę wybrać`,
    ),
    between: list(`między, pomiędzy`),
    past: list(`
      wczoraj, wieczorem, wcześniej, przedtem, było, była, był, przedwczoraj, poprzednio, w zeszłym tygodniu, na początku, rano było, było wcześniej, były, dawniej, poprzednim razem, miał, miało, uprzednio, na start, na starcie, początkowo, miałem, miałam, a było, zaczęło od, zaczęło się od, zaczynało od, pierwszy raz, jak był nowy, nowy miał, mówiłem, mówiłam, powiedziałem, powiedziałam, napisałem, napisałam, poprzedni, poprzednia, stary, stara, przed
    `),
    present: list(`
      teraz, dziś, dzisiaj, obecnie, aktualnie, już, w tej chwili, na końcu, pod koniec, na koniec, w końcu, ostatecznie, finalnie, dobrze zmierzone, porządnie, na zewnątrz, na dworze
    `),
    expected: list(`
      powinno, powinien, powinna, powinno być, zamiast, spodziewałem się, spodziewałam się, normalnie, w miejsce, w porównaniu do, w porównaniu z, w stosunku do, zamiast tych, norma, norma to, powinny, granica, ma być, w normie, będzie, zwykle, zazwyczaj, instrukcja, według instrukcji, w instrukcji, w książce, zapowiadali, prognoza, zapowiedzieli
    `),
    felt: list(`
      odczuwalna, odczuwalnie, odczuwalne, odczuwalnej, na wietrze, przy wietrze, z wiatrem
    `),
    concludes: list(`
      czyli, więc, zatem, wychodzi, czyli jakieś
    `),
    changes: list(`
      spada, spadło, spadł, spadła, spadek, siada, siadło, siadł, leci, zleciało, opada, opadło, schodzi, zeszło, zjeżdża, zjechało, idzie, poszło, rośnie, wzrosło, podskoczyło, skoczyło, stabilizuje się na, ustabilizowało się na, ustaliło się na, zatrzymuje się na, zostaje na, staje na, trzyma się na, wraca na, przechodzi
    `),
    from: list(`
      z, ze
    `),
    until: [],
    barely: list(`niecałe, niecałych, niespełna`),
    moments: list(`
      jak, gdy, kiedy, podczas, przy, w trakcie, w czasie, podczas gdy
    `),
    after: list(`
      po, od, odkąd
    `),
    unread: list(`
      ol, o l, nic nie pokazuje, nie pokazuje nic, nic nie wyświetla, nie wyświetla nic, nic na wyświetlaczu, pusty wyświetlacz, wyświetlacz pusty, ekran pusty, pusty ekran, nie pokazuje żadnej wartości, brak odczytu, brak wskazania, nie ma odczytu, kreski, same kreski, ciągle skacze, cały czas skacze, nie stabilizuje się, nie ma żadnej liczby, żadnej liczby, nic nie mierzy, nie mierzy, przeciążenie, poza zakresem, miernik nie działa, nie wskazuje nic, nic nie wskazuje
    `),
    thousand: list(
      `k, kv, ka, kilo, kilometer, kilowolt, kilowolty, kilowoltów, kiloamper, kiloampera, kiloamperów`,
    ),
    display: list(`
      wyświetlacz, wyświetlaczu, ekran, ekranie, miernik, miernika, multimetr, woltomierz
    `),
    measured: list(`zmierzyłem, zmierzyłam, zmierzone, pomiar, pomierzyłem`),
    otherMeters: list(`
      areometr, areometrem, aerometr, aerometrem, gęstość, gęstości, kwas, kwasu, elektrolit, elektrolitu, kwasomierz
    `),
    label: list(`
      etykieta, etykieta mówi, etykiecie, etykiecie jest, etykiety, naklejka, naklejka mówi, naklejce, naklejce jest, naklejce stoi, znamionowy, znamionowo, znamionowym, tabliczka, tabliczce, nadruk, nominalnie, nominalny, nominalne, nominalnym, nominalnych, na obudowie, nadrukowane, na etykietce, napisane na akumulatorze, oznaczony, oznaczona, napis, na tabliczce, opisany, na etykiecie, nominał, napisane, jest napisane, na akumulatorze jest, na akumulatorze pisze, nominale, nominał, znamionowe, znamionowych, przy nominale, na baterii pisze, na akumulatorze stoi, na aku pisze, na aku jest
    `),
    outOf: list(`
      z, na
    `),
    above: list(`
      na plusie, powyżej zera, ciepła, plus
    `),
    less: list(`
      bez, minus, mniej
    `),
    oneBefore: list(`
      ma, od, po, przez, około, jakiś, jakieś, z, minął, prawie, chyba, będzie, to, cały, całego, pełny, czyli
    `),
    oneBehind: list(`
      temu, ma, będzie, minie, minął, wstecz
    `),
    cranking: list(`
      rozru, kręc, odpal, kluczyk, start, zapal, starci
    `),
    standing: list(`
      stał, stoi, stan, nierusz, nie jeźdz, post
    `),
    vehicle: list(`
      auto, samochód, wóz, bryka, fura, pojazd, ciężarówka, bus, dostawczak, autko, ciągnik, traktor, motor, kombi, sedan, hatchback, van, kamper, busik, furgon, osobówka, terenówka
    `),
    battery: list(`
      aku, akumulator, akumulatora, bateria, akum, akumlator, akumulatorek
    `),
    worse: list(`
      gorszy, gorsza, gorsze, najgorszy, najgorsza, najgorsze, większy, większa, większe, wyższy, wyższa, wyższe
    `),
    clock: list(`
      jest godzina, godzina, o godzinie, jest wpół do
    `),
    sides: list(`
      plus, plusie, plusem, plusowej, plusowa, plusowym, minus, minusie, minusem, minusowej, minusowa, minusowym, dodatni, dodatnim, dodatniej, ujemny, ujemnym, ujemnej, drugi, drugim, drugiej, druga, jednym, jednej, czerwony, czerwonym, czarny, czarnym, masa, masę, masą, masie
    `),
    difference: list(`
      różnica, różnicy, różnicę, różnią, się różnią, różnicą
    `),
    swapped: list(`
      odwrotnie, na odwrót, odwrócone, odwróciłem, odwróciłam, zamienione, zamieniłem, zamieniłam, zamienionymi, pomylone, pomyliłem, pomyliłam, odwrotna, odwrot, odwrót, odwróc, zamieni, pomyl, przestaw, na krzyż, źle podłącz, nie tak podłącz
    `),
    roughly: list(`
      około, koło, prawie, jakieś, mniej więcej, niemal, blisko, niecałe, niecałych, niespełna, z grubsza, gdzieś
    `),
    recovers: list(`
      wrac, wróc, powrot, znowu, znów, puszcz, puści, podnosi, odbij, odbił
    `),
    climbs: list(`
      idzie, wchodzi, przekracza, rośnie, wzrasta
    `),
    pair: list(`
      dwa akumulatory, oba akumulatory, na dwóch, szeregowo, w szeregu, w szereg, oba razem, dwóch akumulatorach, obu, oba, obydwa, obydwu, parze, para, dwa pod rząd, dwóch, dwa razem
    `),
    onto: list(`
      na, do
    `),
    round: list(`
      równe, równo, pełne, całe, okrągłe, dokładnie, równiutko, równych, pełnych, albo coś, czy coś
    `),
    ratedAt: list(`
      na akumulatorze, w akumulatorze, z akumulatora, na takim, to akumulator, na baterii, cewka na, przekaźnik na
    `),
    allOff: list(`
      wszystko wyłączone, wszystko powyłączane, wszystkim wyłączonym, wszystko zgaszone, wyłączonym wszystkim, zapłon wyłączony, wyłączonym zapłonie, silnik wyłączony, bez obciążenia, w spoczynku, na spoczynku, spoczynkowe, bez niczego, na postoju
    `),
  },
  negators: list(`
    nie, ni, nic, niczego, bez, brak, ani, żaden, żadna, żadne, żadnego, żadnej, żadnych, żadnym, żadną,
    nigdy, nikt, nikogo
  `),
  exceptives: {
    behind: list(`nie, nic, niczego`),
    between: list(`mam, mamy, ma, jest, tu, robi, więcej, innego`),
    words: list(`oprócz, prócz`),
  },
  asides: list(`
    nawiasem mówiąc, jakby co, jeśli to ważne, jeśli to pomoże, jeśli to coś da,
    jeśli to ma znaczenie, jeżeli to ważne, gwoli ścisłości, tak przy okazji, dla jasności,
    dla informacji, dodam że, zaznaczam że, powiedziałbym, powiedziałabym, rzekłbym
  `),
  likewise: ['też', 'także', 'również', 'tak samo', 'to samo', 'podobnie', 'tyż', 'i'],
  subjects: list(`tylko, jedynie, zaś`),
  exclaims: list(`
    lol, haha, hahaha, ha, o, oo, ach, ah, aha, wow, łał, hurra, uff, ojej, ups, hm, hmm, yyy, eee, ok, okej, dobra, no, no dobra, czekaj, czekajcie, chwila, moment, sorki, sorry, przepraszam, dzięki, dziękuję, hej, halo, tak, spoko, wszystko ok, jezu, jeju, kurczę, kurde, stop, nvm
  `),
  untried: list(`
    sam z siebie, sama z siebie, samo z siebie, samoczynnie, sam od siebie, ni z tego ni z
    owego, sam zapalił, sam odpalił, sam zaskoczył, samo odpaliło, nieważne, nieaktualne, już
    nieaktualne, zapomnij, zapomnijcie, proszę zapomnieć, już nie trzeba, nie trzeba, nie
    potrzeba, już nie potrzebuję, niepotrzebne, już niepotrzebne, zostaw, zostawcie, dajcie
    spokój, fałszywy alarm, odwołuję, odwołajcie, odwołaj, bez niczego, nic nie robiłem, nic nie
    robiłam, nic nie zrobiłem, nic nie ruszałem, nie ruszałem nic, zanim, nawet nie zdążyłem,
    nie zdążyłem, nie zdążyłam, jakimś cudem, cudem, cud, w międzyczasie, jak czekałem, nie wiem
    czemu, nie wiem jak, nie wiem dlaczego, problem rozwiązany, problem sam się rozwiązał,
    problem z głowy, po sprawie, sprawa załatwiona, po kłopocie, nie uwierzysz, nie uwierzy pan,
    stop, czekaj czekaj
  `),
  runsOn: list(`
    do, w, do mojego, do mojej, do swojego, w moim, mój, moja, moje, to, jest, zamiast, na, do auta na
  `),
  sayings: list(`
    na papierosa, papieroska, na dymka, zapalić sobie, idę zapalić, poszedłem zapalić, wyszedłem zapalić, dymi ze złości,
    dym ? nie, ogień ? nie, płomienie ? nie, wyciek ? nie, ciężarówka tutaj, ciężarówka tu, z uszu dymi, dymi z uszu, dymi mi z uszu, z uszu mi dymi, mi się z uszu dymi,
    krew mnie zalewa, pod korek, po korek, po korki, karetka transportowa,
    cały czas, straż pożarna z tej strony, tak między nami, między nami mówiąc
  `),
  price: list(`
    koszt, cena, cenę, rachunek, zapłac, ile wyniesie, ile bierze
  `),
  rails: list(`pociąg, torach, tory, torowisku, przejeździe kolejowym, przejazd kolejowy, tramwaj`),
  whether: ['czy'],
  alternatives: list(`albo, lub, czy, bądź`),
  turns: list(
    `raz, czasem, czasami, innym razem, za drugim razem, niekiedy, chwilami, jednym razem`,
  ),
  perhaps: list(`może, być może, możliwe że, chyba`),
  clauseBreaks: list(`
    ale, lecz, a, i, oraz, potem, następnie, kiedy, gdy, jeśli, jeżeli, bo, ponieważ, choć, chociaż,
    natomiast, zanim
  `),
  fillers: list(`
    się, to, jest, są, był, była, było, były, być, będzie, ma, mi, mnie, mu, mój, moja, moje, mojego,
    mojej, ten, ta, te, tego, tej, tym, tu, tutaj, tam, w, we, na, z, ze, do, od, po, przy, u, o, za,
    dla, jak, jakby, jakoś, jakiś, jakaś, jakieś, jakichś, że, by, czy, co, no, więc, też,
    także, już, teraz, tylko, bardzo, naprawdę, całkiem, dość, trochę, chyba, może, możliwe, raczej,
    myślę, wydaje, wygląda, około, koło, circa, mniej, więcej, prawie, niemal, gdzieś, proszę,
    przepraszam, cześć, witam, halo, dzięki, dziękuję, hmm, właśnie, prostu, nawet, wtedy, on, ona,
    ono, go, ją, jego, jej, ja, my, nas, nam, jestem, jesteśmy, pan, pani, auto, auta, autem, aucie, samochód, samochodu, samochodem, samochodzie, wóz, wozu, fura, furę,
    fury, bryka, brykę
  `),
  courtesies: list(`
    dziękuję, dzięki, proszę, panie, pani, pan, stary, kolego, szefie, oj, ach, no, ależ, kurczę, dziękuje, człowieku
  `),
  endings: list(`
    aniem, eniem, ania, anie, aniu, enia, enie, eniu, iego, iemu, ego, emu, ami, ymi, imi, iej, iem,
    ich, ych, isz, ysz, esz, imy, ymy, emy, aja, em, ej, ie, ia, iu, im, ym, am, ac, ic, yc, ow, a,
    e, i, o, u, y
  `),
  optionWords: list(`
    opcja, opcję, opcje, numer, nr, odpowiedź, punkt, pozycja, pozycję, wybór, wybieram, ta, ten, to,
    jest, i, oraz, chyba, raczej, myślę, że
  `),
  talk: {
    yes: list(`
      przeczytałem wszystko, przeczytałam wszystko, przeczytałam to, wszystko przeczytane, jest tu bezpiecznie, tu jest bezpiecznie, jestem bezpieczny, uważam,
      tak, t, ta, no, no tak, tak tak, tak jest, owszem, jasne, pewnie, oczywiście, zgadza się,
      prawda, potwierdzam, dobrze, ok, okej, okay, mhm, aha, rozumiem, zrozumiano, zrozumiałem,
      zrozumiałam, przeczytane, przeczytałem, przeczytałam, tak przeczytałem, tak przeczytałam,
      można dalej, dalej, idziemy dalej, jedziemy dalej, kontynuuj, dawaj, bezpiecznie, jest
      bezpiecznie, tak jest bezpiecznie, tak bezpiecznie, w porządku,
      dokładnie, spoko, no jasne, no pewnie, jak najbardziej, tia, ano, oczywiście że tak, zgoda, pewno, no raczej, naturalnie, rzecz jasna, jo, niech będzie,
      można, dobra, mam przeczytane, przeczytałem to, zrozumiane, jasna sprawa, tak zrobię, zrobię tak, wiem, będę uważać
    `),
    no: list(`
      nie, n, nie nie, no nie, wcale nie, skąd, skądże, nieprawda, jeszcze nie, nie jest
      bezpiecznie, niebezpiecznie, nie bezpiecznie,
      nie dziękuję, raczej nie, absolutnie nie, w żadnym razie, ależ skąd, niestety nie, oczywiście że nie, na pewno nie, bynajmniej, nie bardzo, nope, niy, nikiej, no co ty
    `),
    done: list(`
      gotowe, gotowy, gotowa, zrobione, zrobiłem, zrobiłam, już, już zrobione, już gotowe, skończone, naprawiłem, naprawiłam, wymieniłem, wymieniłam, założyłem, założyłam, zamontowałem, zamontowałam, naprawione, wymienione, zamontowane, założone, złożone, wykonane, praca wykonana,
      skończyłem, skończyłam, zakończone, odczekane, odczekałem, odczekałam, czekałem, czekałam,
      poczekałem, poczekałam, minęło, czas minął, minął czas, już po czasie, po czasie
    `),
    over: list(`
      już po wszystkim, po wszystkim, już bezpiecznie, jest bezpiecznie, jest już bezpiecznie,
      jesteśmy bezpieczni, jesteśmy już bezpieczni, jestem bezpieczny, jestem bezpieczna,
      bezpieczni, zagrożenie minęło, minęło, ugaszone, ugaszony, ugasili, pożar ugaszony, zgaszone,
      zgasło, zgasł, znów zgasł, znowu zgasł, zniknął, zniknęło, zniknęła, ustało, ustał,
      przestało, przestał, przestała, opanowane, sytuacja opanowana, usunięte, usunięty, wyciek
      usunięty, zabezpieczone, zabezpieczony, już dobrze, już w porządku, możemy kontynuować, już
      nie ma, już nie dymi, nie dymi, nie ma dymu, już nie cieknie, nie cieknie, nie pali się, nie
      ma ognia, bezpiecznie, tu jest bezpiecznie, jest tu bezpiecznie, wszyscy bezpieczni, wszyscy
      są bezpieczni, wszyscy jesteśmy bezpieczni, jesteśmy wszyscy bezpieczni, nic nam nie grozi,
      nikomu nic nie grozi, zagrożenia już nie ma, straż mówi że jest bezpiecznie, straż
      potwierdziła że jest bezpiecznie, pomoc przejęła poszkodowanego, karetka już się zajęła
    `),
    'false-alarm': list(`
      fałszywy alarm, to był fałszywy alarm, to fałszywy alarm, nigdy nie było zagrożenia, nie było
      zagrożenia, nie było żadnego zagrożenia, zagrożenia nie było, to nie był żaden alarm
    `),
    'dont-know': list(`
      nie wiem, nie wiem tego, nie mam pojęcia, pojęcia nie mam, zielonego pojęcia nie mam, bez
      pojęcia, nie jestem pewien, nie jestem pewna, nie mam pewności, trudno powiedzieć, ciężko
      powiedzieć, ciężko stwierdzić, nie potrafię powiedzieć, nie umiem powiedzieć, nie pamiętam,
      zapomniałem, zapomniałam, kto wie, skąd mam wiedzieć, bo ja wiem, a bo ja wiem, bo to ja wiem, nieznane, nie znam się, nie orientuję
      się, nie da się ocenić, nie mogę ocenić, nie mogę powiedzieć, bladego pojęcia, trudno
      stwierdzić, cholera wie, diabli wiedzą, licho wie, nie kojarzę, nie wiadomo, nie rozróżniam,
      nie zwróciłem uwagi, wypadło mi z głowy, waham się
    `),
    cannot: list(`
      nie wyłączę go już, już go nie wyłączę, nie będę go wyłączać, nie będę gasić, nie zgaszę go, nie wyłączę
      silnika, nie będę gasić silnika, nie chcę go gasić, nie chcę go wyłączać, zostawiam na chodzie, zostawiam
      włączony silnik, niech pracuje, zostawiam odpalony,
      nie mogę, nie mogę tego zrobić, nie da się, nie dam rady, nie daję rady, nie potrafię, nie
      umiem, nie umiem tego zrobić, niemożliwe, niewykonalne, nie mogę dosięgnąć, nie dosięgnę, nie
      sięgam, nie mogę znaleźć, nie znalazłem, nie znalazłam, nie znajduję, nie widzę, nie widzę
      tego, nie widać, nie mam, nie mam tego, nie mam czegoś takiego, nie mam czym, nie mam czym
      zmierzyć, nie mam jak, nie mam takiego, nie mam dostępu, brak dostępu, nie występuje, nie
      dotyczy, pomiń, pomiń to, pomijam, pominąć, pomińmy, opuść, opuszczam, zbyt niebezpieczne, za
      niebezpieczne, nie zrobię tego, nie zrobię, wolę nie, nie chcę tego robić, odpuszczam, nie ma
      czegoś takiego, w moim aucie tego brak, omiń to pytanie, przeskocz, to ponad moje siły, nie
      podejmę się
    `),
    why: list(`
      dlaczego, dlaczego to, dlaczego pytasz, czemu, czemu to, po co, po co to, a po co, skąd to
      pytanie, w jakim celu, z jakiego powodu, jaki powód, do czego to potrzebne, do czego to
      służy, co to znaczy, co to oznacza, co by to znaczyło, co to da, wyjaśnij, proszę wyjaśnić,
      wytłumacz, proszę wytłumaczyć, jak to, co to zmieni, co to ma do rzeczy, co to wnosi, na co
      to komu, a na co to, skąd takie pytanie, skąd ten pomysł, uzasadnij, o co w tym chodzi, co z
      tego wynika, co to pokaże, a to ważne
    `),
    numbers: list(`
      liczby, pokaż liczby, proszę pokazać liczby, jakie liczby, dane, pokaż dane, pomiary, pokaż
      pomiary, skąd te liczby, skąd ta liczba, na ile to pewne, jak pewne, jaka pewność, jak
      dokładne, jak dokładnie, jaka dokładność, źródła, jakie źródła, ile powinno być, jaka powinna
      być wartość, jaka jest norma, gdzie giną wolty, gdzie ginie napięcie, gdzie są straty
    `),
    back: list(`
      wstecz, wróć, wróćmy, cofnij, cofnij się, cofnąć, powrót, poprzednie, poprzednie pytanie,
      wróć do poprzedniego, poprzedni krok, ostatnie pytanie, do tyłu, krok wstecz, krok w tył,
      cofka, chcę wcześniejsze, wracamy, pokaż wcześniejsze pytanie, wcześniejsze pytanie, przedtem
      było inne pytanie, chcę wrócić, chcę się cofnąć, o jedno pytanie wcześniej, anuluj ostatnią
      odpowiedź, cofnij odpowiedź, cofnij ostatnie, undo, przejdź wstecz, wycofaj ostatnie, wróć o
      krok
    `),
    repeat: list(`
      powtórz, powtórz to, powtórz pytanie, proszę powtórzyć, jeszcze raz, powiedz jeszcze raz,
      słucham, że co, nie rozumiem, nie rozumiem pytania, nie zrozumiałem, nie zrozumiałam, jakie
      było pytanie, co było pytaniem, co masz na myśli, co pan ma na myśli, możesz powtórzyć, nie
      dosłyszałem, nie usłyszałam, o co pytasz, o co chodzi, inaczej proszę, powiedz inaczej,
      powiedz prościej, prościej, zgubiłem się, jak brzmiało pytanie, co mam zrobić
    `),
    person: list(`
      człowiek, z człowiekiem, osoba, konsultant, konsultantka, dyspozytor, operator, żywy
      człowiek, prawdziwy człowiek, ktoś żywy, połącz z człowiekiem, proszę połączyć z człowiekiem,
      połącz z konsultantem, proszę połączyć z konsultantem, rozmowa z człowiekiem, chcę rozmawiać
      z człowiekiem, chcę rozmawiać z konsultantem, chciałbym rozmawiać z człowiekiem, chciałabym
      rozmawiać z człowiekiem, porozmawiać z człowiekiem, rozmawiać z kimś, potrzebuję człowieka,
      potrzebuję konsultanta, pomoc człowieka, proszę zadzwonić, proszę do mnie zadzwonić,
      zadzwońcie, zadzwońcie do mnie, oddzwońcie, proszę oddzwonić, połącz mnie z operatorem, chcę
      dyspozytora, pracownik, prawdziwa osoba, infolinia, proszę o telefon, podajcie numer
      telefonu, chcę pogadać z człowiekiem, chcę mówić z człowiekiem, nie chcę gadać z automatem,
      nie chcę bota, przyślijcie fachowca, z kimś kompetentnym, przełącz do człowieka, daj kogoś do
      telefonu
    `),
    stop: list(`
      stop, koniec, kończę, kończymy, skończ, zakończ, chcę skończyć, chcę zakończyć, wyjdź,
      wyjście, przerwij, przerywam, pauza, dosyć, dość tego, wystarczy, anuluj, rezygnuję, poddaję
      się, pa, do widzenia, na razie, później, wrócę później, potem wrócę, przestań, koniec
      rozmowy, koniec na dziś, zakończ rozmowę, dość, mam dość, starczy, anuluj wszystko, zamknij,
      żegnam, zostaw mnie, daj spokój, daj mi spokój, dam sobie spokój
    `),
    language: list(`
      język, zmień język, zmiana języka, zmienić język, inny język, w innym języku, przełącz język
    `),
  },
  retractions: list(`
    bzdura, bzdury, to bzdura, nonsens, głupoty, nieprawda, to nieprawda, to nie tak, to było źle,
    źle, to był błąd, źle mnie zrozumiano, źle mnie zrozumiałeś, źle zrozumiane, źle zrozumiałeś,
    źle zrozumiałaś, nieporozumienie, to nieporozumienie, nie to miałem na myśli, nie to miałam na
    myśli, nie o to chodziło, tego nie powiedziałem, tego nie powiedziałam, nic takiego nie
    powiedziałem, nic takiego nie napisałem, mój błąd, pomyłka, to pomyłka, pomyliłem się,
    pomyliłam się, przez pomyłkę, nic takiego
  `),
  neverWas: list(`
    nie było, nigdy nie było, nie był to, to nie był, to nie była, to nie było, nie mówiłem, nie
    mówiłam, nie pisałem, nie pisałam
  `),
  corrections: list(`
      to było źle, to był błąd, było błędnie,
      poprawka, poprawiam, popraw, chcę poprawić, korekta, sprostowanie, pomyłka, pomyliłem się,
      pomyliłam się, pomyliłem, pomyliłam, przejęzyczyłem się, przejęzyczyłam się, miało być,
      powinno być, chodziło mi o, miałem na myśli, miałam na myśli, zmień, zmień to, zmieniam, było
      źle, podałem źle, podałam źle, mój błąd, literówka, właściwie, jednak, a jednak, nie to
      miałem na myśli, miałem na myśli co innego, pomyliłem się, mój błąd, źle napisałem, źle
      powiedziałem, źle podałem, źle kliknąłem, błędnie odpowiedziałem, przejęzyczyłem się,
      przejęzyczenie, prostuję, muszę poprawić, zmieniam odpowiedź, zmieniam zdanie, zmień
      odpowiedź, chcę zmienić odpowiedź, to nie tak jak pisałem, odwołuję, cofam co powiedziałem,
      źle spojrzałem, źle odczytałem, źle zrozumiałem pytanie, wprowadziłem w błąd
    `),
  earlier: ['było', 'był', 'była', 'były', 'powinno być', 'miało być', 'powinien być'],
  statements: [
    {
      set: { 'vehicle.nominal': 24 },
      said: list(`
        pojazd 24 V, instalacja 24 V, ciężarówka 24 V, tir 24 V, autobus 24 V, ciągnik 24 V, ciągnik siodłowy 24 V, siodłowy 24 V, pojazd na
        24 V, pojazd 24 wolty, instalacja 24 wolty, instalacja 24 woltowa, ciężarówka 24 wolty, pojazd
        dwadzieścia cztery wolty, instalacja dwadzieścia cztery wolty, pojazd ma 24 V, ciężarówka ma
        24 V, mam 24 V w instalacji
      `),
    },
    {
      set: { 'vehicle.nominal': 12 },
      said: list(`
        pojazd 12 V, instalacja 12 V, pojazd 12 woltów, instalacja 12 woltów,
        instalacja 12 woltowa, pojazd dwanaście woltów, instalacja dwanaście woltów, pojazd ma 12 V
      `),
    },
    {
      set: { 'vehicle.fuel': 'diesel' },
      said: list(`
        diesel, to diesel, silnik diesla, silnik wysokoprężny, na ropę, jeździ na ropę, ropniak, auto
        z dieslem, mam diesla, dizel
      `),
    },
    {
      set: { 'vehicle.fuel': 'petrol' },
      said: list(`
        benzyna, to benzyna, benzynowy, silnik benzynowy, na benzynę, jeździ na benzynę, benzyniak,
        auto benzynowe, mam benzynę
      `),
    },
    {
      set: { 'vehicle.transmission': 'automatic' },
      said: [
        'automat',
        'to automat',
        'mam automat',
        'skrzynia automatyczna',
        'automatyczna skrzynia biegów',
      ],
    },
    {
      set: { 'vehicle.transmission': 'manual' },
      said: [
        'manual',
        'skrzynia ręczna',
        'skrzynia manualna',
        'ręczna skrzynia biegów',
        'to manual',
        'mam manual',
        'mam ręczną skrzynię',
      ],
    },
    {
      set: { 'vehicle.ignition': 'button' },
      said: list(`
        przycisk start, rozruch przyciskiem, odpalany przyciskiem, odpalany z guzika, ma przycisk
        startu, ma guzik startu
      `),
    },
    {
      set: { 'vehicle.ignition': 'key' },
      said: ['rozruch kluczykiem', 'odpalany z kluczyka', 'odpalany kluczykiem', 'ma stacyjkę'],
    },
    {
      set: { 'meter.class': 'simple' },
      said: list(`
        prosty miernik, tani miernik, mam tani miernik, mój miernik jest tani, tani multimetr, prosty
        multimetr, tani woltomierz, miernik z marketu, zwykły miernik
      `),
    },
    {
      set: { 'meter.class': 'fine' },
      said: list(`
        dobry miernik, dokładny miernik, precyzyjny miernik, mam dokładny miernik, mój miernik jest
        dokładny, drogi miernik, miernik kalibrowany, miernik wzorcowany, dobry multimetr, dokładny
        multimetr
      `),
    },
    {
      set: { 'vehicle.hybrid': 'full' },
      said: [
        'hybryda',
        'pełna hybryda',
        'to hybryda',
        'mam hybrydę',
        'auto hybrydowe',
        'samochód hybrydowy',
      ],
    },
  ],
  accuracy: {
    meter: ['miernik', 'miernika', 'multimetr', 'multimetru', 'woltomierz', 'woltomierza', 'dmm'],
    clamp: ['cęgi', 'cęgów', 'cęgowy', 'cęgówka', 'cęgówki'],
    percent: ['%', 'procent', 'procenta', 'proc'],
    counts: ['cyfry', 'cyfr', 'cyfra', 'dgt', 'digit', 'digits', 'jednostki', 'jednostek'],
  },
  speaking: list(`
    mówi, mówisz, mówić, mówią, rozmawiać, rozmawiasz, pisać, piszesz, rozumiem, rozumiesz, przejść, po, na, w
  `),
  having: list(`
    mam, jest, są, już mam, teraz mam, mam tu, mam ze sobą, znalazłem, znalazłam, pożyczyłem, pożyczyłam,
    kupiłem, kupiłam, przyniosłem, przyniosłam, przywiozłem, przywiozłam, przywiózł, przywiozła,
    dostałem, dostałam, załatwiłem, załatwiłam, przyjechał, przyjechała, przyszedł, przyszła, dotarł,
    dotarła, mogę użyć, dysponuję
  `),
  kit: {
    voltmeter: list(`
      woltomierz, woltomierza, miernik, miernika, mierniczek, multimetr, multimetru, miernik napięcia
    `),
    'test-lamp': list(`
      próbówka, próbówkę, próbówki, próbówka z żarówką, próbnik z żarówką, lampka kontrolna, lampka
      próbna
    `),
    'clamp-meter': list(`
      miernik cęgowy, cęgi, cęgi prądowe, cęgówka, cęgówkę, amperomierz cęgowy
    `),
    'load-tester': list(`
      tester obciążeniowy, opornica, opornicę, widełki, próbnik widełkowy, obciążarka
    `),
    'electronic-tester': list(`
      tester elektroniczny, elektroniczny tester, tester akumulatora, tester akumulatorów, tester cca
    `),
    'boost-source': list(`
      kable rozruchowe, kable, kabli rozruchowych, przewody rozruchowe, booster, boostera, jump
      starter, starter rozruchowy, powerbank rozruchowy, urządzenie rozruchowe, kable do pożyczania prądu
    `),
    charger: list(`
      prostownik, prostownika, ładowarka, ładowarkę, ładowarka akumulatora, ładowarka do akumulatora
    `),
    'code-reader': list(`
      czytnik kodów, czytnik błędów, czytnik kodów błędów, skaner, skanera, interfejs diagnostyczny,
      tester diagnostyczny, komputer diagnostyczny
    `),
    'second-key': list(`
      drugi kluczyk, drugi klucz, drugi pilot, zapasowy kluczyk, zapasowy pilot, inny kluczyk
    `),
    helper: list(`
      pomocnik, pomocnika, ktoś do pomocy, kogoś do pomocy, kolega do pomocy, kolegę do pomocy, druga
      osoba, drugą osobę, sąsiad do pomocy
    `),
    'hand-tools': list(`
      narzędzia, narzędzia ręczne, narzędzi, klucze płaskie, klucze nasadowe, zestaw kluczy, skrzynka
      z narzędziami, skrzynkę z narzędziami
    `),
    'bench-tester': [
      'stanowisko do badania rozruszników',
      'stół probierczy',
      'stanowisko probiercze',
    ],
  },
};
