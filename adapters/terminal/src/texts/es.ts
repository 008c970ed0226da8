import type { TerminalTexts } from './terminal-words.ts';

/** The terminal's words in Spanish. */
export const es: TerminalTexts = {
  title: (flow) => `KEYTURN: ${flow}`,
  goingOn: (at, answers) =>
    `Se continúa el caso del ${at}. Respuestas hasta ahora: ${String(answers)}.`,
  soFar: 'Lo que se sabe hasta ahora',
  torn: 'La última línea del archivo se cortó al escribirla, por eso se vuelve a preguntar esa respuesta.',
  demo: 'DEMOSTRACIÓN. Nadie responde, así que se presenta un caso inventado: el vehículo, su avería y todas las cifras son inventados. Ejecútelo desde una terminal, o dele líneas que leer, para tener su propio caso.',
  demoEnd: 'Esta fue la demostración, con un vehículo y unas cifras inventados.',
  kept: (file, command) => `El caso queda guardado en ${file}. Para continuarlo:\n${command}`,
  closedKept: (file) => `El caso queda guardado en ${file}.`,
  notKept: (reason) =>
    `Ahora no se puede escribir el caso en su archivo (${reason}). Puede continuar; se intenta de nuevo con cada respuesta.`,
  until: (time) => `La espera termina a las ${time}.`,
  notYet: (time, minutes) =>
    `Todavía no: faltan ${String(minutes)} min, hasta las ${time}. Diga «listo» si el tiempo ya pasó.`,
  offer: (letters) => `(${letters} para elegir, o dígalo de otra manera; ? para ayuda)`,
  prompt: {
    choice: (count) =>
      `(1${['', '', ' o 2'][count] ?? ` a ${String(count)}`}, o una palabra; ? para ayuda)`,
    choices: (count) =>
      `(uno o varios de 1 a ${String(count)}, como 1 3, o palabras; ? para ayuda)`,
    date: (count) => `(un día, como 2026-01-31, o de 1 a ${String(count)}; ? para ayuda)`,
    reading: (unit) => `(la cifra en ${unit}, o varias lecturas por su nombre; ? para ayuda)`,
    lamp: '(lo que muestra la lámpara; ? para ayuda)',
    work: '(1 o «listo» cuando esté hecho; ? para ayuda)',
    confirm: '(1 sí, o 2 no puedo; ? para ayuda)',
    wait: '(1 o «listo» cuando pase el tiempo, Intro para ver la hora; ? para ayuda)',
    closed: '(Intro para salir, o «atrás», o «corrijo» con la respuesta que estaba mal)',
    resume: '(1 o «ya pasó» cuando se pueda seguir sin peligro; ? para ayuda)',
  },
  expected: 'esperado',
  dontKnow: 'no sé',
  helpNow: 'Siempre puede escribir',
  help: [
    ['por qué', 'para qué es la pregunta y qué significaría cada respuesta'],
    ['números', 'cada lectura con su margen, lo esperado y las fuentes'],
    ['atrás', 'se retira la última respuesta y se pregunta otra vez'],
    ['corrijo reposo 12,1', 'corregir una respuesta anterior'],
    ['no sé', 'queda abierto y el caso sigue'],
    ['no puedo', 'no es posible o no es seguro; se busca otro camino'],
    ['reposo 12,5, 170 A', 'varias lecturas en una línea, por nombre o unidad'],
    ['tengo una pinza', 'su equipo ha cambiado'],
    ['repetir', 'la pregunta otra vez'],
    ['una persona', 'pasar el caso a alguien'],
    ['parar', 'dejar el caso; queda guardado y se puede continuar'],
    ['English, français, …', 'seguir en otro idioma'],
    ['humo, olor a gasolina, herido', 'cualquier peligro, con sus palabras, en cualquier momento'],
  ],
};
