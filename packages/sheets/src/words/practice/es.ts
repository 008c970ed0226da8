import type { PracticeWords } from './practice.ts';

/** What bounds go by, in Spanish. */
export const es: PracticeWords = {
  '0.2 V above a full battery (TM 5-3805-262-20 para 5-9: 12.6 V and above; TM 9-6115-730-24 WP 0050: agm 12.8 to 13.0 V)':
    '0,2 V por encima de una batería llena (TM 5-3805-262-20 para 5-9: 12,6 V o más; TM 9-6115-730-24 WP 0050: AGM de 12,8 a 13,0 V)',
  'only what charges keeps a battery above 13.4 to 13.8 V':
    'solo algo que la carga mantiene una batería por encima de 13,4 a 13,8 V',
  'nearly empty; TM 9-6140-200-14: a discharged battery can freeze at -12 °C':
    'casi vacía; TM 9-6140-200-14: una batería descargada puede helarse a -12 °C',
  'all lamps and windows on: near 12 V is good, below 11 V is not':
    'con todas las luces y lunetas encendidas: cerca de 12 V es bueno, por debajo de 11 V no',
  'where the load-test table of the battery trade ends, -18 °C':
    'donde termina la tabla de pruebas de carga del ramo, -18 °C',
  '80 % of the label': '80 % de la etiqueta',
  "a battery with one cell of six down; parts supplier's battery warranty guidance: 10.5 V after charging is a shorted cell":
    'una batería con una celda de seis caída; guía de garantía de un proveedor: 10,5 V después de cargar es una celda en cortocircuito',
  'two batteries of one age and charge': 'dos baterías de la misma edad y carga',
  'twice the resistance of a battery that is just worn':
    'el doble de la resistencia de una batería apenas gastada',
  'two degrees above the -7 °C at which electrolyte of a gravity of 1.100 freezes (Army correspondence subcourse OD1002, lesson 2)':
    'dos grados por encima de los -7 °C a los que se hiela un electrolito de densidad 1,100 (Army correspondence subcourse OD1002, lesson 2)',
  'batteries are seldom worn before 2 years and often from 5 years on':
    'las baterías rara vez se gastan antes de 2 años y a menudo desde los 5',
  'one joint; TM 10-3930-671-24: any reading above 0 is poor':
    'una unión; TM 10-3930-671-24: toda lectura por encima de 0 es mala',
  '0.2 to 0.3 V in the handbooks': 'de 0,2 a 0,3 V en los manuales',
  '0.5 to 0.8 of the battery voltage': 'de 0,5 a 0,8 de la tensión de la batería',
  '0.5 to 1 V below the rested battery: nothing heavy flows there':
    'de 0,5 a 1 V por debajo de la batería en reposo: por ahí no pasa nada fuerte',
  'above a hold-in winding alone (TM 5-2420-230-24-2 p. 13-33: 13 to 19 A)':
    'por encima de una bobina de retención sola (TM 5-2420-230-24-2 p. 13-33: de 13 a 19 A)',
  'normal cranking current by fuel and displacement':
    'corriente normal de arranque según combustible y cilindrada',
  '1.6 times the normal cranking current by fuel and displacement':
    '1,6 veces la corriente normal de arranque según combustible y cilindrada',
  'no more than a full battery with its surface charge':
    'no más que una batería llena con su carga superficial',
  '14.8 V; in frost TM 9-6115-464-12, Table 4-5, halved from 24 V':
    '14,8 V; con helada TM 9-6115-464-12, Table 4-5, la mitad de 24 V',
  'frost, from which batteries fail more often': 'helada, a partir de la cual fallan más baterías',
  'from it on cold hinders neither battery nor engine':
    'desde ahí el frío no estorba ni a la batería ni al motor',
  'plus reads below minus': 'el positivo marca por debajo del negativo',
  'batteries are judged between freezing and 45 °C':
    'las baterías se juzgan entre el punto de congelación y 45 °C',
  'what the surface charge leaves in one to three days':
    'lo que se lleva la carga superficial en uno a tres días',
  'more than a clamp meter shows of nothing': 'más de lo que una pinza marca sin corriente',
  'starters draw 50 A and more running free': 'los arranques toman 50 A o más en vacío',
  '2500 to 3500 rpm geared, 6000 rpm and more direct':
    'de 2500 a 3500 rpm con reductora, 6000 rpm o más directo',
  'nuts on copper or brass studs': 'tuercas en espárragos de cobre o latón',
  'M6 or M8 bolts of clamps on tapered battery posts':
    'tornillos M6 o M8 de bornes en postes cónicos',
  'what meter and leads pick up, far below any battery':
    'lo que captan el aparato y los cables, muy por debajo de cualquier batería',
  'a battery charged to three quarters or more and rested':
    'una batería cargada a tres cuartos o más y en reposo',
  'a sound battery gives most of its label': 'una batería sana da la mayor parte de su etiqueta',
  'a battery that took a full charge, two hours after it':
    'una batería que tomó una carga completa, dos horas después',
  'two batteries of one age': 'dos baterías de la misma edad',
  'the rested battery less what its wires and switches take':
    'la batería en reposo menos lo que toman cables e interruptores',
  'cranking-circuit model of a sound vehicle: battery by its label, charge, age and temperature, usual cables, starter and engine':
    'modelo del circuito de arranque de un vehículo sano: batería por su etiqueta, carga, edad y temperatura, cables, arranque y motor usuales',
  'usual resistance of the sound part times the measured current':
    'resistencia usual de la pieza sana por la corriente medida',
  'T = K·F·d with 75 % of the proof load of ISO 898-1 (from memory) and K from an engineering article on tightening torque, T = K·F·d':
    'T = K·F·d con el 75 % de la carga de prueba de ISO 898-1 (de memoria) y K de un artículo de ingeniería sobre el par de apriete',
  "the maker's figure for this part": 'la cifra del fabricante para esta pieza',
};
