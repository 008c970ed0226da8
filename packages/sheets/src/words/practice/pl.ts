import type { PracticeWords } from './practice.ts';

/** What bounds go by, in Polish. */
export const pl: PracticeWords = {
  '0.2 V above a full battery (TM 5-3805-262-20 para 5-9: 12.6 V and above; TM 9-6115-730-24 WP 0050: agm 12.8 to 13.0 V)':
    '0,2 V powyżej pełnego akumulatora (TM 5-3805-262-20 para 5-9: od 12,6 V; TM 9-6115-730-24 WP 0050: AGM od 12,8 do 13,0 V)',
  'only what charges keeps a battery above 13.4 to 13.8 V':
    'tylko to, co ładuje, utrzymuje akumulator powyżej 13,4–13,8 V',
  'nearly empty; TM 9-6140-200-14: a discharged battery can freeze at -12 °C':
    'prawie pusty; TM 9-6140-200-14: rozładowany akumulator może zamarznąć przy -12 °C',
  'all lamps and windows on: near 12 V is good, below 11 V is not':
    'wszystkie światła i ogrzewanie szyb włączone: blisko 12 V jest dobrze, poniżej 11 V nie',
  'where the load-test table of the battery trade ends, -18 °C':
    'gdzie kończy się branżowa tabela próby obciążenia, -18 °C',
  '80 % of the label': '80 % wartości z etykiety',
  "a battery with one cell of six down; parts supplier's battery warranty guidance: 10.5 V after charging is a shorted cell":
    'akumulator z jednym z sześciu ogniw niesprawnym; wytyczne gwarancyjne dostawcy: 10,5 V po ładowaniu to zwarte ogniwo',
  'two batteries of one age and charge': 'dwa akumulatory w tym samym wieku i stanie naładowania',
  'twice the resistance of a battery that is just worn':
    'dwukrotność oporu akumulatora ledwie zużytego',
  'two degrees above the -7 °C at which electrolyte of a gravity of 1.100 freezes (Army correspondence subcourse OD1002, lesson 2)':
    'dwa stopnie powyżej -7 °C, przy których zamarza elektrolit o gęstości 1,100 (Army correspondence subcourse OD1002, lesson 2)',
  'batteries are seldom worn before 2 years and often from 5 years on':
    'akumulatory rzadko zużywają się przed 2 latami, a często od 5 lat',
  'one joint; TM 10-3930-671-24: any reading above 0 is poor':
    'jedno połączenie; TM 10-3930-671-24: każdy odczyt powyżej 0 jest zły',
  '0.2 to 0.3 V in the handbooks': 'od 0,2 do 0,3 V w podręcznikach',
  '0.5 to 0.8 of the battery voltage': 'od 0,5 do 0,8 napięcia akumulatora',
  '0.5 to 1 V below the rested battery: nothing heavy flows there':
    'od 0,5 do 1 V poniżej akumulatora w spoczynku: nie płynie tam duży prąd',
  'above a hold-in winding alone (TM 5-2420-230-24-2 p. 13-33: 13 to 19 A)':
    'powyżej samego uzwojenia trzymającego (TM 5-2420-230-24-2 p. 13-33: od 13 do 19 A)',
  'normal cranking current by fuel and displacement':
    'normalny prąd rozruchu według paliwa i pojemności',
  '1.6 times the normal cranking current by fuel and displacement':
    '1,6-krotność normalnego prądu rozruchu według paliwa i pojemności',
  'no more than a full battery with its surface charge':
    'nie więcej niż pełny akumulator z ładunkiem powierzchniowym',
  '14.8 V; in frost TM 9-6115-464-12, Table 4-5, halved from 24 V':
    '14,8 V; na mrozie TM 9-6115-464-12, Table 4-5, połowa wartości dla 24 V',
  'frost, from which batteries fail more often': 'mróz, od którego akumulatory zawodzą częściej',
  'from it on cold hinders neither battery nor engine':
    'od tej wartości zimno nie szkodzi ani akumulatorowi, ani silnikowi',
  'plus reads below minus': 'plus wskazuje poniżej minusa',
  'batteries are judged between freezing and 45 °C': 'akumulatory ocenia się między zerem a 45 °C',
  'what the surface charge leaves in one to three days':
    'tyle ubywa z ładunkiem powierzchniowym w jeden do trzech dni',
  'more than a clamp meter shows of nothing': 'więcej, niż miernik cęgowy pokazuje bez prądu',
  'starters draw 50 A and more running free': 'rozruszniki na biegu luzem pobierają 50 A i więcej',
  '2500 to 3500 rpm geared, 6000 rpm and more direct':
    'od 2500 do 3500 obr/min z przekładnią, 6000 obr/min i więcej bezpośrednio',
  'nuts on copper or brass studs': 'nakrętki na śrubach z miedzi lub mosiądzu',
  'M6 or M8 bolts of clamps on tapered battery posts':
    'śruby M6 lub M8 zacisków na stożkowych biegunach',
  'what meter and leads pick up, far below any battery':
    'tyle zbierają miernik i przewody, dużo poniżej każdego akumulatora',
  'a battery charged to three quarters or more and rested':
    'akumulator naładowany w trzech czwartych lub więcej i wypoczęty',
  'a sound battery gives most of its label':
    'sprawny akumulator daje większość wartości z etykiety',
  'a battery that took a full charge, two hours after it':
    'akumulator po pełnym ładowaniu, dwie godziny później',
  'two batteries of one age': 'dwa akumulatory w tym samym wieku',
  'the rested battery less what its wires and switches take':
    'akumulator w spoczynku minus to, co zabierają przewody i łączniki',
  'cranking-circuit model of a sound vehicle: battery by its label, charge, age and temperature, usual cables, starter and engine':
    'model obwodu rozruchu sprawnego pojazdu: akumulator według etykiety, naładowania, wieku i temperatury, zwykłe przewody, rozrusznik i silnik',
  'usual resistance of the sound part times the measured current':
    'zwykły opór sprawnej części razy zmierzony prąd',
  'T = K·F·d with 75 % of the proof load of ISO 898-1 (from memory) and K from an engineering article on tightening torque, T = K·F·d':
    'T = K·F·d z 75 % obciążenia próbnego według ISO 898-1 (z pamięci) i K z artykułu technicznego o momencie dokręcania',
  "the maker's figure for this part": 'wartość producenta dla tej części',
};
