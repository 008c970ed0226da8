/** The general texts in Spanish, polite and neutral: for Spain and Latin America. */
export const es = {
  word: {
    danger: 'PELIGRO',
    warning: 'ADVERTENCIA',
    caution: 'PRECAUCIÓN',
    notice: 'AVISO',
  },
  unit: {
    rpm: '{{figure}} rpm',
    bare: '{{figure}}',
    any: 'una cifra',
    anyIn: 'una cifra ({{unit}})',
  },
  confirm: {
    ask_one:
      '¿Ha leído esta advertencia de seguridad y se puede seguir sin peligro? Responda sí, o «no puedo».',
    ask_many:
      '¿Ha leído estas {{count}} advertencias de seguridad y se puede seguir sin peligro? Responda sí, o «no puedo».',
    ask_other:
      '¿Ha leído estas {{count}} advertencias de seguridad y se puede seguir sin peligro? Responda sí, o «no puedo».',
  },
  question: {
    again: 'Una vez más: {{ask}}',
    mentioned: 'Ya dicho: {{list}}. {{ask}}',
    remembered: 'Solo de memoria, sin hacerlo ahora: {{ask}}',
    probes: 'Punta roja en {{red}}, punta negra en {{black}}.',
    done: 'hecho',
    lasts: 'Dura aproximadamente {{time}}.',
  },
  key: {
    confirm: 'Sí, es seguro',
    cannot: 'No puedo',
    dontKnow: 'No lo sé',
    why: '¿Por qué?',
    take: 'Eso es todo',
    done: 'Ya está hecho',
    over: 'Ya pasó',
    noDanger: 'No, nada de eso',
    pickFirst: 'Primero elija al menos una, o la que dice que ninguna.',
    oldKey: 'Esa tecla es de una pregunta anterior. Estamos aquí:',
    noPrice:
      'No se ha tomado ningún precio. Va detrás de la orden como cifra sencilla, por ejemplo 119,90, donde se devuelve una pieza según las condiciones de una tienda. Sin él no se dice ningún importe.',
    onlyText:
      'Aquí solo se puede leer texto, ni imágenes ni voz. Escríbalo con pocas palabras, por favor.',
    begin: 'Empezar un caso nuevo',
    back: 'Atrás',
    unsure: 'No puedo saber si le llegó mi último mensaje. Estamos aquí:',
    oldEdit:
      'No puedo saber qué respuesta cambia esa edición. Escriba la respuesta correcta en un mensaje nuevo que empiece por «corrección».',
    tooFast:
      'Es más de lo que se puede atender a la vez, así que el último mensaje no se ha tomado. Espere medio minuto y envíelo otra vez.',
    readFirst: 'Eso se escribió antes de que se pudiera leer esta advertencia. Léala primero:',
    timeUp: 'Ya ha pasado el tiempo.',
    summary: 'Resumen, para reenviar',
    help: 'Toque una respuesta o escríbala con sus palabras, varias cosas a la vez si quiere: «12,4 V, gira despacio». Siempre puede decir «por qué», «atrás», «no lo sé», «no puedo» o «corrección: …». Diga el nombre de un idioma para seguir en él. Si hay humo, una fuga de combustible o alguien en peligro, dígalo enseguida.',
    commandStart: 'Empezar, o seguir donde estábamos',
    commandAgain: 'Repetir la pregunta',
    commandNew: 'Empezar un caso nuevo',
    commandStop: 'Dejar el caso a un lado',
    commandHelp: 'Qué se puede hacer aquí',
  },
  vehicle: {
    taken:
      'El caso del vehículo es del {{day}}. Cuenta si el vehículo es de este cliente y la pieza se vendió antes de ese día. Si no, corríjalo: «corrección», y luego lo que dice el vehículo.',
    before:
      'Ese caso es del {{day}}, no posterior a la venta del {{sold}}: dice por qué se compró la pieza, y nada de la pieza misma. No se ha cambiado nada.',
    otherVolts:
      'Ese caso es de un vehículo de {{found}} V, y la pieza es para {{part}} V. No es de este cliente y se ha dejado fuera.',
    damaged:
      'Hay letras del código mal o que faltan. Escríbalo de nuevo desde la hoja. No se ha cambiado nada.',
    tooNew: 'Este código lo escribió una versión más nueva. No se ha cambiado nada.',
    otherFlow:
      'El código es de otra clase de caso. Se esperaba un caso de arranque. No se ha cambiado nada.',
    elsewhere: 'Esto apunta a otra cosa: {{what}}.',
    notGood: 'No está bien: {{what}}.',
    reading: '{{name}} {{figure}} ({{what}})',
    missing: 'Para que hable en contra de la pieza aún falta: {{what}}.',
    claim:
      'Solo habla en contra de la pieza que el motor gire despacio o no gire; el cliente dice otra cosa, o nada.',
    charging: 'La carga por sí sola nunca habla en contra de una batería.',
    byHand: 'Entendido como medidas del vehículo: {{what}}.',
    byHandCounts:
      'Cuentan si la pieza estaba en el vehículo al medir. Si no, corríjalo: «corrección», y luego lo que dice el vehículo.',
  },
  wait: {
    until:
      'Espere {{time}} antes del siguiente paso: {{name}}. Diga «hecho» si el tiempo ya ha pasado.',
  },
  reading: {
    unjudged:
      '{{figure}}: anotado. Sin saber más de este vehículo no se puede decir qué significa.',
    plain: '{{figure}}: {{means}}',
    likely: '{{figure}}: {{share}}. Es probable, pero no seguro.',
    borderline:
      '{{figure}}: demasiado justo para decidir. {{shares}}. A partir de aquí se tienen en cuenta las dos posibilidades.',
    between: 'Demasiado cerca del límite: {{bands}}.',
    share: '{{share}} para «{{label}}»',
    repeat: 'Léalo una vez más, con contacto limpio y firme, hasta la última cifra.',
    settles: 'Lo que puede decidirlo: {{name}}.',
    expected: 'Lo esperado en este vehículo si todo está bien: de {{low}} a {{high}}.',
  },
  numbers: {
    none: 'Hasta ahora no se ha tomado ninguna lectura con un medidor.',
    reading: '{{name}}: {{figure}} ± {{spread}}',
    shares: 'Eso da: {{shares}}.',
    share: '«{{label}}» {{share}}',
    losses: 'Dónde se pierden los voltios',
    loss: '{{part}}: {{loss}} ± {{spread}}, {{share}} de lo que se encontró perdido',
    lossResistance:
      '{{part}}: {{loss}} ± {{spread}}, {{resistance}}, {{share}} de lo que se encontró perdido',
    atMotor: 'Al motor de arranque le llegan {{volts}}.',
    battery: 'Dentro de la batería',
    positive: 'Lado positivo',
    ground: 'Lado de masa (tierra)',
    contacts: 'Contactos del solenoide',
  },
  noted: {
    answer: '{{name}}: {{answer}}.',
    notKnown: '{{name}}: no se sabe.',
  },
  ranking: {
    heading_one: 'Lo que mejor encaja',
    heading_many: 'Los {{count}} que mejor encajan',
    heading_other: 'Los {{count}} que mejor encajan',
  },
  why: {
    none: 'El resultado de «{{name}}» decide qué hay que hacer después.',
    outcome: 'Si la respuesta es «{{label}}», lo más probable es: {{faults}}.',
    nothing: 'Si la respuesta es «{{label}}», no dice nada sobre el fallo.',
    fault: '{{name}} ({{share}})',
    bound: 'Límite en {{figure}}: {{source}}.',
    zone: 'Límite entre {{low}} y {{high}}: {{source}}.',
    expected: 'Lo esperado si todo está bien: de {{low}} a {{high}}, {{source}}.',
    worth:
      'Toca ahora porque es lo que más dice por su tiempo: lleva {{minutes}}, y se espera que seguir así ahorre {{saves}} de trabajo y errores frente a decidir ya.',
    proves: 'Toca ahora para probar lo que ya es probable; lleva {{minutes}}.',
    goesOn: 'Si la respuesta es «{{label}}»: las preguntas continúan.',
    decides: 'Si la respuesta es «{{label}}»: {{decision}}.',
  },
  weights: {
    heading: 'Qué habla a favor y en contra: {{name}} (10 puntos: diez veces más probable)',
    finding: '{{name}}: {{answer}}',
    known: 'Lo que se sabe del vehículo, del lugar y del tiempo que hace',
    for: '+{{weight}}  {{finding}}',
    against: '-{{weight}}  {{finding}}',
    otherwise: '{{text}}. Sin eso, lo primero sería: {{other}}',
  },
  verdict: {
    title: 'El fallo: {{name}}',
    titleLikely: 'El fallo más probable: {{name}}',
    titleOpen: 'Todavía sin decidir; en primer lugar: {{name}}',
    proved: 'Probado con mediciones.',
    likely: 'Probable, no probado: {{share}} con lo que se sabe ahora.',
    likelySettle:
      'Probable, no probado: {{share}} con lo que se sabe ahora. Lo decidiría: {{checks}}.',
    open: 'Abierto: ningún fallo destaca. {{ranking}}. Lo siguiente es que lo mire alguien con más equipo.',
    rests: 'En qué se basa',
    finding: '{{name}}: {{answer}}',
    restsOnShares:
      'Ningún hallazgo lo prueba por sí solo. Lo que mejor encaja hasta ahora: {{ranking}}.',
    do: 'Qué hacer',
    waitSafe: 'Espere donde esté a salvo, lejos del tráfico, detrás de la barrera si la hay.',
    waitWork:
      'No haga nada en el vehículo aquí, ni siquiera bajo el capó: ese trabajo es de quienes vienen a ayudar.',
    waitSent: 'Se le envía ayuda. Tenga el teléfono a mano.',
    waitCall:
      'La ayuda tiene que ir hasta usted. Si aún no se ha pedido, pídala ahora y diga dónde está: carretera, sentido, punto kilométrico más cercano.',
    also: 'Qué más falla; se arregla después',
    alsoText: '{{name}}. Lo que mejor encaja es que fallen los dos a la vez ({{share}}).',
    send: 'Quién debe ir',
    roots: 'Por qué ocurrió',
    rootsLikely: 'Por qué pudo ocurrir',
    licensed: 'Quién debe hacer el trabajo',
    licensedText:
      'Es trabajo para un taller autorizado o especializado. Las normas locales y la práctica autorizada tienen prioridad.',
    change: 'Qué cambiaría esto',
    settle: '{{name}}.',
    settleLacks: '{{name}}: hace falta {{kit}}.',
    nothingSettles: 'Solo un hallazgo que contradiga los anteriores.',
    stops: 'Qué no se debe hacer',
  },
  decision: {
    do: 'Qué hacer ahora',
    again: 'Después responda otra vez: {{names}}. Todo lo demás queda como está.',
    rests: 'En qué se basa',
    borderline: 'demasiado cerca del límite',
    unanswered: 'no se pudo averiguar',
    change: 'Qué lo habría cambiado',
    changed: '{{name}}: con «{{answers}}» la decisión habría sido: {{decision}}.',
    measure: 'Mida en el vehículo antes de montar otra pieza',
    rights: 'Sus derechos',
    law: 'La ley de protección al consumidor de donde usted vive va primero: nada de lo dicho aquí le quita un derecho que ella le da.',
    short: '{{decision}} ({{reason}})',
  },
  refund: {
    heading: 'Qué se devuelve',
    price: '{{amount}} pagados por la pieza',
    restocking: '{{amount}} retenidos como cargo por reposición en almacén',
    restockingShare:
      '{{amount}}: el {{share}} del precio, retenido como cargo por reposición en almacén',
    usedShare:
      '{{amount}} retenidos: meses de uso: {{months}}; se devuelve el {{share}} del precio',
    usedMonths: '{{amount}} retenidos: usados {{months}} de {{of}} meses, quedan {{left}}',
    deposit: '{{amount}} de depósito por la pieza vieja (casco)',
    depositOpen:
      'Depósito por la pieza vieja (casco): no se sabe si sigue retenido; si es así, se suma',
    total: '{{amount}} en total',
    lacks: 'No se puede indicar ningún importe; falta: {{what}}',
  },
  lacking: {
    terms: 'las condiciones de la tienda',
    warranty: 'condiciones de garantía para esta pieza',
    price: 'el precio pagado',
    day: 'el día de la venta',
  },
  interrupt: {
    heading: '{{name}}.',
    return: 'Diga «ya pasó» cuando se pueda seguir sin peligro; continuamos donde estábamos.',
    prove: 'Ahora comprobamos que todo está bien.',
  },
  setAside: {
    checks_one: 'Se deja de lado, porque ya no vale después de la corrección: {{names}}.',
    checks_many:
      'Se dejan de lado estas {{count}} respuestas, porque ya no valen después de la corrección: {{names}}.',
    checks_other:
      'Se dejan de lado estas {{count}} respuestas, porque ya no valen después de la corrección: {{names}}.',
  },
  tell: {
    person:
      'A partir de aquí le atiende una persona. Todas sus respuestas quedan guardadas para ella.',
    stopped: 'Se detiene aquí. No se pierde nada: vuelva cuando quiera.',
    resumed: 'Bien. Seguimos donde estábamos.',
    withdrawn: 'Retirado. Ya nada queda prohibido por ello.',
    returned: 'De vuelta a la pregunta anterior.',
    restored: 'La corrección queda anulada: todo está como antes de ella.',
    learned: 'Se tiene en cuenta a partir de aquí.',
    doubt:
      'Las respuestas hasta ahora apenas encajan entre sí, y la que menos encaja es esta: {{name}}. Por favor, mire una vez más; si era correcta, dígalo otra vez.',
    checkAgainAny: 'Vale la pena mirar una segunda vez.',
    checkAgain: 'Vale la pena mirar una segunda vez: {{name}}.',
  },
  done: {
    'proved-repaired': 'Terminado: arranca, y las mediciones prueban la reparación.',
    unproved: 'Terminado, pero sin probar.',
    lacks: '{{end}} Para probarlo falta todavía: {{checks}}.',
    'still-failing':
      'Sigue fallando; el fallo todavía no se ha encontrado. Lo siguiente es que lo mire un técnico.',
    'handed-over':
      'Desde aquí sigue una persona. Muéstrele o envíele lo hallado, para que nadie empiece de cero.',
    ended: 'Este caso está cerrado. Cuídese.',
    decided:
      'Esa es la decisión tal como están las cosas. Lo que se averigüe después puede decirse en cualquier momento y entonces se valora con lo demás.',
  },
  refused: {
    'unknown-check': 'Aquí no hay ninguna comprobación llamada «{{given}}». {{possible}}',
    'unknown-choice': '«{{given}}» no es una de las respuestas. {{possible}}',
    'unknown-unit':
      '«{{given}}» no es una cifra o tiene una unidad que aquí no se conoce. {{possible}}',
    'wrong-unit': '«{{given}}» tiene una unidad que no corresponde a {{name}}. {{possible}}',
    'not-a-number': '«{{given}}» no es una cifra. {{possible}}',
    implausible: '{{given}} no puede ser correcto para {{name}}: {{range}}. {{help}}',
    'wrong-load':
      'Se cargó con {{load}}. La mitad de los {{rating}} de la etiqueta son {{half}}: ajústelo y cargue otra vez.',
    'no-such-day':
      '«{{given}}» no es un día del calendario. Diga {{name}} con año, mes y día, por ejemplo 2026-01-31, o una de estas respuestas. {{possible}}',
    'day-to-come':
      '«{{given}}» todavía no ha llegado; no puede ser correcto para {{name}}. Diga el día, por ejemplo 2026-01-31. {{possible}}',
    'day-long-ago':
      '«{{given}}» queda demasiado lejos y no puede ser correcto para {{name}}: mire el año. Diga el día, por ejemplo 2026-01-31. {{possible}}',
    'no-terms':
      'Aquí no se conocen las condiciones de esta tienda; nadie puede saber qué significa {{given}} para {{name}}. Diga cuál es la respuesta. {{possible}}',
    'one-choice': 'Para {{name}} solo vale una respuesta. {{possible}}',
    'not-this-kind': '«{{given}}» no responde a {{name}}. {{possible}}',
    'not-answered-yet': '{{name}} todavía no tiene respuesta; no hay nada que corregir.',
    'unknown-interrupt': '«{{given}}» no se conoce aquí como emergencia. {{possible}}',
    'unknown-context':
      '«{{given}}» no se conoce como dato de un vehículo, una persona o un lugar. {{possible}}',
    'nothing-to-confirm': 'Ahora mismo no hay nada que confirmar.',
    'nothing-to-resume': 'Ahora mismo no hay nada de lo que volver.',
    'resume-first':
      'Lo primero es lo primero: diga «ya pasó» cuando se pueda seguir sin peligro, o «falsa alarma» si nunca hubo peligro.',
    'nothing-before': 'Esta es la primera pregunta; no hay ninguna antes.',
    'too-early':
      'Es demasiado pronto para {{name}}: eso viene después del resultado, en un mensaje aparte.',
    closed: 'Este caso está cerrado. Abra uno nuevo para seguir.',
    'not-an-input': 'No se ha podido leer. {{possible}}',
    'clock-back':
      'El reloj de este dispositivo se ha atrasado. Póngalo en hora e inténtelo otra vez.',
    range: 'está entre {{low}} y {{high}}',
    noRange: 'ningún medidor indica eso ahí',
    likely: '¿Quiso decir {{figure}}?',
    likelyNominal:
      '¿Quiso decir {{figure}}? Si es un vehículo de 24 V, diga «vehículo de 24 V» y dé la cifra otra vez.',
    nominal: 'Si es un vehículo de 24 V, diga «vehículo de 24 V» y dé la cifra otra vez.',
    readAgain: 'Por favor, léalo otra vez.',
    possible: 'Posible: {{list}}.',
    plain: 'Inténtelo otra vez, o diga «por qué», «no sé» o «no puedo».',
    thisCheck: 'esta comprobación',
  },
  unclear: {
    empty: 'No ha escrito nada. {{possible}}',
    'too-long': 'Es demasiado largo para entenderlo. Dígalo en una o dos frases cortas, por favor.',
    'unknown-choice': 'No se ha entendido «{{given}}» como respuesta a esta pregunta. {{possible}}',
    'one-choice': 'Aquí solo vale una respuesta, y «{{given}}» nombra más. {{possible}}',
    'not-a-number': '«{{given}}» no tiene ninguna cifra que se pueda leer. {{possible}}',
    'not-exact': '«{{given}}» solo da un límite. Dé la cifra exacta, por favor. {{possible}}',
    'two-numbers':
      '«{{given}}» tiene más de una cifra para una sola lectura. Dé una, por favor. {{possible}}',
    'unknown-unit':
      '«{{given}}» no es una cifra o tiene una unidad que aquí no se conoce. {{possible}}',
    'which-check':
      'No queda claro a qué corresponde {{given}}, así que no se ha tomado nada. {{possible}}',
    'nothing-to-confirm': 'Ahora mismo no hay nada a lo que responder sí o no. {{possible}}',
    'not-confirmed': 'Responda sí cuando se pueda seguir sin peligro, o «no puedo».',
    'not-done': 'Diga «hecho» cuando esté hecho, o «no puedo».',
    'not-a-day':
      '«{{given}}» no se puede leer como un día. Diga año, mes y día, por ejemplo 2026-01-31. {{possible}}',
    waiting: 'La espera no ha terminado. Diga «hecho» cuando haya pasado el tiempo.',
    'not-over':
      'Diga «ya pasó» cuando se pueda seguir sin peligro, o «falsa alarma» si nunca hubo peligro.',
    closed: 'Este caso está cerrado. Abra uno nuevo para seguir.',
    'which-language': 'Aquí se hablan estos idiomas: {{possible}}. Diga el nombre del que quiera.',
    'not-understood': 'No se ha entendido «{{given}}». {{possible}}',
    possible: 'Respuestas posibles: {{list}}.',
    plain: 'También puede decir «por qué», «no sé» o «no puedo».',
  },
  offers: {
    ask: 'No está del todo claro qué quiere decir: ¿{{list}}?',
    askOne: '¿Quiere decir {{list}}? Diga «sí», o dígalo de otra manera.',
    one: '«{{label}}» ({{name}})',
    askOf: 'No está del todo claro qué quiere decir ({{name}}): ¿{{list}}?',
    answer: '«{{label}}»',
    danger: 'Primero, por seguridad: ¿se trata de esto: «{{label}}»? Diga «sí» o «no».',
  },
  source: {
    published: 'publicado',
    reported: 'publicado, según lo cita otro texto',
    'from memory': 'de memoria, sin consultar',
    'common practice': 'práctica habitual, sin fuente',
    computed: 'calculado',
    text: '{{founded}} ({{text}})',
  },
  drawing: {
    reading: '{{name}}: {{figure}}',
    expected: 'esperado: de {{low}} a {{high}}',
    was: 'antes: {{share}}',
    share: '{{name}}: {{share}}, antes {{before}}',
    circuit: 'El circuito de arranque',
    circuitShows:
      'Un cable grueso va de la batería al motor de arranque por el fusible principal y otro vuelve del motor a la batería. Cables finos van del contacto al interruptor siguiente y al relé, y del fusible de arranque por el relé al solenoide.',
    probes: 'Dónde van las puntas del medidor',
    clamp: 'Cómo poner la pinza amperimétrica',
    clampRight:
      'Bien: la pinza alrededor del cable negativo, con todos los cables que llegan a ese poste.',
    clampWrong: 'Mal: positivo y negativo juntos. La pinza no marca casi nada.',
    places: 'Dónde están las piezas',
    placesShow:
      'Visto desde arriba. No hay dos vehículos iguales: la batería también puede estar en el maletero (cajuela, baúl) o bajo un asiento.',
    red: 'roja',
    black: 'negra',
    suspect: 'bajo sospecha: {{name}}',
    found: 'Medido hasta ahora',
    front: 'delante',
    first: '1.ª',
    second: '2.ª',
    battery: 'batería',
    mainFuse: 'fusible principal',
    positiveCable: 'cable positivo',
    groundCable: 'cable de masa (tierra)',
    starter: 'motor de arranque',
    solenoid: 'solenoide',
    engine: 'motor',
    gearbox: 'caja de cambios',
    relay: 'relé de arranque',
    starterFuse: 'fusible de arranque',
    ignitionSwitch: 'interruptor de contacto',
    startButton: 'botón de arranque',
    selectorSwitch: 'interruptor P/N',
    clutchSwitch: 'interruptor del embrague',
    isolator: 'cortabatería',
    fuseBox: 'caja de fusibles',
  },
} as const;
