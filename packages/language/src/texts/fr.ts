/**
 * The general texts in French. Keys and placeholders are those of the English ones; the plural
 * `many` is that of millions, which reads as `other`.
 */
export const fr = {
  word: {
    danger: 'DANGER',
    warning: 'AVERTISSEMENT',
    caution: 'ATTENTION',
    notice: 'AVIS',
  },
  unit: {
    rpm: '{{figure}} tr/min',
    bare: '{{figure}}',
    any: 'un chiffre',
    anyIn: 'un chiffre ({{unit}})',
  },
  confirm: {
    ask_one:
      'Avez-vous lu cette mise en garde, et peut-on continuer sans danger ? Répondez oui, ou « je ne peux pas ».',
    ask_many:
      'Avez-vous lu ces {{count}} mises en garde, et peut-on continuer sans danger ? Répondez oui, ou « je ne peux pas ».',
    ask_other:
      'Avez-vous lu ces {{count}} mises en garde, et peut-on continuer sans danger ? Répondez oui, ou « je ne peux pas ».',
  },
  question: {
    again: 'Encore une fois : {{ask}}',
    mentioned: 'Déjà cité : {{list}}. {{ask}}',
    remembered: 'De mémoire seulement, sans le faire maintenant : {{ask}}',
    probes: 'Cordon rouge sur {{red}}, cordon noir sur {{black}}.',
    done: 'c’est fait',
    lasts: 'Cela prend environ {{time}}.',
  },
  key: {
    confirm: 'Oui, c’est sans danger',
    cannot: 'Je ne peux pas',
    dontKnow: 'Je ne sais pas',
    why: 'Pourquoi ?',
    take: 'C’est tout',
    done: 'C’est fait',
    over: 'C’est terminé',
    noDanger: 'Non, rien de cela',
    pickFirst: 'Choisissez d’abord au moins une réponse, ou celle qui dit « aucun ».',
    oldKey: 'Cette touche est celle d’une question précédente. Nous en sommes ici :',
    noPrice:
      'Aucun prix n’a été retenu. Il se met après la commande, en chiffres simples comme 119,90, là où une pièce est reprise aux conditions d’un magasin. Sans lui, aucun montant n’est donné.',
    onlyText:
      'Ici, seul le texte peut être lu, ni image ni voix. Écrivez-le en quelques mots, s’il vous plaît.',
    begin: 'Commencer un nouveau dossier',
    back: 'Retour',
    unsure: 'Je ne sais pas si mon dernier message vous est parvenu. Nous en sommes ici :',
    oldEdit:
      'Je ne sais pas quelle réponse cette modification change. Écrivez la bonne réponse dans un nouveau message qui commence par « correction ».',
    tooFast:
      'C’est plus que ce qui peut être pris à la fois, et le dernier message ne l’a pas été. Attendez une demi-minute, puis renvoyez-le.',
    readFirst: 'Cela a été écrit avant que cet avertissement puisse être lu. Lisez-le d’abord :',
    timeUp: 'Le temps est écoulé.',
    summary: 'Résumé, à transférer',
    help: 'Touchez une réponse ou écrivez-la avec vos mots, plusieurs choses à la fois si vous voulez : « 12,4 V, tourne lentement ». Vous pouvez toujours dire « pourquoi », « retour », « je ne sais pas », « je ne peux pas » ou « correction : … ». Dites le nom d’une langue pour continuer dans celle-ci. S’il y a de la fumée, une fuite de carburant ou quelqu’un en danger, dites-le tout de suite.',
    commandStart: 'Commencer, ou reprendre là où nous en étions',
    commandAgain: 'Répéter la question',
    commandNew: 'Commencer un nouveau dossier',
    commandStop: 'Mettre le dossier de côté',
    commandHelp: 'Ce que l’on peut faire ici',
  },
  vehicle: {
    taken:
      'Le dossier du véhicule est du {{day}}. Il compte si le véhicule est celui de ce client et si la pièce a été vendue avant ce jour. Sinon, corrigez-le : « correction », puis ce que dit le véhicule.',
    before:
      'Ce dossier est du {{day}}, pas postérieur à la vente du {{sold}} : il dit sur quoi la pièce a été achetée, et rien de la pièce elle-même. Rien n’a été changé.',
    otherVolts:
      'Ce dossier est celui d’un véhicule de {{found}} V, et la pièce est pour {{part}} V. Il n’est pas de ce client et a été laissé de côté.',
    damaged:
      'Des lettres du code sont fausses ou manquent. Retapez-le depuis la feuille. Rien n’a été changé.',
    tooNew: 'Une version plus récente a écrit ce code. Rien n’a été changé.',
    otherFlow:
      'Le code est d’une autre sorte de dossier. Attendu : un dossier de démarrage. Rien n’a été changé.',
    elsewhere: 'Cela désigne autre chose : {{what}}.',
    notGood: 'Pas bon : {{what}}.',
    reading: '{{name}} {{figure}} ({{what}})',
    missing: 'Pour que cela parle contre la pièce, il manque encore : {{what}}.',
    claim:
      'Contre la pièce ne parle qu’un moteur entraîné lentement, ou pas du tout ; le client dit autre chose, ou rien.',
    charging: 'La charge à elle seule ne parle jamais contre une batterie.',
    byHand: 'Compris comme des mesures du véhicule : {{what}}.',
    byHandCounts:
      'Elles comptent si la pièce était dans le véhicule lors des mesures. Sinon, corrigez : « correction », puis ce que dit le véhicule.',
  },
  wait: {
    until:
      'Attendez {{time}} avant l’étape suivante : {{name}}. Dites « c’est fait » si le temps est déjà écoulé.',
  },
  reading: {
    unjudged:
      '{{figure}} : noté. Sans en savoir plus sur ce véhicule, on ne peut pas dire ce que cela signifie.',
    plain: '{{figure}} : {{means}}',
    likely: '{{figure}} : {{share}}. C’est probable, mais pas certain.',
    borderline:
      '{{figure}} : trop juste pour trancher. {{shares}}. À partir d’ici, on garde les deux en tête.',
    between: 'Trop juste pour trancher : {{bands}}.',
    share: '{{share}} pour « {{label}} »',
    repeat: 'Relisez encore une fois, avec un contact propre et ferme, jusqu’au dernier chiffre.',
    settles: 'Ce qui peut trancher : {{name}}.',
    expected: 'Attendu sur ce véhicule quand tout va bien : de {{low}} à {{high}}.',
  },
  numbers: {
    none: 'Aucune valeur n’a encore été mesurée avec un appareil.',
    reading: '{{name}} : {{figure}} ± {{spread}}',
    shares: 'Cela donne : {{shares}}.',
    share: '{{label}} {{share}}',
    losses: 'Où se perdent les volts',
    loss: '{{part}} : {{loss}} ± {{spread}}, {{share}} de la perte trouvée',
    lossResistance:
      '{{part}} : {{loss}} ± {{spread}}, {{resistance}}, {{share}} de la perte trouvée',
    atMotor: '{{volts}} arrivent au moteur du démarreur.',
    battery: 'Dans la batterie',
    positive: 'Côté plus',
    ground: 'Côté masse',
    contacts: 'Contacts du solénoïde',
  },
  noted: {
    answer: '{{name}} : {{answer}}.',
    notKnown: '{{name}} : pas connu.',
  },
  ranking: {
    heading_one: 'Ce qui correspond le mieux',
    heading_many: 'Les {{count}} causes qui correspondent le mieux',
    heading_other: 'Les {{count}} causes qui correspondent le mieux',
  },
  why: {
    none: 'Le résultat de « {{name}} » décide de ce qu’il faut faire ensuite.',
    outcome: 'Si la réponse est « {{label}} », le plus probable : {{faults}}.',
    nothing: 'Si la réponse est « {{label}} », cela ne dit rien sur la cause.',
    fault: '{{name}} ({{share}})',
    bound: 'Limite à {{figure}} : {{source}}.',
    zone: 'Limite entre {{low}} et {{high}} : {{source}}.',
    expected: 'Attendu quand tout va bien : de {{low}} à {{high}}, {{source}}.',
    worth:
      'Cela vient maintenant parce que c’est ce qui en dit le plus pour le temps passé : il faut {{minutes}}, et continuer ainsi devrait épargner {{saves}} de travail et d’erreurs par rapport à une décision immédiate.',
    proves: 'Cela vient maintenant pour prouver ce qui est déjà probable ; il faut {{minutes}}.',
    goesOn: 'Si la réponse est « {{label}} » : les questions continuent.',
    decides: 'Si la réponse est « {{label}} » : {{decision}}.',
  },
  weights: {
    heading: 'Ce qui parle pour et contre : {{name}} (10 points : dix fois plus probable)',
    finding: '{{name}} : {{answer}}',
    known: 'Ce qu’on sait du véhicule, du lieu et du temps qu’il fait',
    for: '+{{weight}}  {{finding}}',
    against: '-{{weight}}  {{finding}}',
    otherwise: '{{text}}. Sans cela, viendrait en premier : {{other}}',
  },
  verdict: {
    title: 'En cause : {{name}}',
    titleLikely: 'Le plus probablement en cause : {{name}}',
    titleOpen: 'Pas encore tranché : {{name}} vient en premier',
    proved: 'Prouvé par la mesure.',
    likely: 'Probable, non prouvé : {{share}} d’après ce qu’on sait maintenant.',
    likelySettle:
      'Probable, non prouvé : {{share}} d’après ce qu’on sait maintenant. Pour trancher : {{checks}}.',
    open: 'Ouvert : aucune cause ne se détache. {{ranking}}. Quelqu’un de mieux équipé doit regarder ensuite.',
    rests: 'Sur quoi cela repose',
    finding: '{{name}} : {{answer}}',
    restsOnShares:
      'Aucune constatation ne le prouve à elle seule. Ce qui correspond le mieux jusqu’ici : {{ranking}}.',
    do: 'Que faire',
    waitSafe:
      'Attendez là où vous êtes en sécurité, loin de la circulation, derrière la glissière s’il y en a une.',
    waitWork:
      'Ne faites rien sur le véhicule ici, pas même sous le capot : ce travail revient à ceux qui viennent vous aider.',
    waitSent: 'De l’aide vous est envoyée. Gardez le téléphone avec vous.',
    waitCall:
      'L’aide doit venir à vous. Si elle n’a pas encore été appelée, appelez-la maintenant et dites où vous êtes : route, sens, repère le plus proche.',
    also: 'Ce qui est aussi en cause, à réparer ensuite',
    alsoText: '{{name}}. Les deux à la fois, c’est ce qui correspond le mieux ({{share}}).',
    send: 'Qui doit venir',
    roots: 'Pourquoi c’est arrivé',
    rootsLikely: 'Ce qui a pu en être la cause',
    licensed: 'Qui doit faire le travail',
    licensedText:
      'C’est un travail pour un atelier agréé ou spécialisé. Les règles locales et les professionnels habilités passent d’abord.',
    change: 'Ce qui changerait cette conclusion',
    settle: '{{name}}.',
    settleLacks: '{{name}} : il faut {{kit}}.',
    nothingSettles: 'Seulement une constatation qui contredit celles ci-dessus.',
    stops: 'Ce qu’il ne faut pas faire',
  },
  decision: {
    do: 'Que faire maintenant',
    again: 'Répondez ensuite de nouveau : {{names}}. Tout le reste est conservé.',
    rests: 'Sur quoi cela repose',
    borderline: 'trop juste pour trancher',
    unanswered: 'n’a pas pu être établi',
    change: 'Ce qui aurait changé la décision',
    changed: '{{name}} : avec « {{answers}} », la décision aurait été : {{decision}}.',
    measure: 'À mesurer sur le véhicule avant de monter une autre pièce',
    rights: 'Vos droits',
    law: 'Le droit de la consommation de votre pays passe avant : rien de ce qui est dit ici ne vous enlève un droit qu’il vous donne.',
    short: '{{decision}} ({{reason}})',
  },
  refund: {
    heading: 'Ce qui est remboursé',
    price: '{{amount}} payés pour la pièce',
    restocking: '{{amount}} retenus pour frais de remise en stock',
    restockingShare: '{{amount}} : {{share}} du prix retenus pour frais de remise en stock',
    usedShare:
      '{{amount}} retenus : après {{months}} mois d’usage, {{share}} du prix sont remboursés',
    usedMonths:
      '{{amount}} retenus : après {{months}} mois d’usage, il reste {{left}} mois sur {{of}}',
    deposit: '{{amount}} de consigne pour l’ancienne pièce',
    depositOpen:
      'Consigne pour l’ancienne pièce : on ne sait pas si elle est encore retenue ; si oui, elle s’ajoute',
    total: '{{amount}} en tout',
    lacks: 'Aucun montant ne peut être indiqué ; il manque : {{what}}',
  },
  lacking: {
    terms: 'les conditions du magasin',
    warranty: 'des conditions de garantie pour cette pièce',
    price: 'le prix payé',
    day: 'le jour de la vente',
  },
  interrupt: {
    heading: '{{name}}.',
    return:
      'Dites « c’est fini » quand on peut continuer sans danger ; nous reprendrons où nous en étions.',
    prove: 'Nous vérifions ensuite que tout va bien.',
  },
  setAside: {
    checks_one: 'Mis de côté, car cela ne tient plus après la correction : {{names}}.',
    checks_many:
      'Mis de côté, car ces {{count}} réponses ne tiennent plus après la correction : {{names}}.',
    checks_other:
      'Mis de côté, car ces {{count}} réponses ne tiennent plus après la correction : {{names}}.',
  },
  tell: {
    person:
      'Une personne prend le relais ici. Toutes vos réponses jusqu’à présent lui sont gardées.',
    stopped: 'Arrêté ici. Rien n’est perdu : revenez quand vous voulez.',
    resumed: 'Bien. Nous reprenons où nous en étions.',
    withdrawn: 'C’est retiré. Plus rien n’est interdit à ce titre.',
    returned: 'Retour à la question précédente.',
    restored: 'La correction est annulée : tout est comme avant.',
    learned: 'On en tient compte à partir de maintenant.',
    doubt:
      'Les réponses données jusqu’ici vont mal ensemble, et celle-ci va le moins bien : {{name}}. Regardez encore une fois ; si elle était juste, redites-la.',
    checkAgainAny: 'Un second regard en vaut la peine.',
    checkAgain: 'Un second regard en vaut la peine : {{name}}.',
  },
  done: {
    'proved-repaired': 'Terminé : il démarre, et les mesures prouvent la réparation.',
    unproved: 'Terminé, mais non prouvé.',
    lacks: '{{end}} Il manque encore pour la preuve : {{checks}}.',
    'still-failing':
      'La panne est toujours là, le défaut n’est donc pas encore trouvé. Faites regarder un technicien.',
    'handed-over':
      'À partir d’ici, une personne prend le relais. Montrez-lui ou envoyez-lui ce qui a été constaté, pour que personne ne reparte de zéro.',
    ended: 'Ce cas est clos. Restez prudent.',
    decided:
      'Voilà la décision en l’état. Ce qui sera trouvé plus tard peut être donné à tout moment et sera alors pesé avec le reste.',
  },
  refused: {
    'unknown-check': 'Il n’y a pas ici de contrôle appelé « {{given}} ». {{possible}}',
    'unknown-choice': '« {{given}} » n’est pas l’une des réponses. {{possible}}',
    'unknown-unit': '« {{given}} » n’est pas un chiffre, ou a une unité inconnue ici. {{possible}}',
    'wrong-unit': '« {{given}} » a une unité qui ne convient pas pour {{name}}. {{possible}}',
    'not-a-number': '« {{given}} » n’est pas un chiffre. {{possible}}',
    implausible: '{{given}} ne peut pas être juste pour {{name}} : {{range}}. {{help}}',
    'wrong-load':
      'La charge était de {{load}}. La moitié des {{rating}} de l’étiquette fait {{half}} : réglez cela, et chargez encore une fois.',
    'no-such-day':
      '« {{given}} » n’est pas un jour du calendrier. Donnez {{name}} avec année, mois et jour, comme 2026-01-31, ou l’une de ces réponses. {{possible}}',
    'day-to-come':
      '« {{given}} » est encore à venir et ne peut pas convenir pour {{name}}. Donnez le jour, comme 2026-01-31. {{possible}}',
    'day-long-ago':
      '« {{given}} » est trop ancien et ne peut pas convenir pour {{name}} : regardez l’année. Donnez le jour, comme 2026-01-31. {{possible}}',
    'no-terms':
      'Les conditions de ce magasin ne sont pas connues ici : impossible de dire ce que {{given}} signifie pour {{name}}. Dites ce qui convient. {{possible}}',
    'one-choice': 'Une seule réponse vaut pour {{name}}. {{possible}}',
    'not-this-kind': '« {{given}} » ne répond pas à {{name}}. {{possible}}',
    'not-answered-yet': '{{name}} n’a pas encore de réponse, il n’y a donc rien à corriger.',
    'unknown-interrupt': '« {{given}} » n’est pas connu ici comme urgence. {{possible}}',
    'unknown-context':
      '« {{given}} » n’est pas connu à propos d’un véhicule, d’une personne ou d’un lieu. {{possible}}',
    'nothing-to-confirm': 'Il n’y a rien à confirmer pour le moment.',
    'nothing-to-resume': 'Il n’y a rien à reprendre pour le moment.',
    'resume-first':
      'Chaque chose en son temps : dites « c’est fini » quand on peut continuer sans danger, ou « fausse alerte » s’il n’y a jamais eu de danger.',
    'nothing-before': 'C’est la première question ; il n’y en a pas avant.',
    'too-early':
      'Il est trop tôt pour {{name}} : cela vient après la conclusion, dans un message à part.',
    closed: 'Ce cas est clos. Ouvrez-en un nouveau pour continuer.',
    'not-an-input': 'Cela n’a pas pu être lu. {{possible}}',
    'clock-back':
      'L’horloge de cet appareil est revenue en arrière. Remettez-la à l’heure et réessayez.',
    range: 'la valeur se situe entre {{low}} et {{high}}',
    noRange: 'aucun appareil n’affiche cela à cet endroit',
    likely: 'Vouliez-vous dire {{figure}} ?',
    likelyNominal:
      'Vouliez-vous dire {{figure}} ? Si c’est un véhicule 24 V, dites « véhicule 24 V » et redonnez la valeur.',
    nominal: 'Si c’est un véhicule 24 V, dites « véhicule 24 V » et redonnez la valeur.',
    readAgain: 'Relisez, s’il vous plaît.',
    possible: 'Possible : {{list}}.',
    plain: 'Réessayez, ou dites « pourquoi », « je ne sais pas » ou « je ne peux pas ».',
    thisCheck: 'ce contrôle',
  },
  unclear: {
    empty: 'Rien n’a été écrit. {{possible}}',
    'too-long': 'C’était trop long pour être compris. Dites-le en une ou deux phrases courtes.',
    'unknown-choice':
      '« {{given}} » n’a pas été compris comme réponse à cette question. {{possible}}',
    'one-choice': 'Une seule réponse vaut ici, et « {{given}} » en nomme plusieurs. {{possible}}',
    'not-a-number': '« {{given}} » ne contient aucun chiffre lisible. {{possible}}',
    'not-exact': '« {{given}} » ne donne qu’une limite. Donnez la valeur elle-même. {{possible}}',
    'two-numbers':
      '« {{given}} » contient plusieurs valeurs pour une seule mesure. Donnez-en une. {{possible}}',
    'unknown-unit': '« {{given}} » n’est pas un chiffre, ou a une unité inconnue ici. {{possible}}',
    'which-check':
      'On ne sait pas à quoi se rapporte {{given}}, rien n’a donc été noté. {{possible}}',
    'nothing-to-confirm': 'Il n’y a rien à quoi répondre oui ou non pour le moment. {{possible}}',
    'not-confirmed': 'Répondez oui quand on peut continuer sans danger, ou « je ne peux pas ».',
    'not-done': 'Dites « c’est fait » quand c’est fait, ou « je ne peux pas ».',
    'not-a-day':
      '« {{given}} » ne se lit pas comme un jour. Donnez année, mois et jour, comme 2026-01-31. {{possible}}',
    waiting: 'L’attente n’est pas finie. Dites « c’est fait » quand le temps est écoulé.',
    'not-over':
      'Dites « c’est fini » quand on peut continuer sans danger, ou « fausse alerte » s’il n’y a jamais eu de danger.',
    closed: 'Ce cas est clos. Ouvrez-en un nouveau pour continuer.',
    'which-language':
      'Voici les langues disponibles : {{possible}}. Dites le nom de celle que vous voulez.',
    'not-understood': '« {{given}} » n’a pas été compris. {{possible}}',
    possible: 'Réponses possibles : {{list}}.',
    plain: 'Vous pouvez aussi dire « pourquoi », « je ne sais pas » ou « je ne peux pas ».',
  },
  offers: {
    ask: 'On n’est pas sûr de ce que vous voulez dire : {{list}} ?',
    askOne: 'Voulez-vous dire {{list}} ? Répondez « oui », ou dites-le autrement.',
    one: '« {{label}} » ({{name}})',
    askOf: 'On n’est pas sûr de ce que vous voulez dire ({{name}}) : {{list}} ?',
    answer: '« {{label}} »',
    danger:
      'D’abord, pour votre sécurité : est-ce bien cela – « {{label}} » ? Répondez « oui » ou « non ».',
  },
  source: {
    published: 'publié',
    reported: 'publié, d’après un autre texte',
    'from memory': 'de mémoire, non vérifié',
    'common practice': 'pratique courante, sans source',
    computed: 'calculé',
    text: '{{founded}} ({{text}})',
  },
  drawing: {
    reading: '{{name}} : {{figure}}',
    expected: 'attendu : de {{low}} à {{high}}',
    was: 'avant : {{share}}',
    share: '{{name}} : {{share}}, avant {{before}}',
    circuit: 'Le circuit de démarrage',
    circuitShows:
      'Un gros câble va de la batterie au démarreur par le fusible principal, un autre revient du moteur à la batterie. Des fils fins vont du contact à l’interrupteur suivant puis au relais, et du fusible de démarrage au solénoïde par le relais.',
    probes: 'Où vont les cordons de l’appareil',
    clamp: 'Comment tenir la pince ampèremétrique',
    clampRight:
      'Juste : la pince autour du câble moins, avec tous les fils qui vont à cette borne.',
    clampWrong: 'Faux : plus et moins ensemble. La pince n’affiche presque rien.',
    places: 'Où se trouvent les pièces',
    placesShow:
      'Vu de dessus. Aucun véhicule n’est pareil : la batterie peut aussi être dans le coffre ou sous un siège.',
    red: 'rouge',
    black: 'noir',
    suspect: 'soupçonné : {{name}}',
    found: 'Mesuré jusqu’ici',
    front: 'avant',
    first: '1re',
    second: '2e',
    battery: 'batterie',
    mainFuse: 'fusible principal',
    positiveCable: 'câble plus',
    groundCable: 'câble de masse',
    starter: 'démarreur',
    solenoid: 'solénoïde',
    engine: 'moteur',
    gearbox: 'boîte de vitesses',
    relay: 'relais de démarrage',
    starterFuse: 'fusible de démarrage',
    ignitionSwitch: 'contacteur à clé',
    startButton: 'bouton de démarrage',
    selectorSwitch: 'contacteur P/N',
    clutchSwitch: 'contacteur d’embrayage',
    isolator: 'coupe-batterie',
    fuseBox: 'boîte à fusibles',
  },
} as const;
