import type { PracticeWords } from './practice.ts';

/** What bounds go by, in French. */
export const fr: PracticeWords = {
  '0.2 V above a full battery (TM 5-3805-262-20 para 5-9: 12.6 V and above; TM 9-6115-730-24 WP 0050: agm 12.8 to 13.0 V)':
    '0,2 V au-dessus d’une batterie pleine (TM 5-3805-262-20 para 5-9 : 12,6 V et plus ; TM 9-6115-730-24 WP 0050 : AGM 12,8 à 13,0 V)',
  'only what charges keeps a battery above 13.4 to 13.8 V':
    'seul ce qui charge tient une batterie au-dessus de 13,4 à 13,8 V',
  'nearly empty; TM 9-6140-200-14: a discharged battery can freeze at -12 °C':
    'presque vide ; TM 9-6140-200-14 : une batterie déchargée peut geler à -12 °C',
  'all lamps and windows on: near 12 V is good, below 11 V is not':
    'tous feux et dégivrages allumés : près de 12 V c’est bon, sous 11 V non',
  'where the load-test table of the battery trade ends, -18 °C':
    'là où s’arrête le tableau d’essai en charge du métier, -18 °C',
  '80 % of the label': '80 % de l’étiquette',
  "a battery with one cell of six down; parts supplier's battery warranty guidance: 10.5 V after charging is a shorted cell":
    'une batterie dont un élément sur six est mort ; guide de garantie d’un fournisseur : 10,5 V après charge, c’est un élément en court-circuit',
  'two batteries of one age and charge': 'deux batteries de même âge et de même charge',
  'twice the resistance of a battery that is just worn':
    'le double de la résistance d’une batterie tout juste usée',
  'two degrees above the -7 °C at which electrolyte of a gravity of 1.100 freezes (Army correspondence subcourse OD1002, lesson 2)':
    'deux degrés au-dessus des -7 °C auxquels gèle un électrolyte de densité 1,100 (Army correspondence subcourse OD1002, lesson 2)',
  'batteries are seldom worn before 2 years and often from 5 years on':
    'les batteries sont rarement usées avant 2 ans et souvent à partir de 5',
  'one joint; TM 10-3930-671-24: any reading above 0 is poor':
    'une jonction ; TM 10-3930-671-24 : toute mesure au-dessus de 0 est mauvaise',
  '0.2 to 0.3 V in the handbooks': '0,2 à 0,3 V dans les manuels',
  '0.5 to 0.8 of the battery voltage': '0,5 à 0,8 de la tension de batterie',
  '0.5 to 1 V below the rested battery: nothing heavy flows there':
    '0,5 à 1 V sous la batterie au repos : il n’y passe rien de fort',
  'above a hold-in winding alone (TM 5-2420-230-24-2 p. 13-33: 13 to 19 A)':
    'au-dessus d’un enroulement de maintien seul (TM 5-2420-230-24-2 p. 13-33 : 13 à 19 A)',
  'normal cranking current by fuel and displacement':
    'courant de démarrage normal selon carburant et cylindrée',
  '1.6 times the normal cranking current by fuel and displacement':
    '1,6 fois le courant de démarrage normal selon carburant et cylindrée',
  'no more than a full battery with its surface charge':
    'pas plus qu’une batterie pleine avec sa charge de surface',
  '14.8 V; in frost TM 9-6115-464-12, Table 4-5, halved from 24 V':
    '14,8 V ; par gel TM 9-6115-464-12, Table 4-5, moitié de 24 V',
  'frost, from which batteries fail more often':
    'gel, à partir duquel les batteries lâchent plus souvent',
  'from it on cold hinders neither battery nor engine':
    'à partir de là le froid ne gêne ni batterie ni moteur',
  'plus reads below minus': 'le plus se lit sous le moins',
  'batteries are judged between freezing and 45 °C': 'les batteries se jugent entre zéro et 45 °C',
  'what the surface charge leaves in one to three days':
    'ce que perd la charge de surface en un à trois jours',
  'more than a clamp meter shows of nothing': 'plus qu’une pince n’affiche sans courant',
  'starters draw 50 A and more running free': 'à vide un démarreur prend 50 A et plus',
  '2500 to 3500 rpm geared, 6000 rpm and more direct':
    '2500 à 3500 tr/min à réducteur, 6000 tr/min et plus en direct',
  'nuts on copper or brass studs': 'écrous sur goujons de cuivre ou de laiton',
  'M6 or M8 bolts of clamps on tapered battery posts': 'vis M6 ou M8 de cosses sur bornes coniques',
  'what meter and leads pick up, far below any battery':
    'ce que captent l’appareil et ses fils, loin sous toute batterie',
  'a battery charged to three quarters or more and rested':
    'une batterie chargée aux trois quarts ou plus et reposée',
  'a sound battery gives most of its label': 'une bonne batterie donne presque toute son étiquette',
  'a battery that took a full charge, two hours after it':
    'une batterie qui a pris une charge complète, deux heures après',
  'two batteries of one age': 'deux batteries du même âge',
  'the rested battery less what its wires and switches take':
    'la batterie au repos moins ce que prennent fils et contacts',
  'cranking-circuit model of a sound vehicle: battery by its label, charge, age and temperature, usual cables, starter and engine':
    'modèle du circuit de démarrage d’un véhicule sain : batterie selon étiquette, charge, âge et température, câbles, démarreur et moteur usuels',
  'usual resistance of the sound part times the measured current':
    'résistance usuelle de la pièce saine fois le courant mesuré',
  'T = K·F·d with 75 % of the proof load of ISO 898-1 (from memory) and K from an engineering article on tightening torque, T = K·F·d':
    'T = K·F·d avec 75 % de la charge d’épreuve d’ISO 898-1 (de mémoire) et K d’un article technique sur le couple de serrage',
  "the maker's figure for this part": 'le chiffre du fabricant pour cette pièce',
};
