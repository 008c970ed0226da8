/** The general texts in German. */
export const de = {
  word: {
    danger: 'GEFAHR',
    warning: 'WARNUNG',
    caution: 'VORSICHT',
    notice: 'HINWEIS',
  },
  unit: {
    rpm: '{{figure}} U/min',
    bare: '{{figure}}',
    any: 'eine Zahl',
    anyIn: 'eine Zahl ({{unit}})',
  },
  confirm: {
    ask_one:
      'Haben Sie diesen Warnhinweis gelesen, und können Sie gefahrlos weitermachen? Antworten Sie mit Ja oder „kann nicht“.',
    ask_other:
      'Haben Sie diese {{count}} Warnhinweise gelesen, und können Sie gefahrlos weitermachen? Antworten Sie mit Ja oder „kann nicht“.',
  },
  question: {
    again: 'Noch einmal: {{ask}}',
    mentioned: 'Schon genannt: {{list}}. {{ask}}',
    remembered: 'Nur aus der Erinnerung, ohne es jetzt zu tun: {{ask}}',
    probes: 'Rote Messleitung: {{red}}. Schwarze Messleitung: {{black}}.',
    done: 'fertig',
    lasts: 'Das dauert etwa {{time}}.',
  },
  key: {
    confirm: 'Ja, es ist sicher',
    cannot: 'Das kann ich nicht',
    dontKnow: 'Weiß ich nicht',
    why: 'Warum?',
    take: 'Das ist alles',
    done: 'Ist erledigt',
    over: 'Es ist vorbei',
    noDanger: 'Nein, nichts davon',
    pickFirst: 'Wählen Sie zuerst mindestens eine Antwort, oder die mit „nichts davon“.',
    oldKey: 'Diese Taste gehört zu einer früheren Frage. Hier sind wir:',
    noPrice:
      'Kein Preis wurde übernommen. Er steht hinter dem Befehl als einfache Zahl wie 119,90, wo ein Teil zu den Bedingungen eines Geschäfts zurückgenommen wird. Ohne ihn wird kein Betrag genannt.',
    onlyText:
      'Hier kann nur Text gelesen werden, keine Bilder und keine Sprache. Bitte schreiben Sie es in wenigen Worten.',
    begin: 'Neuen Fall beginnen',
    back: 'Zurück',
    unsure: 'Ich weiß nicht, ob meine letzte Nachricht angekommen ist. Hier sind wir:',
    oldEdit:
      'Ich weiß nicht, welche Antwort diese Änderung meint. Bitte schreiben Sie die richtige Antwort in eine neue Nachricht, die mit „Korrektur“ beginnt.',
    tooFast:
      'Das ist mehr, als auf einmal aufgenommen werden kann; die letzte Nachricht wurde es nicht. Bitte warten Sie eine halbe Minute und senden Sie sie dann noch einmal.',
    readFirst:
      'Das wurde geschrieben, bevor dieser Hinweis gelesen werden konnte. Bitte lesen Sie ihn zuerst:',
    timeUp: 'Die Zeit ist um.',
    summary: 'Zusammenfassung, zum Weiterleiten',
    help: 'Tippen Sie eine Antwort an oder schreiben Sie sie in eigenen Worten, auch mehreres auf einmal: „12,4 V, dreht langsam“. Sie können jederzeit „warum“, „zurück“, „weiß nicht“, „kann ich nicht“ oder „Korrektur: …“ sagen. Nennen Sie eine Sprache, um in ihr weiterzumachen. Bei Rauch, auslaufendem Kraftstoff oder wenn jemand in Gefahr ist, sagen Sie es sofort.',
    commandStart: 'Beginnen, oder weiter wie zuvor',
    commandAgain: 'Die Frage noch einmal',
    commandNew: 'Neuen Fall beginnen',
    commandStop: 'Den Fall beiseitelegen',
    commandHelp: 'Was man hier tun kann',
  },
  vehicle: {
    taken:
      'Der Fall des Fahrzeugs ist vom {{day}}. Er zählt, wenn es das Fahrzeug dieses Kunden ist und das Teil vor diesem Tag verkauft wurde. Sonst berichtigen Sie ihn: „Korrektur“, dann was das Fahrzeug sagt.',
    before:
      'Dieser Fall ist vom {{day}}, nicht jünger als der Verkauf vom {{sold}}: Er sagt, worauf das Teil gekauft wurde, und nichts über das Teil selbst. Nichts wurde geändert.',
    otherVolts:
      'Dieser Fall ist von einem Fahrzeug mit {{found}} V, das Teil ist für {{part}} V. Er ist nicht von diesem Kunden und wurde weggelassen.',
    damaged:
      'Im Code sind Zeichen falsch oder fehlen. Bitte vom Blatt neu tippen. Nichts wurde geändert.',
    tooNew: 'Diesen Code hat eine neuere Version geschrieben. Nichts wurde geändert.',
    otherFlow:
      'Der Code ist von einer anderen Art Fall. Erwartet: ein Startfall. Nichts wurde geändert.',
    elsewhere: 'Das weist woandershin: {{what}}.',
    notGood: 'Nicht gut: {{what}}.',
    reading: '{{name}} {{figure}} ({{what}})',
    missing: 'Damit es gegen das Teil spricht, fehlt noch: {{what}}.',
    claim:
      'Gegen das Teil kann nur sprechen, was langsam oder gar nicht durchdreht; der Kunde sagt etwas anderes oder nichts.',
    charging: 'Wie geladen wird, spricht für sich allein nie gegen eine Batterie.',
    byHand: 'Als Messwerte vom Fahrzeug verstanden: {{what}}.',
    byHandCounts:
      'Sie zählen, wenn das Teil beim Messen im Fahrzeug war. Sonst berichtigen Sie: „Korrektur“, dann was das Fahrzeug sagt.',
  },
  wait: {
    until:
      'Warten Sie {{time}} bis zum nächsten Schritt: {{name}}. Sagen Sie „fertig“, wenn die Zeit schon um ist.',
  },
  reading: {
    unjudged:
      '{{figure}}: notiert. Was das bedeutet, lässt sich ohne weitere Angaben zum Fahrzeug nicht sagen.',
    plain: '{{figure}}: {{means}}',
    likely: '{{figure}}: {{share}}. Das ist wahrscheinlich, aber nicht sicher.',
    borderline:
      '{{figure}}: zu knapp, um es zu entscheiden. {{shares}}. Beides wird von hier an berücksichtigt.',
    between: 'Zu knapp für ein Urteil: {{bands}}.',
    share: '{{share}} für „{{label}}“',
    repeat: 'Lesen Sie noch einmal ab, mit sauberem, festem Kontakt, bis zur letzten Stelle.',
    settles: 'Das kann es klären: {{name}}.',
    expected: 'Bei diesem Fahrzeug zu erwarten, wenn nichts fehlt: {{low}} bis {{high}}.',
  },
  numbers: {
    none: 'Bisher wurde nichts mit einem Messgerät gemessen.',
    reading: '{{name}}: {{figure}} ± {{spread}}',
    shares: 'Das ergibt: {{shares}}.',
    share: '{{label}} {{share}}',
    losses: 'Wo die Volt verloren gehen',
    loss: '{{part}}: {{loss}} ± {{spread}}, {{share}} des gefundenen Verlusts',
    lossResistance:
      '{{part}}: {{loss}} ± {{spread}}, {{resistance}}, {{share}} des gefundenen Verlusts',
    atMotor: '{{volts}} kommen am Anlasser an.',
    battery: 'In der Batterie',
    positive: 'Plusseite',
    ground: 'Masseseite',
    contacts: 'Kontakte des Magnetschalters',
  },
  noted: {
    answer: '{{name}}: {{answer}}.',
    notKnown: '{{name}}: nicht bekannt.',
  },
  ranking: {
    heading_one: 'Was am besten passt',
    heading_other: 'Die {{count}}, die am besten passen',
  },
  why: {
    none: 'Das Ergebnis von „{{name}}“ entscheidet, was als Nächstes zu tun ist.',
    outcome: 'Lautet die Antwort „{{label}}“: am wahrscheinlichsten {{faults}}.',
    nothing: 'Lautet die Antwort „{{label}}“: Das sagt nichts über den Fehler.',
    fault: '{{name}} ({{share}})',
    bound: 'Grenze bei {{figure}}: {{source}}.',
    zone: 'Grenze zwischen {{low}} und {{high}}: {{source}}.',
    expected: 'Zu erwarten, wenn nichts fehlt: {{low}} bis {{high}}, {{source}}.',
    worth:
      'Diese Frage kommt jetzt, weil sie für ihre Zeit am meisten verrät: Sie dauert {{minutes}}, und auf diesem Weg werden voraussichtlich {{saves}} an Arbeit und Irrtümern gespart, verglichen mit einer Entscheidung jetzt.',
    proves:
      'Diese Prüfung kommt jetzt, um zu beweisen, was schon wahrscheinlich ist; sie dauert {{minutes}}.',
    goesOn: 'Wenn die Antwort „{{label}}“ ist: Die Fragen gehen weiter.',
    decides: 'Wenn die Antwort „{{label}}“ ist: {{decision}}.',
  },
  weights: {
    heading: 'Was dafür und dagegen spricht: {{name}} (10 Punkte: zehnmal so wahrscheinlich)',
    finding: '{{name}}: {{answer}}',
    known: 'Was über Fahrzeug, Ort und Wetter bekannt ist',
    for: '+{{weight}}  {{finding}}',
    against: '-{{weight}}  {{finding}}',
    otherwise: '{{text}}. Ohne das stünde an erster Stelle: {{other}}',
  },
  verdict: {
    title: 'Fehler: {{name}}',
    titleLikely: 'Wahrscheinlicher Fehler: {{name}}',
    titleOpen: 'Noch nicht geklärt: {{name}} steht an erster Stelle',
    proved: 'Durch Messung bewiesen.',
    likely: 'Wahrscheinlich, nicht bewiesen: {{share}} nach dem, was jetzt bekannt ist.',
    likelySettle:
      'Wahrscheinlich, nicht bewiesen: {{share}} nach dem, was jetzt bekannt ist. {{checks}} würde es klären.',
    open: 'Offen: Kein Fehler sticht heraus. {{ranking}}. Als Nächstes sollte jemand mit mehr Ausrüstung nachsehen.',
    rests: 'Worauf das beruht',
    finding: '{{name}}: {{answer}}',
    restsOnShares: 'Kein einzelner Befund beweist es. Was bisher am besten passt: {{ranking}}.',
    do: 'Was zu tun ist',
    waitSafe:
      'Warten Sie, wo Sie sicher sind: weg vom Verkehr, hinter der Leitplanke, wenn es eine gibt.',
    waitWork:
      'Machen Sie hier nichts am Fahrzeug, auch nichts unter der Motorhaube: Das tun die, die zu Hilfe kommen.',
    waitSent: 'Es wird Hilfe zu Ihnen geschickt. Behalten Sie das Telefon bei sich.',
    waitCall:
      'Die Hilfe muss zu Ihnen kommen. Ist sie noch nicht gerufen, rufen Sie sie jetzt und sagen Sie, wo Sie sind: Straße, Fahrtrichtung, nächste Kilometertafel.',
    also: 'Was außerdem fehlt und danach zu beheben ist',
    alsoText: '{{name}}. Am besten passt beides zugleich ({{share}}).',
    send: 'Wer kommen soll',
    roots: 'Warum es dazu kam',
    rootsLikely: 'Wie es dazu gekommen sein kann',
    licensed: 'Wer die Arbeit machen muss',
    licensedText:
      'Das ist Arbeit für eine zugelassene Werkstatt oder eine Fachwerkstatt. Örtliche Vorschriften und die dafür Zugelassenen gehen vor.',
    change: 'Was das ändern würde',
    settle: '{{name}}.',
    settleLacks: '{{name}}: Dafür nötig: {{kit}}.',
    nothingSettles: 'Nur ein Befund, der den genannten widerspricht.',
    stops: 'Was nicht getan werden darf',
  },
  decision: {
    do: 'Was jetzt zu tun ist',
    again: 'Dann noch einmal beantworten: {{names}}. Alles andere bleibt, wie es ist.',
    rests: 'Worauf das beruht',
    borderline: 'zu knapp für ein Urteil',
    unanswered: 'nicht festzustellen',
    change: 'Was daran etwas geändert hätte',
    changed: '{{name}}: Bei „{{answers}}“ hätte es geheißen: {{decision}}.',
    measure: 'Am Fahrzeug messen, bevor ein weiteres Teil eingebaut wird',
    rights: 'Ihre Rechte',
    law: 'Das Verbraucherrecht an Ihrem Ort geht vor: Nichts, was hier gesagt wird, nimmt Ihnen ein Recht, das es Ihnen gibt.',
    short: '{{decision}} ({{reason}})',
  },
  refund: {
    heading: 'Was Sie zurückbekommen',
    price: '{{amount}} für das Teil bezahlt',
    restocking: '{{amount}} als Wiedereinlagerungsgebühr einbehalten',
    restockingShare: '{{amount}}: {{share}} des Preises als Wiedereinlagerungsgebühr einbehalten',
    usedShare:
      '{{amount}} einbehalten: Monate in Gebrauch: {{months}}; {{share}} des Preises werden zurückgezahlt',
    usedMonths: '{{amount}} einbehalten: {{months}} von {{of}} Monaten genutzt, {{left}} übrig',
    deposit: '{{amount}} Pfand für das Altteil',
    depositOpen:
      'Pfand für das Altteil: nicht bekannt, ob es noch einbehalten ist; wenn ja, kommt es dazu',
    total: '{{amount}} insgesamt',
    lacks: 'Es lässt sich kein Betrag nennen; es fehlt: {{what}}',
  },
  lacking: {
    terms: 'die Bedingungen des Geschäfts',
    warranty: 'Garantiebedingungen für dieses Teil',
    price: 'der bezahlte Preis',
    day: 'der Tag des Kaufs',
  },
  interrupt: {
    heading: '{{name}}.',
    return:
      'Sagen Sie „es ist vorbei“, wenn Sie gefahrlos weitermachen können; wir machen weiter, wo wir waren.',
    prove: 'Als Nächstes weisen wir nach, dass alles in Ordnung ist.',
  },
  setAside: {
    checks_one: 'Beiseitegelegt, weil es nach der Korrektur nicht mehr gilt: {{names}}.',
    checks_other:
      'Beiseitegelegt, weil diese {{count}} Antworten nach der Korrektur nicht mehr gelten: {{names}}.',
  },
  tell: {
    person: 'Ab hier übernimmt ein Mensch. Alle Ihre bisherigen Antworten bleiben dafür erhalten.',
    stopped: 'Hier angehalten. Nichts geht verloren: Kommen Sie wieder, wann Sie möchten.',
    resumed: 'Gut. Wir machen weiter, wo wir waren.',
    withdrawn: 'Zurückgenommen. Deswegen ist nichts mehr untersagt.',
    returned: 'Zurück zur vorherigen Frage.',
    restored: 'Die Korrektur ist zurückgenommen: Alles ist wie zuvor.',
    learned: 'Das wird von hier an berücksichtigt.',
    doubt:
      'Die bisherigen Antworten passen kaum zusammen, und diese passt am wenigsten: {{name}}. Bitte sehen Sie noch einmal nach; wenn sie richtig war, sagen Sie es noch einmal.',
    checkAgainAny: 'Ein zweiter Blick lohnt sich.',
    checkAgain: 'Ein zweiter Blick lohnt sich: {{name}}.',
  },
  done: {
    'proved-repaired': 'Fertig: Das Fahrzeug springt an, und die Messungen beweisen die Reparatur.',
    unproved: 'Fertig, aber nicht bewiesen.',
    lacks: '{{end}} Für den Nachweis fehlt noch: {{checks}}.',
    'still-failing':
      'Es geht noch immer nicht, der Fehler ist also noch nicht gefunden. Lassen Sie als Nächstes eine Fachkraft nachsehen.',
    'handed-over':
      'Ab hier übernimmt ein Mensch. Zeigen oder schicken Sie ihm, was gefunden wurde, damit niemand von vorn anfängt.',
    ended: 'Dieser Fall ist abgeschlossen. Passen Sie auf sich auf.',
    decided:
      'Das ist die Entscheidung nach jetzigem Stand. Was sich später findet, kann jederzeit angegeben werden und wird dann mit abgewogen.',
  },
  refused: {
    'unknown-check': 'Eine Prüfung namens „{{given}}“ gibt es hier nicht. {{possible}}',
    'unknown-choice': '„{{given}}“ ist keine der Antworten. {{possible}}',
    'unknown-unit':
      '„{{given}}“ ist keine Zahl oder hat eine Einheit, die hier nicht bekannt ist. {{possible}}',
    'wrong-unit': '„{{given}}“ hat eine Einheit, die hier nicht passt: {{name}}. {{possible}}',
    'not-a-number': '„{{given}}“ ist keine Zahl. {{possible}}',
    implausible: '{{given}} kann hier nicht stimmen: {{name}}, {{range}}. {{help}}',
    'wrong-load':
      'Belastet wurde mit {{load}}. Die Hälfte der {{rating}} vom Etikett sind {{half}}: Stellen Sie das ein und belasten Sie noch einmal.',
    'no-such-day':
      '„{{given}}“ steht in keinem Kalender. Geben Sie {{name}} als Jahr, Monat und Tag an, etwa 2026-01-31, oder eines davon. {{possible}}',
    'day-to-come':
      '„{{given}}“ liegt noch in der Zukunft und kann für {{name}} nicht stimmen. Geben Sie den Tag an, etwa 2026-01-31. {{possible}}',
    'day-long-ago':
      '„{{given}}“ liegt zu lange zurück und kann für {{name}} nicht stimmen: Sehen Sie auf das Jahr. Geben Sie den Tag an, etwa 2026-01-31. {{possible}}',
    'no-terms':
      'Die Bedingungen dieses Geschäfts sind hier nicht bekannt, daher lässt sich nicht sagen, was {{given}} für {{name}} bedeutet. Sagen Sie, was zutrifft. {{possible}}',
    'one-choice': 'Hier gilt nur eine Antwort: {{name}}. {{possible}}',
    'not-this-kind': '„{{given}}“ ist keine Antwort auf: {{name}}. {{possible}}',
    'not-answered-yet': '{{name}}: noch nicht beantwortet, es gibt also nichts zu korrigieren.',
    'unknown-interrupt': '„{{given}}“ ist hier als Notfall nicht bekannt. {{possible}}',
    'unknown-context':
      '„{{given}}“ ist als Angabe zu Fahrzeug, Person oder Ort nicht bekannt. {{possible}}',
    'nothing-to-confirm': 'Im Moment gibt es nichts zu bestätigen.',
    'nothing-to-resume': 'Im Moment gibt es nichts, wovon wir zurückkehren könnten.',
    'resume-first':
      'Das Wichtigste zuerst: Sagen Sie „es ist vorbei“, wenn Sie gefahrlos weitermachen können, oder „Fehlalarm“, wenn es nie eine Gefahr gab.',
    'nothing-before': 'Das ist die erste Frage; davor gibt es keine.',
    'too-early':
      '{{name}}: Dafür ist es zu früh; das kommt nach dem Befund, in einer eigenen Nachricht.',
    closed: 'Dieser Fall ist abgeschlossen. Öffnen Sie einen neuen, um weiterzumachen.',
    'not-an-input': 'Das konnte nicht gelesen werden. {{possible}}',
    'clock-back':
      'Die Uhr dieses Geräts ging rückwärts. Stellen Sie sie richtig, und versuchen Sie es noch einmal.',
    range: 'der Wert liegt zwischen {{low}} und {{high}}',
    noRange: 'das zeigt dort kein Messgerät',
    likely: 'Meinten Sie {{figure}}?',
    likelyNominal:
      'Meinten Sie {{figure}}? Wenn es ein 24-V-Fahrzeug ist, sagen Sie „24 V Fahrzeug“, und nennen Sie den Wert noch einmal.',
    nominal:
      'Wenn es ein 24-V-Fahrzeug ist, sagen Sie „24 V Fahrzeug“, und nennen Sie den Wert noch einmal.',
    readAgain: 'Bitte lesen Sie noch einmal ab.',
    possible: 'Möglich: {{list}}.',
    plain:
      'Bitte versuchen Sie es noch einmal, oder sagen Sie „warum“, „weiß nicht“ oder „kann nicht“.',
    thisCheck: 'diese Prüfung',
  },
  unclear: {
    empty: 'Es wurde nichts eingegeben. {{possible}}',
    'too-long': 'Das war zu lang. Bitte sagen Sie es in einem oder zwei kurzen Sätzen.',
    'unknown-choice': '„{{given}}“ ist keine der Antworten. {{possible}}',
    'one-choice': 'Hier gilt nur eine Antwort, und „{{given}}“ nennt mehrere. {{possible}}',
    'not-a-number': '„{{given}}“ enthält keine Zahl, die sich lesen lässt. {{possible}}',
    'not-exact':
      '„{{given}}“ nennt nur eine Grenze. Bitte nennen Sie den Wert selbst. {{possible}}',
    'two-numbers':
      '„{{given}}“ nennt mehrere Werte für eine Messung. Bitte nennen Sie einen. {{possible}}',
    'unknown-unit':
      '„{{given}}“ ist keine Zahl oder hat eine Einheit, die hier nicht bekannt ist. {{possible}}',
    'which-check':
      'Es ist nicht klar, wozu {{given}} gehört, deshalb wurde nichts übernommen. {{possible}}',
    'nothing-to-confirm':
      'Im Moment gibt es nichts, wozu Sie Ja oder Nein sagen könnten. {{possible}}',
    'not-confirmed':
      'Bitte antworten Sie mit Ja, wenn Sie gefahrlos weitermachen können, oder mit „kann nicht“.',
    'not-done': 'Bitte sagen Sie „fertig“, wenn es getan ist, oder „kann nicht“.',
    'not-a-day':
      '„{{given}}“ ist als Tag nicht zu lesen. Geben Sie Jahr, Monat und Tag an, etwa 2026-01-31. {{possible}}',
    waiting: 'Die Wartezeit ist noch nicht vorbei. Sagen Sie „fertig“, wenn die Zeit um ist.',
    'not-over':
      'Bitte sagen Sie „es ist vorbei“, wenn Sie gefahrlos weitermachen können, oder „Fehlalarm“, wenn es nie eine Gefahr gab.',
    closed: 'Dieser Fall ist abgeschlossen. Öffnen Sie einen neuen, um weiterzumachen.',
    'which-language': 'Diese Sprachen gibt es hier: {{possible}}. Nennen Sie die gewünschte.',
    'not-understood': '„{{given}}“ wurde nicht verstanden. {{possible}}',
    possible: 'Möglich: {{list}}.',
    plain: 'Sie können auch „warum“, „weiß nicht“ oder „kann nicht“ sagen.',
  },
  offers: {
    ask: 'Nicht ganz klar, was gemeint ist: {{list}}?',
    askOne: 'Meinen Sie {{list}}? Sagen Sie Ja, oder sagen Sie es anders.',
    one: '„{{label}}“ ({{name}})',
    askOf: 'Nicht ganz klar, was gemeint ist ({{name}}): {{list}}?',
    answer: '„{{label}}“',
    danger: 'Zuerst zur Sicherheit: Ist das gemeint – „{{label}}“? Sagen Sie Ja oder Nein.',
  },
  source: {
    published: 'veröffentlicht',
    reported: 'veröffentlicht, nach Angabe eines anderen Textes',
    'from memory': 'aus dem Gedächtnis, nicht nachgeschlagen',
    'common practice': 'übliche Praxis, ohne Quelle',
    computed: 'berechnet',
    text: '{{founded}} ({{text}})',
  },
  drawing: {
    reading: '{{name}}: {{figure}}',
    expected: 'erwartet: {{low}} bis {{high}}',
    was: 'vorher: {{share}}',
    share: '{{name}}: {{share}}, vorher {{before}}',
    circuit: 'Der Startstromkreis',
    circuitShows:
      'Ein dickes Kabel führt von der Batterie über die Hauptsicherung zum Anlasser, ein zweites vom Motor zurück zur Batterie. Dünne Leitungen führen von der Zündung zum nächsten Schalter und weiter zum Relais, und von der Startsicherung über das Relais zum Magnetschalter.',
    probes: 'Wohin die Messleitungen kommen',
    clamp: 'So wird die Stromzange gehalten',
    clampRight:
      'Richtig: die Zange um das Minuskabel, mit allen Leitungen, die zu diesem Pol gehen.',
    clampWrong: 'Falsch: Plus und Minus zusammen. Die Zange zeigt fast nichts an.',
    places: 'Wo die Teile sitzen',
    placesShow:
      'Von oben gesehen. Kein Fahrzeug gleicht dem anderen: Die Batterie kann auch im Kofferraum oder unter einem Sitz sein.',
    red: 'rot',
    black: 'schwarz',
    suspect: 'unter Verdacht: {{name}}',
    found: 'Bisher gemessen',
    front: 'vorn',
    first: '1.',
    second: '2.',
    battery: 'Batterie',
    mainFuse: 'Haupt\u00adsicherung',
    positiveCable: 'Pluskabel',
    groundCable: 'Masse\u00adkabel',
    starter: 'Anlasser',
    solenoid: 'Magnet\u00adschalter',
    engine: 'Motor',
    gearbox: 'Getriebe',
    relay: 'Anlasser\u00adrelais',
    starterFuse: 'Start\u00adsicherung',
    ignitionSwitch: 'Zünd\u00adschalter',
    startButton: 'Start\u00adknopf',
    selectorSwitch: 'P/N-Schalter',
    clutchSwitch: 'Kupplungs\u00adpedal\u00adschalter',
    isolator: 'Batterie\u00adtrenn\u00adschalter',
    fuseBox: 'Sicherungs\u00adkasten',
  },
} as const;
