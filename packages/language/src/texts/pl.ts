/** The general texts in Polish: everything that is said whatever the flow. */
export const pl = {
  word: {
    danger: 'NIEBEZPIECZEŃSTWO',
    warning: 'OSTRZEŻENIE',
    caution: 'PRZESTROGA',
    notice: 'NOTYFIKACJA',
  },
  unit: {
    rpm: '{{figure}} obr/min',
    bare: '{{figure}}',
    any: 'liczba',
    anyIn: 'liczba ({{unit}})',
  },
  confirm: {
    ask_one:
      'Czy to ostrzeżenie zostało przeczytane i można bezpiecznie iść dalej? Proszę napisać „tak” albo „nie mogę”.',
    ask_few:
      'Czy te {{count}} ostrzeżenia zostały przeczytane i można bezpiecznie iść dalej? Proszę napisać „tak” albo „nie mogę”.',
    ask_many:
      'Czy tych {{count}} ostrzeżeń zostało przeczytanych i można bezpiecznie iść dalej? Proszę napisać „tak” albo „nie mogę”.',
    ask_other:
      'Czy te ostrzeżenia ({{count}}) zostały przeczytane i można bezpiecznie iść dalej? Proszę napisać „tak” albo „nie mogę”.',
  },
  question: {
    again: 'Jeszcze raz: {{ask}}',
    mentioned: 'Już podano: {{list}}. {{ask}}',
    remembered: 'Tylko z pamięci, nic teraz nie robiąc: {{ask}}',
    probes: 'Czerwona sonda: {{red}}; czarna sonda: {{black}}.',
    done: 'gotowe',
    lasts: 'Czas trwania: około {{time}}.',
  },
  key: {
    confirm: 'Tak, jest bezpiecznie',
    cannot: 'Nie mogę',
    dontKnow: 'Nie wiem',
    why: 'Dlaczego?',
    take: 'To wszystko',
    done: 'Zrobione',
    over: 'Już po wszystkim',
    noDanger: 'Nie, nic takiego',
    pickFirst:
      'Najpierw proszę wybrać co najmniej jedną odpowiedź albo tę, która mówi, że żadna nie pasuje.',
    oldKey: 'Ten przycisk należy do wcześniejszego pytania. Jesteśmy tutaj:',
    noPrice:
      'Nie przyjęto ceny. Podaje się ją za poleceniem jako zwykłą liczbę, na przykład 119,90, tam gdzie część jest przyjmowana na warunkach sklepu. Bez niej nie podaje się żadnej kwoty.',
    onlyText:
      'Tutaj można odczytać tylko tekst, bez zdjęć i nagrań. Proszę napisać to w kilku słowach.',
    begin: 'Zacznij nową sprawę',
    back: 'Wstecz',
    unsure: 'Nie wiem, czy moja ostatnia wiadomość dotarła. Jesteśmy tutaj:',
    oldEdit:
      'Nie wiem, którą odpowiedź zmienia ta edycja. Proszę napisać właściwą odpowiedź w nowej wiadomości zaczynającej się od „poprawka”.',
    tooFast:
      'To więcej, niż można przyjąć naraz, więc ostatnia wiadomość nie została przyjęta. Proszę odczekać pół minuty i wysłać ją jeszcze raz.',
    readFirst:
      'To zostało napisane, zanim można było przeczytać to ostrzeżenie. Proszę najpierw je przeczytać:',
    timeUp: 'Czas minął.',
    summary: 'Podsumowanie, do przekazania dalej',
    help: 'Proszę dotknąć odpowiedzi albo napisać ją własnymi słowami, także kilka rzeczy naraz: „12,4 V, kręci wolno”. Zawsze można napisać „dlaczego”, „wstecz”, „nie wiem”, „nie mogę” albo „poprawka: …”. Nazwa języka zmienia język rozmowy. Jeśli jest dym, wyciek paliwa albo ktoś jest w niebezpieczeństwie, proszę napisać to od razu.',
    commandStart: 'Zacznij albo idź dalej',
    commandAgain: 'Powtórz pytanie',
    commandNew: 'Zacznij nową sprawę',
    commandStop: 'Odłóż sprawę',
    commandHelp: 'Co można tu zrobić',
  },
  vehicle: {
    taken:
      'Sprawa pojazdu jest z dnia {{day}}. Liczy się, jeśli to pojazd tego klienta, a część sprzedano przed tym dniem. W przeciwnym razie należy ją poprawić: „poprawka”, a potem co mówi pojazd.',
    before:
      'Ta sprawa jest z dnia {{day}}, nie późniejsza niż sprzedaż z {{sold}}: mówi, na jakiej podstawie kupiono część, a o samej części nic. Nic nie zostało zmienione.',
    otherVolts:
      'Ta sprawa dotyczy pojazdu {{found}} V, a część jest na {{part}} V. Nie jest tego klienta i została pominięta.',
    damaged:
      'Litery kodu są błędne albo ich brakuje. Przepisz go jeszcze raz z kartki. Nic nie zostało zmienione.',
    tooNew: 'Ten kod zapisała nowsza wersja. Nic nie zostało zmienione.',
    otherFlow:
      'To kod sprawy innego rodzaju. Oczekiwano sprawy rozruchu. Nic nie zostało zmienione.',
    elsewhere: 'To wskazuje na coś innego: {{what}}.',
    notGood: 'Nie jest dobre: {{what}}.',
    reading: '{{name}} {{figure}} ({{what}})',
    missing: 'Aby świadczyło to przeciw części, brakuje jeszcze: {{what}}.',
    claim:
      'Przeciw części może świadczyć tylko to, że rozrusznik kręci wolno albo wcale; klient mówi co innego albo nic.',
    charging: 'Samo ładowanie nigdy nie świadczy przeciw akumulatorowi.',
    byHand: 'Zrozumiano jako pomiary z pojazdu: {{what}}.',
    byHandCounts:
      'Liczą się, jeśli podczas pomiaru część była w pojeździe. W przeciwnym razie należy poprawić: „poprawka”, a potem co mówi pojazd.',
  },
  wait: {
    until:
      'Czas oczekiwania przed następnym krokiem: {{time}}. Następny krok: {{name}}. Jeśli czas już minął, proszę napisać „gotowe”.',
  },
  reading: {
    unjudged:
      '{{figure}}: zapisano. Bez dalszych danych o tym pojeździe nie da się powiedzieć, co to znaczy.',
    plain: '{{figure}}: {{means}}',
    likely: '{{figure}}: {{share}}. To prawdopodobne, ale nie pewne.',
    borderline:
      '{{figure}}: zbyt blisko granicy, żeby rozstrzygnąć. {{shares}}. Odtąd bierzemy pod uwagę obie możliwości.',
    between: 'Zbyt blisko granicy: {{bands}}.',
    share: '{{share}} na „{{label}}”',
    repeat: 'Proszę odczytać jeszcze raz, przy czystym i pewnym styku, do ostatniej cyfry.',
    settles: 'Co może rozstrzygnąć: {{name}}.',
    expected: 'W tym pojeździe, gdy wszystko jest sprawne, oczekiwane: od {{low}} do {{high}}.',
  },
  numbers: {
    none: 'Jak dotąd nie ma żadnego odczytu z miernika.',
    reading: '{{name}}: {{figure}} ± {{spread}}',
    shares: 'Wynika z tego: {{shares}}.',
    share: '{{label}} {{share}}',
    losses: 'Gdzie giną wolty',
    loss: '{{part}}: {{loss}} ± {{spread}}, {{share}} wszystkich znalezionych strat',
    lossResistance:
      '{{part}}: {{loss}} ± {{spread}}, {{resistance}}, {{share}} wszystkich znalezionych strat',
    atMotor: 'Do silnika rozrusznika dociera {{volts}}.',
    battery: 'Wewnątrz akumulatora',
    positive: 'Strona plus',
    ground: 'Strona masy',
    contacts: 'Styki elektromagnesu',
  },
  noted: {
    answer: '{{name}}: {{answer}}.',
    notKnown: '{{name}}: nie wiadomo.',
  },
  ranking: {
    heading_one: 'Co pasuje najlepiej',
    heading_few: '{{count}} przyczyny, które pasują najlepiej',
    heading_many: '{{count}} przyczyn, które pasują najlepiej',
    heading_other: 'Przyczyny, które pasują najlepiej: {{count}}',
  },
  why: {
    none: 'Od wyniku sprawdzenia „{{name}}” zależy, co trzeba zrobić dalej.',
    outcome: 'Jeśli odpowiedź brzmi „{{label}}”, najbardziej prawdopodobne: {{faults}}.',
    nothing: 'Jeśli odpowiedź brzmi „{{label}}”, nic to nie mówi o usterce.',
    fault: '{{name}} ({{share}})',
    bound: 'Granica przy {{figure}}: {{source}}.',
    zone: 'Granica między {{low}} a {{high}}: {{source}}.',
    expected: 'Oczekiwane, gdy wszystko jest sprawne: od {{low}} do {{high}}, {{source}}.',
    worth:
      'Teraz, bo najwięcej mówi w stosunku do czasu. Czas trwania: {{minutes}}. Przewidywana oszczędność pracy i pomyłek wobec rozstrzygnięcia już teraz: {{saves}}.',
    proves: 'Teraz, żeby dowieść tego, co i tak jest prawdopodobne. Czas trwania: {{minutes}}.',
    goesOn: 'Jeśli odpowiedź brzmi „{{label}}”: pytania toczą się dalej.',
    decides: 'Jeśli odpowiedź brzmi „{{label}}”: {{decision}}.',
  },
  weights: {
    heading:
      'Co przemawia za i przeciw: {{name}} (10 punktów: dziesięć razy bardziej prawdopodobne)',
    finding: '{{name}}: {{answer}}',
    known: 'Co wiadomo o pojeździe, miejscu i pogodzie',
    for: '+{{weight}}  {{finding}}',
    against: '-{{weight}}  {{finding}}',
    otherwise: '{{text}}. Bez tego na pierwszym miejscu byłoby: {{other}}',
  },
  verdict: {
    title: 'Przyczyna: {{name}}',
    titleLikely: 'Najbardziej prawdopodobna przyczyna: {{name}}',
    titleOpen: 'Jeszcze nierozstrzygnięte, na pierwszym miejscu: {{name}}',
    proved: 'Dowiedzione pomiarem.',
    likely: 'Prawdopodobne, niedowiedzione: {{share}} przy tym, co teraz wiadomo.',
    likelySettle:
      'Prawdopodobne, niedowiedzione: {{share}} przy tym, co teraz wiadomo. Rozstrzygnie to: {{checks}}.',
    open: 'Otwarte: żadna usterka się nie wyróżnia. {{ranking}}. Dalej powinien szukać ktoś z lepszym wyposażeniem.',
    rests: 'Na czym się to opiera',
    finding: '{{name}}: {{answer}}',
    restsOnShares:
      'Żadne pojedyncze ustalenie tego nie dowodzi. Jak dotąd najlepiej pasuje: {{ranking}}.',
    do: 'Co zrobić',
    waitSafe: 'Proszę czekać w bezpiecznym miejscu, z dala od ruchu, za barierą, jeśli jest.',
    waitWork:
      'Tutaj proszę nic nie robić przy pojeździe, nawet pod maską: to praca dla tych, którzy przyjadą z pomocą.',
    waitSent: 'Pomoc jest wysyłana. Proszę mieć telefon przy sobie.',
    waitCall:
      'Pomoc musi przyjechać na miejsce. Jeśli nikt jej jeszcze nie wezwał, proszę wezwać ją teraz i podać, gdzie to jest: droga, kierunek, najbliższy słupek.',
    also: 'Co jeszcze jest niesprawne i do naprawy w drugiej kolejności',
    alsoText: '{{name}}. Najlepiej pasuje jedno i drugie naraz ({{share}}).',
    send: 'Kto powinien przyjechać',
    roots: 'Dlaczego do tego doszło',
    rootsLikely: 'Skąd mogło się to wziąć',
    licensed: 'Kto musi to wykonać',
    licensedText:
      'To praca dla warsztatu z uprawnieniami lub specjalistycznego. Najważniejsze są miejscowe przepisy i zasady wykonywania prac przez uprawnione osoby.',
    change: 'Co by to zmieniło',
    settle: '{{name}}.',
    settleLacks: '{{name}}. Potrzebne: {{kit}}.',
    nothingSettles: 'Tylko ustalenie sprzeczne z powyższymi.',
    stops: 'Czego nie wolno robić',
  },
  decision: {
    do: 'Co teraz zrobić',
    again: 'Potem proszę odpowiedzieć jeszcze raz: {{names}}. Cała reszta zostaje bez zmian.',
    rests: 'Na czym opiera się wynik',
    borderline: 'zbyt blisko granicy',
    unanswered: 'nie dało się ustalić',
    change: 'Co zmieniłoby wynik',
    changed: '{{name}}: przy odpowiedzi „{{answers}}” wynik byłby: {{decision}}.',
    measure: 'Zmierzyć w pojeździe, zanim zostanie założona następna część',
    rights: 'Prawa klienta',
    law: 'Miejscowe prawo konsumenckie ma pierwszeństwo: nic, co tu powiedziano, nie odbiera praw, które ono daje.',
    short: '{{decision}} ({{reason}})',
  },
  refund: {
    heading: 'Co zostanie zwrócone',
    price: '{{amount}}: cena zapłacona za część',
    restocking: '{{amount}}: potrącenie za ponowne przyjęcie do magazynu',
    restockingShare: '{{amount}}: potrącenie za ponowne przyjęcie do magazynu, {{share}} ceny',
    usedShare: 'Potrącenie {{amount}}: po {{months}} mies. używania zwracane jest {{share}} ceny',
    usedMonths:
      'Potrącenie {{amount}}: po {{months}} mies. używania pozostało {{left}} z {{of}} mies.',
    deposit: '{{amount}}: kaucja za starą część',
    depositOpen:
      'Kaucja za starą część: nie wiadomo, czy jest jeszcze zatrzymana; jeśli tak, zostanie doliczona',
    total: '{{amount}} razem',
    lacks: 'Nie można podać kwoty; brakuje: {{what}}',
  },
  lacking: {
    terms: 'warunków sklepu',
    warranty: 'warunków gwarancji na tę część',
    price: 'zapłaconej ceny',
    day: 'dnia sprzedaży',
  },
  interrupt: {
    heading: '{{name}}.',
    return:
      'Gdy można bezpiecznie iść dalej, proszę napisać „już po wszystkim”; wrócimy do miejsca, w którym przerwaliśmy.',
    prove: 'Teraz sprawdzimy, czy wszystko jest w porządku.',
  },
  setAside: {
    checks_one: 'Odłożone, bo po poprawce już nieaktualne: {{names}}.',
    checks_few: 'Odłożone, bo po poprawce {{count}} odpowiedzi są już nieaktualne: {{names}}.',
    checks_many: 'Odłożone, bo po poprawce {{count}} odpowiedzi jest już nieaktualnych: {{names}}.',
    checks_other: 'Odłożone odpowiedzi ({{count}}), po poprawce już nieaktualne: {{names}}.',
  },
  tell: {
    person:
      'Od teraz przejmuje człowiek. Wszystkie dotychczasowe odpowiedzi są dla niego zachowane.',
    stopped: 'Tu przerywamy. Nic nie przepada: można wrócić w dowolnej chwili.',
    resumed: 'Dobrze. Wracamy do miejsca, w którym przerwaliśmy.',
    withdrawn: 'Wycofane. Nic nie jest już z tego powodu zabronione.',
    returned: 'Wracamy do poprzedniego pytania.',
    restored: 'Poprawka cofnięta: wszystko jest jak przed nią.',
    learned: 'Odtąd bierzemy to pod uwagę.',
    doubt:
      'Dotychczasowe odpowiedzi słabo do siebie pasują, a najmniej ta: {{name}}. Proszę sprawdzić jeszcze raz; jeśli była prawidłowa, proszę ją powtórzyć.',
    checkAgainAny: 'Warto sprawdzić jeszcze raz.',
    checkAgain: 'Warto sprawdzić jeszcze raz: {{name}}.',
  },
  done: {
    'proved-repaired': 'Gotowe: pojazd odpala, a pomiary dowodzą, że naprawa się udała.',
    unproved: 'Gotowe, ale niedowiedzione.',
    lacks: '{{end}} Do dowodu brakuje jeszcze: {{checks}}.',
    'still-failing':
      'Nadal nie odpala, więc usterka nie jest jeszcze znaleziona. Dalej powinien szukać technik.',
    'handed-over':
      'Odtąd zajmie się tym człowiek. Pokaż mu lub wyślij to, co ustalono, żeby nikt nie zaczynał od zera.',
    ended: 'Ta sprawa jest zamknięta. Bezpiecznej drogi.',
    decided:
      'Taka jest decyzja przy tym, co teraz wiadomo. To, co okaże się później, można podać w każdej chwili i zostanie wtedy wzięte pod uwagę.',
  },
  refused: {
    'unknown-check': 'Nie ma tu sprawdzenia o nazwie „{{given}}”. {{possible}}',
    'unknown-choice': '„{{given}}” nie jest jedną z odpowiedzi. {{possible}}',
    'unknown-unit': '„{{given}}” to nie liczba albo ma nieznaną tu jednostkę. {{possible}}',
    'wrong-unit': '„{{given}}” ma jednostkę, która tu nie pasuje: {{name}}. {{possible}}',
    'not-a-number': '„{{given}}” nie jest liczbą. {{possible}}',
    implausible: '{{given}} nie może być prawidłowe: {{name}}, {{range}}. {{help}}',
    'wrong-load':
      'Obciążono prądem {{load}}. Połowa z {{rating}} na etykiecie to {{half}}: proszę to ustawić i obciążyć jeszcze raz.',
    'no-such-day':
      'W kalendarzu nie ma dnia „{{given}}”. Proszę podać rok, miesiąc i dzień, na przykład 2026-01-31 ({{name}}), albo jedną z odpowiedzi. {{possible}}',
    'day-to-come':
      'Dzień „{{given}}” jeszcze nie nadszedł, więc to nie może się zgadzać: {{name}}. Proszę podać dzień, na przykład 2026-01-31. {{possible}}',
    'day-long-ago':
      'Dzień „{{given}}” był zbyt dawno, więc to nie może się zgadzać: {{name}}. Proszę spojrzeć na rok. Proszę podać dzień, na przykład 2026-01-31. {{possible}}',
    'no-terms':
      'Warunki tego sklepu nie są tu znane, więc nie wiadomo, co oznacza {{given}}: {{name}}. Proszę wybrać, co pasuje. {{possible}}',
    'one-choice': '{{name}}: prawdziwa jest tylko jedna odpowiedź. {{possible}}',
    'not-this-kind': '„{{given}}” nie jest odpowiedzią na to: {{name}}. {{possible}}',
    'not-answered-yet': '{{name}}: nie ma jeszcze odpowiedzi, więc nie ma czego poprawiać.',
    'unknown-interrupt': '„{{given}}” nie jest tu znane jako zagrożenie. {{possible}}',
    'unknown-context':
      '„{{given}}”: czegoś takiego nie zapisujemy o pojeździe, osobie ani miejscu. {{possible}}',
    'nothing-to-confirm': 'W tej chwili nie ma nic do potwierdzenia.',
    'nothing-to-resume': 'W tej chwili nie ma do czego wracać.',
    'resume-first':
      'Najpierw to, co najważniejsze: gdy można bezpiecznie iść dalej, proszę napisać „już po wszystkim”, a jeśli zagrożenia nigdy nie było – „fałszywy alarm”.',
    'nothing-before': 'To jest pierwsze pytanie; wcześniejszego nie ma.',
    'too-early':
      'Na to jest za wcześnie: {{name}}. To przychodzi po diagnozie, w osobnej wiadomości.',
    closed: 'Ta sprawa jest zamknięta. Żeby iść dalej, proszę otworzyć nową.',
    'not-an-input': 'Tego nie dało się odczytać. {{possible}}',
    'clock-back':
      'Zegar tego urządzenia cofnął się. Proszę ustawić go prawidłowo i spróbować ponownie.',
    range: 'zakres od {{low}} do {{high}}',
    noRange: 'żaden miernik tyle tam nie pokazuje',
    likely: 'Czy chodziło o {{figure}}?',
    likelyNominal:
      'Czy chodziło o {{figure}}? Jeśli to pojazd 24 V, proszę napisać „pojazd 24 V” i podać wartość jeszcze raz.',
    nominal: 'Jeśli to pojazd 24 V, proszę napisać „pojazd 24 V” i podać wartość jeszcze raz.',
    readAgain: 'Proszę odczytać jeszcze raz.',
    possible: 'Możliwe: {{list}}.',
    plain: 'Proszę spróbować jeszcze raz albo napisać „dlaczego”, „nie wiem” lub „nie mogę”.',
    thisCheck: 'to sprawdzenie',
  },
  unclear: {
    empty: 'Nic nie zostało napisane. {{possible}}',
    'too-long': 'To było za długie. Proszę napisać to w jednym lub dwóch krótkich zdaniach.',
    'unknown-choice': '„{{given}}” nie jest jedną z odpowiedzi. {{possible}}',
    'one-choice':
      'Prawdziwa jest tu tylko jedna odpowiedź, a „{{given}}” wymienia więcej. {{possible}}',
    'not-a-number': 'W „{{given}}” nie ma liczby, którą można odczytać. {{possible}}',
    'not-exact': '„{{given}}” podaje tylko granicę. Proszę podać samą wartość. {{possible}}',
    'two-numbers':
      'W „{{given}}” jest więcej niż jedna liczba na jeden odczyt. Proszę podać jedną. {{possible}}',
    'unknown-unit': '„{{given}}” to nie liczba albo ma nieznaną tu jednostkę. {{possible}}',
    'which-check': 'Nie wiadomo, do czego należy {{given}}, więc nic nie zapisano. {{possible}}',
    'nothing-to-confirm':
      'W tej chwili nie ma pytania, na które można odpowiedzieć „tak” lub „nie”. {{possible}}',
    'not-confirmed':
      'Gdy można bezpiecznie iść dalej, proszę napisać „tak”, a jeśli nie, „nie mogę”.',
    'not-done': 'Gdy będzie gotowe, proszę napisać „gotowe”, a jeśli się nie da, „nie mogę”.',
    'not-a-day':
      '„{{given}}” nie da się odczytać jako dnia. Proszę podać rok, miesiąc i dzień, na przykład 2026-01-31. {{possible}}',
    waiting: 'Czas oczekiwania jeszcze trwa. Gdy minie, proszę napisać „gotowe”.',
    'not-over':
      'Gdy można bezpiecznie iść dalej, proszę napisać „już po wszystkim”, a jeśli zagrożenia nigdy nie było – „fałszywy alarm”.',
    closed: 'Ta sprawa jest zamknięta. Żeby iść dalej, proszę otworzyć nową.',
    'which-language': 'Dostępne są te języki: {{possible}}. Proszę podać nazwę wybranego.',
    'not-understood': 'Nie udało się zrozumieć: „{{given}}”. {{possible}}',
    possible: 'Możliwe: {{list}}.',
    plain: 'Można też napisać „dlaczego”, „nie wiem” lub „nie mogę”.',
  },
  offers: {
    ask: 'Nie jest całkiem jasne, o co chodzi: {{list}}?',
    askOne: 'Czy chodzi o {{list}}? Proszę napisać „tak” albo ująć to inaczej.',
    one: '„{{label}}” ({{name}})',
    askOf: 'Nie jest całkiem jasne, o co chodzi ({{name}}): {{list}}?',
    answer: '„{{label}}”',
    danger:
      'Najpierw, dla bezpieczeństwa: czy chodzi o to – „{{label}}”? Proszę napisać „tak” albo „nie”.',
  },
  source: {
    published: 'opublikowane',
    reported: 'opublikowane, za innym tekstem',
    'from memory': 'z pamięci, niesprawdzone',
    'common practice': 'powszechna praktyka, bez źródła',
    computed: 'obliczone',
    text: '{{founded}} ({{text}})',
  },
  drawing: {
    reading: '{{name}}: {{figure}}',
    expected: 'oczekiwane: od {{low}} do {{high}}',
    was: 'przedtem: {{share}}',
    share: '{{name}}: {{share}}, przedtem {{before}}',
    circuit: 'Obwód rozruchu',
    circuitShows:
      'Gruby przewód biegnie od akumulatora przez bezpiecznik główny do rozrusznika, drugi od silnika z powrotem do akumulatora. Cienkie przewody biegną od stacyjki do następnego czujnika i do przekaźnika oraz od bezpiecznika rozruchu przez przekaźnik do elektromagnesu.',
    probes: 'Gdzie przyłożyć sondy miernika',
    clamp: 'Jak trzymać miernik cęgowy',
    clampRight:
      'Dobrze: cęgi na przewodzie minusowym, ze wszystkimi przewodami, które idą do tego bieguna.',
    clampWrong: 'Źle: plus i minus razem. Miernik nie pokazuje prawie nic.',
    places: 'Gdzie są części',
    placesShow:
      'Widok z góry. Każdy pojazd jest inny: akumulator może być także w bagażniku albo pod siedzeniem.',
    red: 'czerwona',
    black: 'czarna',
    suspect: 'podejrzane: {{name}}',
    found: 'Zmierzone dotąd',
    front: 'przód',
    first: '1.',
    second: '2.',
    battery: 'akumulator',
    mainFuse: 'bezpiecznik główny',
    positiveCable: 'przewód plusowy',
    groundCable: 'przewód masowy',
    starter: 'rozrusznik',
    solenoid: 'elektro\u00admagnes',
    engine: 'silnik',
    gearbox: 'skrzynia biegów',
    relay: 'przekaźnik rozrusznika',
    starterFuse: 'bezpiecznik rozruchu',
    ignitionSwitch: 'stacyjka',
    startButton: 'przycisk rozruchu',
    selectorSwitch: 'czujnik P/N',
    clutchSwitch: 'czujnik sprzęgła',
    isolator: 'wyłącznik akumulatorów',
    fuseBox: 'skrzynka bezpieczników',
  },
} as const;
