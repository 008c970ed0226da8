import type { PracticeWords } from './practice.ts';

/** What bounds go by, in German. */
export const de: PracticeWords = {
  '0.2 V above a full battery (TM 5-3805-262-20 para 5-9: 12.6 V and above; TM 9-6115-730-24 WP 0050: agm 12.8 to 13.0 V)':
    '0,2 V über einer vollen Batterie (TM 5-3805-262-20 para 5-9: ab 12,6 V; TM 9-6115-730-24 WP 0050: AGM 12,8 bis 13,0 V)',
  'only what charges keeps a battery above 13.4 to 13.8 V':
    'nur was lädt, hält eine Batterie über 13,4 bis 13,8 V',
  'nearly empty; TM 9-6140-200-14: a discharged battery can freeze at -12 °C':
    'fast leer; TM 9-6140-200-14: eine entladene Batterie kann bei -12 °C einfrieren',
  'all lamps and windows on: near 12 V is good, below 11 V is not':
    'alle Lampen und Scheibenheizungen an: nahe 12 V ist gut, unter 11 V nicht',
  'where the load-test table of the battery trade ends, -18 °C':
    'wo die Tabelle der Belastungsprüfung endet, -18 °C',
  '80 % of the label': '80 % der Angabe auf der Batterie',
  "a battery with one cell of six down; parts supplier's battery warranty guidance: 10.5 V after charging is a shorted cell":
    'eine Batterie, von deren sechs Zellen eine ausfällt; Garantieleitfaden eines Teilelieferanten: 10,5 V nach dem Laden sind ein Zellenschluss',
  'two batteries of one age and charge': 'zwei Batterien gleichen Alters und Ladestands',
  'twice the resistance of a battery that is just worn':
    'das Doppelte des Widerstands einer eben verschlissenen Batterie',
  'two degrees above the -7 °C at which electrolyte of a gravity of 1.100 freezes (Army correspondence subcourse OD1002, lesson 2)':
    'zwei Grad über den -7 °C, bei denen Säure der Dichte 1,100 gefriert (Army correspondence subcourse OD1002, lesson 2)',
  'batteries are seldom worn before 2 years and often from 5 years on':
    'Batterien sind selten vor 2 Jahren verschlissen und oft ab 5 Jahren',
  'one joint; TM 10-3930-671-24: any reading above 0 is poor':
    'eine Verbindung; TM 10-3930-671-24: jeder Wert über 0 ist schlecht',
  '0.2 to 0.3 V in the handbooks': '0,2 bis 0,3 V in den Handbüchern',
  '0.5 to 0.8 of the battery voltage': '0,5 bis 0,8 der Batteriespannung',
  '0.5 to 1 V below the rested battery: nothing heavy flows there':
    '0,5 bis 1 V unter der ruhenden Batterie: dort fließt kein großer Strom',
  'above a hold-in winding alone (TM 5-2420-230-24-2 p. 13-33: 13 to 19 A)':
    'über einer Haltewicklung allein (TM 5-2420-230-24-2 p. 13-33: 13 bis 19 A)',
  'normal cranking current by fuel and displacement':
    'üblicher Startstrom nach Kraftstoff und Hubraum',
  '1.6 times the normal cranking current by fuel and displacement':
    'das 1,6-Fache des üblichen Startstroms nach Kraftstoff und Hubraum',
  'no more than a full battery with its surface charge':
    'nicht mehr als eine volle Batterie mit ihrer Oberflächenladung',
  '14.8 V; in frost TM 9-6115-464-12, Table 4-5, halved from 24 V':
    '14,8 V; bei Frost TM 9-6115-464-12, Table 4-5, von 24 V halbiert',
  'frost, from which batteries fail more often': 'Frost, ab dem Batterien öfter versagen',
  'from it on cold hinders neither battery nor engine':
    'ab da hemmt Kälte weder Batterie noch Motor',
  'plus reads below minus': 'Plus liegt unter Minus',
  'batteries are judged between freezing and 45 °C':
    'Batterien werden zwischen Gefrierpunkt und 45 °C beurteilt',
  'what the surface charge leaves in one to three days':
    'was die Oberflächenladung in ein bis drei Tagen verliert',
  'more than a clamp meter shows of nothing': 'mehr, als eine Stromzange ohne Strom zeigt',
  'starters draw 50 A and more running free': 'Anlasser ziehen im Leerlauf 50 A und mehr',
  '2500 to 3500 rpm geared, 6000 rpm and more direct':
    '2500 bis 3500 U/min mit Getriebe, 6000 U/min und mehr direkt',
  'nuts on copper or brass studs': 'Muttern auf Kupfer- oder Messingbolzen',
  'M6 or M8 bolts of clamps on tapered battery posts':
    'M6- oder M8-Schrauben von Klemmen auf konischen Polen',
  'what meter and leads pick up, far below any battery':
    'was Messgerät und Leitungen auffangen, weit unter jeder Batterie',
  'a battery charged to three quarters or more and rested':
    'eine zu drei Vierteln oder mehr geladene, ausgeruhte Batterie',
  'a sound battery gives most of its label': 'eine gute Batterie gibt das meiste ihrer Angabe',
  'a battery that took a full charge, two hours after it':
    'eine voll geladene Batterie, zwei Stunden danach',
  'two batteries of one age': 'zwei Batterien gleichen Alters',
  'the rested battery less what its wires and switches take':
    'die ruhende Batterie abzüglich dessen, was Leitungen und Schalter nehmen',
  'cranking-circuit model of a sound vehicle: battery by its label, charge, age and temperature, usual cables, starter and engine':
    'Rechenmodell des Startstromkreises eines heilen Fahrzeugs: Batterie nach Angabe, Ladung, Alter und Temperatur, übliche Kabel, Anlasser und Motor',
  'usual resistance of the sound part times the measured current':
    'üblicher Widerstand des heilen Teils mal gemessener Strom',
  'T = K·F·d with 75 % of the proof load of ISO 898-1 (from memory) and K from an engineering article on tightening torque, T = K·F·d':
    'T = K·F·d mit 75 % der Prüfkraft nach ISO 898-1 (aus dem Gedächtnis) und K aus einem Fachartikel über Anziehdrehmomente',
  "the maker's figure for this part": 'die Angabe des Herstellers für dieses Teil',
};
