/**
 * What a bound goes by, where that is said in sentences of our own and not in a published title:
 * those sentences as the packages have them, in English.
 */
export const practice = [
  '0.2 V above a full battery (TM 5-3805-262-20 para 5-9: 12.6 V and above; TM 9-6115-730-24 WP 0050: agm 12.8 to 13.0 V)',
  'only what charges keeps a battery above 13.4 to 13.8 V',
  'nearly empty; TM 9-6140-200-14: a discharged battery can freeze at -12 °C',
  'all lamps and windows on: near 12 V is good, below 11 V is not',
  'where the load-test table of the battery trade ends, -18 °C',
  '80 % of the label',
  "a battery with one cell of six down; parts supplier's battery warranty guidance: 10.5 V after charging is a shorted cell",
  'two batteries of one age and charge',
  'twice the resistance of a battery that is just worn',
  'two degrees above the -7 °C at which electrolyte of a gravity of 1.100 freezes (Army correspondence subcourse OD1002, lesson 2)',
  'batteries are seldom worn before 2 years and often from 5 years on',
  'one joint; TM 10-3930-671-24: any reading above 0 is poor',
  '0.2 to 0.3 V in the handbooks',
  '0.5 to 0.8 of the battery voltage',
  '0.5 to 1 V below the rested battery: nothing heavy flows there',
  'above a hold-in winding alone (TM 5-2420-230-24-2 p. 13-33: 13 to 19 A)',
  'normal cranking current by fuel and displacement',
  '1.6 times the normal cranking current by fuel and displacement',
  'no more than a full battery with its surface charge',
  '14.8 V; in frost TM 9-6115-464-12, Table 4-5, halved from 24 V',
  'frost, from which batteries fail more often',
  'from it on cold hinders neither battery nor engine',
  'plus reads below minus',
  'batteries are judged between freezing and 45 °C',
  'what the surface charge leaves in one to three days',
  'more than a clamp meter shows of nothing',
  'starters draw 50 A and more running free',
  '2500 to 3500 rpm geared, 6000 rpm and more direct',
  'nuts on copper or brass studs',
  'M6 or M8 bolts of clamps on tapered battery posts',
  'what meter and leads pick up, far below any battery',
  'a battery charged to three quarters or more and rested',
  'a sound battery gives most of its label',
  'a battery that took a full charge, two hours after it',
  'two batteries of one age',
  'the rested battery less what its wires and switches take',
  'cranking-circuit model of a sound vehicle: battery by its label, charge, age and temperature, usual cables, starter and engine',
  'usual resistance of the sound part times the measured current',
  'T = K·F·d with 75 % of the proof load of ISO 898-1 (from memory) and K from an engineering article on tightening torque, T = K·F·d',
  "the maker's figure for this part",
] as const;

/** The same sentences in another language. */
export type PracticeWords = Readonly<Record<(typeof practice)[number], string>>;
