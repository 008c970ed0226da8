import { list } from './list.ts';
import type { Words } from './words.ts';

/** French as it is typed at the roadside in France, Belgium, Switzerland, Québec and the Maghreb. */
export const frWords: Words = {
  spelling: {
    letters: [
      ['pour cent', '%'],
      // A fuel, of which nothing is denied.
      ['sans plomb', 'sansplomb'],
      // No minus: "plus ou moins 12".
      ['plus ou moins', 'environ'],
      // New, and no nine.
      ['cable neuf', 'cable nouveau'],
      ['fil neuf', 'fil nouveau'],
      ['est neuf', 'est nouveau'],
      ['relais neuf', 'relais nouveau'],
      ['demarreur neuf', 'demarreur nouveau'],
      // Elided without a mark.
      ['jai ', 'j ai '],
      ['cest ', 'c est '],
      ['sest ', 's est '],
      ['jentend', 'j entend'],
      ['jarrive', 'j arrive'],
      ['jessa', 'j essa'],
    ],
    elides: true,
    denyBefore: ['pas', 'jamais'],
    refusals: ['non', 'nan'],
    vigesimal: true,
  },
  cardinals: {
    dizaine: 10,
    quinzaine: 15,
    vingtaine: 20,
    quatorzaine: 14,
    'une décennie': 10,
    zéro: 0,
    un: 1,
    une: 1,
    'un demi': 1 / 2,
    'une demie': 1 / 2,
    'un quart': 1 / 4,
    'une huitaine': 8,
    'une dizaine': 10,
    'une douzaine': 12,
    'une quinzaine': 15,
    'une vingtaine': 20,
    'une trentaine': 30,
    'une quarantaine': 40,
    'une cinquantaine': 50,
    'une centaine': 100,
    deux: 2,
    trois: 3,
    quatre: 4,
    cinq: 5,
    six: 6,
    sept: 7,
    huit: 8,
    neuf: 9,
    dix: 10,
    onze: 11,
    douze: 12,
    treize: 13,
    quatorze: 14,
    quinze: 15,
    seize: 16,
    'dix sept': 17,
    'dix huit': 18,
    'dix neuf': 19,
    vingt: 20,
    trente: 30,
    quarante: 40,
    cinquante: 50,
    soixante: 60,
    septante: 70,
    'quatre vingt': 80,
    'quatre vingts': 80,
    huitante: 80,
    octante: 80,
    nonante: 90,
  },
  scales: { cent: 100, cents: 100, mille: 1000, décennies: 10 },
  decimalZero: [],
  point: ['virgule', 'point'],
  joins: ['et'],
  articles: ['de', 'd', 'a', 'ma'],
  partitive: ['de', 'd'],
  fractions: {
    dixième: 1 / 10,
    dixièmes: 1 / 10,
    centième: 1 / 100,
    centièmes: 1 / 100,
    moitié: 1 / 2,
    demi: 1 / 2,
    demie: 1 / 2,
    demis: 1 / 2,
    quart: 1 / 4,
    quarts: 1 / 4,
  },
  below: [
    'en dessous de zéro',
    'sous zéro',
    'en dessous',
    'négatif',
    'au dessous de zéro',
    'sous le zéro',
    'en dessous du zéro',
  ],
  minus: ['moins'],
  days: {
    back: { "aujourd'hui": 0, 'ce matin': 0, hier: 1, 'avant hier': 2 },
    times: list(`
      hier, hier soir, avant hier, aujourd hui, ce matin, ce soir, cette nuit, a matin, toute la journée
    `),
    day: list(`jour, jours`),
    week: list(`semaine, semaines`),
    ago: list(`il y a`),
    last: list(`dernier, dernière, passé, passée, précédente`),
    seasons: list(
      `hiver, cet été, l été, été dernier, été passé, printemps, automne, Noël, Pâques`,
    ),
    weekdays: {},
  },
  ordinals: {
    premier: 1,
    première: 1,
    deuxième: 2,
    second: 2,
    seconde: 2,
    troisième: 3,
    quatrième: 4,
    cinquième: 5,
    sixième: 6,
    septième: 7,
    huitième: 8,
    neuvième: 9,
    dixième: 10,
    onzième: 11,
    douzième: 12,
  },
  grouping: ' ',
  units: {
    V: list(`
      v, volt, volts, vols, voltes, vdc, v dc, vcc, volts dc, volts continu, volts en continu
    `),
    mV: ['mv', 'milli', 'millis', 'milli volts', 'millivolt', 'millivolts'],
    A: list(`
      a, amp, amps, ampère, ampères, cca, a cca, a en, a au, a et, a sous, a pendant, a avec,
      a lors, a quand, ampères cca, ampères en, ampères au démarrage
    `),
    kA: ['ka', 'kiloampère', 'kiloampères'],
    mA: ['ma', 'milliampère', 'milliampères', 'milliamp', 'milliamps'],
    'A.h': ['ah', 'ampères heure', 'ampère heure', 'ampères heures', 'ampèreheures'],
    Ohm: ['ω', 'ohm', 'ohms'],
    mOhm: list(`
      mω, mohm, mohms, milliohm, milliohms, milli ohms
    `),
    Cel: list(`
      cel, °c, c, celsius, degré celsius, degrés celsius, deg c, degrés c, centigrades,
      degrés centigrades
    `),
    '[degF]': list(`
      °f, f, fahrenheit, degrés fahrenheit, deg f, degrés f
    `),
    'N.m': list(`
      nm, n m, newton mètre, newton mètres, newtons mètres
    `),
    '[lbf_av].[ft_i]': list(`
      lbf ft, lb ft, lbs ft, ft lb, ft lbs, pied livre, pieds livres, livre pied, livres pieds
    `),
    '[lbf_av].[in_i]': list(`
      lbf in, lb in, in lb, in lbs, pouce livre, pouces livres, livres pouces
    `),
    'kgf.m': ['kgf m', 'kg m', 'kgm', 'mkg', 'm kg'],
    ms: ['ms', 'milliseconde', 'millisecondes'],
    s: ['s', 'sec', 'secs', 'seconde', 'secondes'],
    min: ['min', 'mins', 'mn', 'minute', 'minutes'],
    h: ['h', 'heure', 'heures'],
    d: ['j', 'jour', 'jours', 'journée', 'journées'],
    wk: ['sem', 'semaine', 'semaines'],
    mo: ['mois'],
    a: list(`
      an, ans, année, années, bonnes années, ans environ, ans et quelques, hivers
    `),
    Hz: ['hz', 'hertz'],
    '/min': list(`
      tr min, trs min, t min, tr mn, tours, tours minute, tours par minute, tours la minute, rpm,
      trs, tr
    `),
    L: ['l', 'litre', 'litres'],
    W: ['w', 'watt', 'watts'],
    kW: ['kw', 'kilowatt', 'kilowatts'],
    bar: ['bar', 'bars'],
    kPa: ['kpa'],
    '[psi]': ['psi'],
    '%': ['%', 'pourcent', 'pour cent', 'pourcents'],
  },
  bareUnits: ['degrés', 'degré', 'deg', '°'],
  boundsOnly: list(`
    moins d, plus d, moins de, moins que, plus de, plus que, inférieur à, supérieur à, en dessous de, au dessus de,
    sous les, sous la barre des, au moins, au plus, au maximum, au minimum, maximum, minimum,
    jusqu à, même pas, pas même, dépasse, pas plus de, pas moins de
  `),
  nearly: list(`
    peu, juste, légèrement, poil, tout juste, chouïa, tantinet, petit peu
  `),
  vague: list(`
    quelques, plusieurs, et quelques, et des poussières, quelque chose, virgule quelque chose, et quelque chose, et un peu, et des brouettes, et une poussière, virgule quelques, et un chouïa, et un poil, et un petit peu, et des, et quelque, et quelques broutilles, et plus, un peu plus, un poil plus, et un peu plus, et des miettes
  `),
  besideFigures: list(`
    ok,
    sert, à, au, aux, ou, en, dans, sur, sous, avec, sans, quand, pendant, lors, lorsque, durant, après,
    avant, entre, depuis, pour, de, d, du, des, par, ici, là, dehors, aujourd, hui, exactement,
    stable, fixe, pile, je, j, il, elle, on, c, ce, est, était, et, mais, puis, ensuite, le, la,
    les, l, maintenant, merci, svp, stp, seulement, encore, environ, voilà, dis, reste, mesuré,
    mesurés, lus, affiché, affichés, multimètre, voltmètre, appareil, pince, total, continu, dc,
    aux bornes, chaque, fois, que, qui, affiche, indique, donne, marque, fait, a, remplacer, recharger, faible, à remplacer, peine, mini, maxi, mini mini, rien, nada, walou, pointé, patate
  `),
  figureWords: {
    asideBefore: list(`
      broche, broches, borne, bornes, calibre, calibre de, gamme, position, cylindre, élément, pic à, pointe à, pointe de, pic de, pic, modèle, année, payé, payée, payer, crête, réglé sur, réglée sur, réglé sur le, réglé à, mis sur, sur le calibre, niveau, étage, sous sol, garantie, garantie de, garanti, garantie pour, câble de
    `),
    asideBehind: list(`
      heures, h, heure, fois, essais, essai, tentatives, tentative, éléments, cylindres, portes, euros, euro, francs, dollars, balles, kilomètres, km, mètres, mesures, personnes, fils, câbles, plots, du matin, du soir, de l après-midi, digits, points, dc, en continu, continu, cette nuit, la nuit, dans la nuit, coups, prises, passages, lectures, tentative, e tentative, de garantie, garantie, carrés, carré, mm carrés, mm2, mm
    `),
    engine: list(`
      essence, diesel, moteur, litres, tdi, hdi, dci, turbo, gasoil, cylindrée
    `),
    instead: list(`
      non attends, attends, attendez, pardon, euh non, non, enfin, je veux dire, je voulais dire, oups, houla, désolé, désolée, correction, erreur, je me trompe, je corrige, en fait, je rectifie, me suis trompé, non pardon, mal lu, euh, faux, disons, exactement, on va dire, mettons, pour être précis, précisément, plus exactement, ou plutôt, plus juste, ou plus juste, corrige
    `),
    settles: list(`
      allez, mettez, mets, note, notez, dis, disons plutôt
    `),
    again: list(`
      deux fois, 2 fois, l autre fois, une autre fois, deuxième fois, deuxième mesure, deuxième essai, seconde fois, lequel, laquelle, je prends quoi, je garde quoi, d abord
    `),
    unsteady: list(
      `ça saute, ça change tout, ça change sans, n'arrête pas de changer, arrête pas de changer, arrête pas de bouger, ça bouge tout, ça varie, ça danse, ça oscille, oscille entre, fait le yoyo, saute entre, varie entre`,
    ),
    undecided: list(
      `je sais pas lequel, je ne sais pas lequel, je sais pas laquelle, je ne sais pas laquelle, lequel est bon, laquelle est bonne, lequel compte, au choix, choisissez, à vous de choisir, sais plus lequel`,
    ),
    between: list(`entre`),
    past: list(`
      hier, hier soir, avant, tout à l heure, la semaine dernière, c était, était, avant-hier, au début, au départ, cette nuit, affichait, avait, auparavant, faisait, étaient, avant ça, la dernière fois, donnait, d abord, commence à, commençait à, partait de, débutait à, tait, quand elle était neuve, neuve, j ai dit, disais, j ai mis, l ancienne, la précédente, la vieille
    `),
    present: list(`
      maintenant, aujourd hui, à présent, actuellement, ce matin, en ce moment, à la fin, au final, finalement, pour finir, finit à, en dernier, bien mesuré, mesuré correctement, cette fois, dehors
    `),
    expected: list(`
      devrait, censé, censée, au lieu de, normalement, attendais, attendait, à la place de, à la place des, à la place du, contre, par rapport à, comparé à, au lieu des, au lieu du, devrais, devraient, aurais dû, aurait dû, faudrait, limite, idéalement, il faut, il en faut, faut, d habitude, habituellement, en principe, le manuel, la notice, le bouquin, annonçaient, ils annoncent, prévoyaient, prévu
    `),
    felt: list(`
      ressenti, ressentie, on dirait, au vent, avec le vent, en ressenti
    `),
    concludes: list(`
      donc, soit, du coup, ce qui fait, ça fait
    `),
    changes: list(`
      chute, chuté, tombe, tombé, descend, descendu, baisse, baissé, passe, passé, passait, va, monte, monté, remonte, plonge, s effondre, s écroule, dégringole, se stabilise à, stabilisé à, se stabilise, se cale à, s établit à, stabilise à, reste à, retombe à, jusqu à, descendant, tombant
    `),
    from: list(`
      de, d
    `),
    until: list(`
      jusqu à, jusqu a
    `),
    barely: list(`plus que`),
    moments: list(`
      pendant, quand, lorsque, lorsqu, alors, tandis, au, en, avec mon, avec ma, avec le, avec la, dès
    `),
    after: list(`
      après, depuis, depuis que, après avoir
    `),
    unread: list(`
      ol, o l, n affiche rien, affiche rien, rien ne s affiche, rien s affiche, rien à l écran, rien sur l écran, écran vide, écran noir, écran blanc, écran éteint, ne lit rien, ne montre rien, n indique rien, indique rien, aucune valeur, pas de valeur, aucune lecture, pas de lecture, des tirets, que des tirets, ça saute, n arrête pas de bouger, aucun chiffre, surcharge, hors gamme, dépassement
    `),
    thousand: list(`k, kv, ka, kilo, kilometer, kilovolt, kilovolts, kiloampère, kiloampères`),
    display: list(`
      écran, afficheur, multimètre, voltmètre, appareil, affichage
    `),
    measured: list(`mesuré, mesure, relevé`),
    otherMeters: list(`
      pèse-acide, pese acide, densimètre, densité, hydromètre, acide, réfractomètre
    `),
    label: list(`
      étiquette, étiquette dit, étiquette indique, étiquette annonce, étiquette affiche, étiquette porte, autocollant, autocollant dit, nominal, nominale, nominaux, marqué dessus, écrit dessus, plaque, imprimé dessus, inscrit dessus, marqué sur la batterie, est marqué, marquée, inscrit, inscrite, indiquée, sur l étiquette, annoncée, donnée pour, la batterie dit, écrit sur la batterie, sur la batterie c est écrit, sur la batterie, dessus c est marqué, dessus il est marqué, c est écrit, marqués, marquées, inscrits
    `),
    outOf: list(`
      sur, de, pour
    `),
    above: list(`
      au dessus de zéro, au-dessus de zéro, positif
    `),
    less: list(`
      moins
    `),
    oneBefore: list(`
      il y a un, un, une, environ un, environ une
    `),
    oneBehind: [],
    cranking: list(`
      démarr, lanc, clé, clef, tourn, contact
    `),
    standing: list(`
      immobil, garé, stationn, roul, bouge, touch, arrêt
    `),
    vehicle: list(`
      voiture, auto, char, caisse, bagnole, véhicule, camion, fourgon, utilitaire, camionnette, tracteur, moto
    `),
    battery: list(`
      batterie, accu, batteries, bat
    `),
    worse: list(`
      pire, pires, plus mauvais, plus mauvaise, plus grand, plus grande, plus élevé, plus élevée, plus forte, plus fort
    `),
    clock: list(`
      il est, il est midi
    `),
    sides: list(`
      plus, moins, positif, positive, négatif, négative, rouge, noir, noire, masse, autre
    `),
    difference: list(`
      écart, différence, diffèrent, d écart
    `),
    swapped: list(`
      à l envers, inversé, inversée, inversés, inversées, inverse, croisé, croisés, interverti, intervertis, invers, interver, crois, confond, permut, trompé de, contraire, mal branché, mauvais sens
    `),
    roughly: list(`
      environ, presque, à peu près, autour de, dans les, vers, quasiment, pas loin de, près de, quasi, pas tout à fait, tout près de, un peu moins de
    `),
    recovers: list(`
      remont, revien, retour, relâch, lâch, repass, retrouv, redevien, reprend
    `),
    climbs: list(`
      monte, va, passe, dépasse, grimpe
    `),
    pair: list(`
      deux batteries, les deux batteries, les deux ensemble, en série, c est du 24 volts, du 24 volts, les deux, la paire, paire, des deux, deux à la suite
    `),
    onto: list(`
      à
    `),
    round: list(`
      rond, ronds, tout rond, tout ronds, pile, entiers, juste, tout juste, net, bien ronds, et un chouïa, ou quelque chose, ou par là
    `),
    ratedAt: list(`
      pour une, sur une, sur la, sur du, pour du, d une, c est une, dans une, batterie de, sur une batterie de, bobine de, relais de
    `),
    allOff: list(`
      tout éteint, tout est éteint, tout coupé, tout est coupé, tout à l arrêt, contact coupé, moteur coupé, moteur éteint, rien d allumé, au repos, à vide, à l arrêt, à l arret, tout arrêté, tout débranché, sans charge, sans rien
    `),
  },
  negators: list(`
    pas, ne, n, rien, jamais, aucun, aucune, aucuns, nul, nulle, ni, sans
  `),
  exceptives: {
    behind: list(`n, ne, rien`),
    between: list(
      `ai, as, a, avons, avez, ont, avais, avait, y, fait, font, faisait, reste, me, m, nous, plus, d, autre`,
    ),
    words: list(`que, qu`),
  },
  subjects: list(
    `juste, seulement, plutôt, simplement, je, j, on, il, elle, ils, elles, ça, ca, nous, c, y`,
  ),
  sayings: list(`
    je fume, je fumais, pour fumer, fumer une, fumer un, fume une, fume sa, collègue qui fume, collègue fume, voisin qui fume,
    voisin fume, voisine qui fume, mari qui fume, mari fume, femme qui fume, femme fume, copain qui fume, copain fume,
    fumée ? non, feu ? non, flammes ? non, fuite ? non, camion ici, poids lourd ici, fils qui fume, père qui fume, frère qui fume, client qui fume,
    coup d oeil, coups d oeil, coup de main, coups de main, coup de pouce, donner la main, prêter main forte, filer la main, feu mon, feu ma, feu mes, feu notre, feu son, feu sa, s arracher les bras, m arracher les bras,
    m arracher l épaule, se casser le dos, me casser le dos, casser la tête, casse la tête, cassé la
    tête, casse les pieds, casser les pieds, la main à couper, coûte un bras, coûté un bras, pris la
    tête, prend la tête, prise de tête, bon sang, mauvais sang, sang d encre, péter un câble, pète
    un câble, pété un câble, pas le feu au lac, a pas le feu, arrache les cheveux, arracher les
    cheveux, du feu de dieu, que du feu, dur de la feuille, mal de chien, j ai un extincteur, fumer
    la moquette, répond plus quand je tourne, répond pas quand je tourne, répond plus quand j appuie,
    répond pas quand j appuie, répond plus quand je démarre, répond plus à la clé, répond pas à la
    clé, réagit plus à la clé, réagit plus quand je tourne, voiture ne répond plus, voiture répond plus
  `),
  asides: list(`
    je n en peux plus, j en peux plus, j en ai marre, j en ai assez, je suis à bout, je suis dégoûté,
    à la place, à sa place, si cela peut aider, si cela peut vous aider, si ça peut vous aider, si cela aide, si ça t aide,
    si ça sert à quelque chose, pour votre information, entre parenthèses, soit dit en passant,
    au fait, d’ailleurs, si ça aide, si ça peut aider, si ça vous aide, si ça sert, au cas où,
    pour info, pour information, je précise que, à préciser, je dirais, j aurais dit, à mon avis, si jamais ça aide, si c’est important
  `),
  likewise: [
    'aussi',
    'pareil',
    'de même',
    'même chose',
    'idem',
    'également',
    'non plus',
    'la même chose',
    'pareillement',
    'tout pareil',
  ],
  untried: list(`
    tout seul, toute seule, d'elle-même, de lui-même, d'elle même, de lui même, oubliez, oubliez
    tout, oubliez ça, oublie, oublie tout, oublie ça, laissez tomber, laisse tomber, laisse
    béton, plus besoin, plus la peine, pas la peine, pas besoin, inutile, c'est plus la peine,
    finalement, fausse alerte, annulez, annule, annulez tout, sans rien faire, sans rien
    toucher, j'ai rien fait, je n'ai rien fait, rien touché, avant que, avant même, même pas eu
    le temps, pas eu le temps, comme par magie, par miracle, miracle, sorti de nulle part,
    pendant que, sais pas pourquoi, sais pas comment, allez savoir pourquoi, problème résolu,
    problème réglé, c'est réglé, c'est bon c'est réglé, affaire réglée, plus de problème, vous
    allez pas me croire, tu vas pas me croire, stop, attendez attendez, on arrête tout, arrêtez
    tout
  `),
  runsOn: list(`
    dans mon, dans ma, dans le, dans la, dans un, dans une, dans l, mon, ma, est un, est une, est une voiture, est, au lieu de, au lieu du, au lieu d, à la place du, à la place de, à la place de l, à la place d, roule au, mon camion, dans du
  `),
  price: list(`
    coûte, couter, prix, facture, tarif, revenir à combien, vous prenez combien, qui paie, payer
  `),
  rails: list(`train, tram, rails, passage à niveau, voie ferrée`),
  whether: ['si', 's'],
  alternatives: list(`ou, soit, ou bien`),
  turns: list(
    `un coup, des fois, parfois, une fois, une autre fois, tantôt, quelquefois, d autres fois`,
  ),
  perhaps: list(`peut-être, peut être, ptet, p t être, possible que, il se peut`),
  clauseBreaks: list(`
    mais, et, quand, lorsque, lorsqu, si, car, parce, puisque, pourtant, cependant, sinon, tandis,
    pendant, sauf, or
  `),
  fillers: list(`
    haha, hihi, héhé, mdr, mdrr, lol, ptdr,
    le, la, les, l, un, une, des, de, du, d, au, aux, à, a, y, en, ce, cet, cette, ces, c, ça,
    cela, ceci, il, ils, elle, elles, on, nous, vous, je, j, tu, te, t, me, m, se, s, moi, toi,
    lui, leur, mon, ma, mes, ton, ta, tes, son, sa, ses, notre, nos, votre, vos, est, es, suis,
    sommes, êtes, sont, était, étaient, étais, être, été, soit, ont, avait, avais, fait, fais,
    font, faire, faisait, passe, qui, que, qu, dans, pour, par, avec, et, ou, tout, toute, tous,
    toutes, puis, ensuite, donc, alors, là, maintenant, environ, peu, presque, vraiment, juste,
    seulement, simplement, semble, semblent, dirais, pense, crois, apparemment, genre, euh, heu,
    hum, ben, bah, svp, stp, plaît, merci, bonjour, bonsoir, salut, allo, aussi, comme, assez,
    plutôt, très, quelques, déjà
  `),
  courtesies: list(`
    merci, beaucoup, svp, stp, s il vous plait, s il te plait, monsieur, madame, chef, mec, ami, frère, ben, bah, ah, oh, patron, mon, la
  `),
  endings: list(`
    ements, ement, aient, èrent, ait, ent, es, er, ez, e, s
  `),
  optionWords: list(`
    option, numéro, no, n, nr, n°, num, réponse, choix, possibilité, le, la, l, les, et, er, ère,
    e, ème, eme, je, dirais, pense, prends, choisis, c, est
  `),
  talk: {
    yes: list(`
      je l ai lu, je les ai lus, j ai tout lu, c est sécurisé, on est en sécurité, je suis en sécurité, c est sans risque, je fais attention,
      oui, ouais, ouaip, ouep, ui, oui oui, yes, yep, wi, ok, okay, oki, d accord, dac, c est bon,
      bien sûr, exact, exactement, tout à fait, absolument, effectivement, en effet, affirmatif,
      voilà, je confirme, confirmé, confirme, compris, bien compris, bien reçu, entendu,
      lu et compris, vas-y, allez-y, allons-y, on y va, go, on continue, continue, continuez,
      je continue, on peut continuer, sans danger, aucun danger, c est sans danger, c est sûr,
      oui on peut continuer, oui c est sûr, oui sans danger, oui c est bon, ok c est bon,
      oui on peut y aller, oui j ai lu, lu, ok compris, oui compris, ok on continue,
      oui je continue, d accord je continue, oui continue, oui tout est sûr, oui allez, oui vas-y,
      oui d accord, c est correct, c est beau, parfait, nickel, entendu merci, oui bien sûr,
      carrément, évidemment, certainement, d acc, volontiers, mouais, bien entendu, assurément, ça marche, c est ça, mais oui, sans problème, bien sur que oui, sûr,
      j ai lu, j ai bien lu, c est lu, bien lu, je comprends, j ai compris, c est noté, je ferai attention
    `),
    no: list(`
      non, nan, nope, non non, pas du tout, non pas du tout, absolument pas, pas encore,
      surtout pas, négatif, no, c est dangereux, non c est dangereux, non pas encore, pas question,
      non merci, certainement pas, pas vraiment, que non, bien sûr que non, jamais de la vie, même pas, nenni, hélas non, malheureusement non
    `),
    done: list(`
      c est fait, fait, c fait, voilà c est fait, fini, j ai fini, c est terminé, terminé,
      j ai terminé, prêt, prête, c est prêt, je suis prêt, ça y est, voilà fini, tout est fait,
      je l ai fait, je l ai déjà fait, le temps est écoulé, temps écoulé, le temps est passé,
      voilà c est passé, le délai est passé, j ai attendu, attente terminée, attente finie,
      complété, c est complété, fait et vérifié
    `),
    over: list(`
      c est fini, fini, terminé, c est terminé, c est passé, tout est fini, c est réglé, réglé,
      plus de danger, il n y a plus de danger, n y a plus, y a plus, plus rien, tout va bien
      maintenant, nous sommes en sécurité, on est en sécurité, je suis en sécurité, en sécurité,
      hors de danger, on est à l abri, c est sûr maintenant, le feu est éteint, éteint, c est
      éteint, plus de fumée, il n y a plus de fumée, plus de feu, plus de fuite, il n y a plus de
      fuite, parti, partie, c est arrêté, arrêté, disparu, on peut reprendre, retour à la normale,
      tout est rentré dans l ordre, les pompiers sont venus, maîtrisé, réparé, la fuite est
      réparée, la fuite est bouchée, la fuite est arrêtée, c est sous contrôle, oui c est fini,
      tout le monde est à l abri, tout le monde est en sécurité, c est bon on est en sécurité, c
      est fini tout va bien, les pompiers ont dit que c est bon, c est sûr, c est sécurisé, sans
      danger, aucun danger, c est sans danger, tout est sûr, tous en sécurité, tous à l abri, on
      est tous en sécurité, nous sommes tous en sécurité, nous sommes à l abri, personne n est en
      danger, les secours ont pris le relais, les pompiers disent que c est sûr, les pompiers ont
      dit que c est sûr
    `),
    'false-alarm': list(`
      fausse alerte, c était une fausse alerte, c est une fausse alerte, fausse alarme, il n y a
      jamais eu de danger, il n y avait pas de danger, il n y a pas eu de danger, il n y a aucune
      urgence, ce n était pas une urgence
    `),
    'dont-know': list(`
      je ne sais pas, je sais pas, sais pas, je ne sais plus, sais plus, j en sais rien, je n en
      sais rien, chais pas, ché pas, jsp, je l ignore, je ne saurais dire, aucune idée, pas d idée,
      aucune certitude, pas sûr, pas sûre, pas certain, pas certaine, je ne suis pas sûre, je suis
      pas sûr, je sais pas trop, je ne sais pas trop, je sais pas vraiment, inconnu, je ne me
      souviens pas, je me souviens plus, je ne m en souviens plus, je me rappelle pas, je me
      rappelle plus, j ai oublié, difficile à dire, dur à dire, je ne peux pas dire, peux pas dire,
      on ne peut pas savoir, qui sait, impossible à dire, je doute, pas la moindre idée, je n y
      connais rien, va savoir, allez savoir, mystère, pas fait attention, pas remarqué, incertain,
      peut-être, possible, j’ai un doute, j’y connais rien en mécanique, je ne suis pas mécanicien,
      impossible à savoir, je donne ma langue au chat
    `),
    cannot: list(`
      je ne le coupe plus, je le coupe plus, je ne coupe plus le moteur, je ne vais pas le couper, je vais pas le
      couper, je ne veux pas le couper, je veux pas l éteindre, je ne l éteins plus, je l arrête plus, je ne
      veux plus l arrêter, je le laisse tourner, je laisse tourner le moteur, je laisse le moteur tourner,
      je ne peux pas, je peux pas, peux pas, on ne peut pas, on peut pas, je ne pourrai pas,
      impossible, c est impossible, pas possible, ce n est pas possible, j y arrive pas, je n y
      arrive pas, je n arrive pas, pas capable, chus pas capable, incapable, pas accessible,
      inaccessible, je n y accède pas, je ne trouve pas, trouve pas, je ne le trouve pas,
      introuvable, je ne le vois pas, je vois pas, je ne vois rien, pas trouvé, il n y a pas ça
      ici, pas équipé, je n ai pas ce qu il faut, j ai pas ce qu il faut, je n en ai pas, j en ai
      pas, j ai pas, je n ai pas, je passe, on passe, saute cette question, sauter la question, on
      saute la question, question suivante, suivant, pas ici, trop dangereux à faire, je préfère
      pas, je ne préfère pas, je ne veux pas, je veux pas, j ose pas, je n ose pas, pas l’appareil
      pour ça, rien pour mesurer, impossible de mesurer, impossible de vérifier, impossible d’y
      accéder, c’est caché, c’est trop bas pour l’atteindre, hors de portée, je n’atteins pas, je
      préfère ne pas toucher, infaisable, pas faisable, trop sombre pour voir, passer cette étape,
      passons, sautons cette question, ça me dépasse, trop compliqué pour moi
    `),
    why: list(`
      pourquoi, pourquoi ça, pourquoi cela, pourquoi cette question, pourquoi vous demandez ça,
      mais pourquoi, pk, pkoi, pq, à quoi ça sert, ça sert à quoi, à quoi bon, c est pour quoi
      faire, quel rapport, quel intérêt, dans quel but, pour quelle raison, quelle raison, qu
      est-ce que ça veut dire, ça veut dire quoi, que signifie cela, explique, expliquez,
      explication, expliquez-moi, quelle importance, dis-moi pourquoi, quelle utilité, utile à
      quoi, qu’est-ce que ça change de savoir, que cherches-tu à savoir, vous cherchez quoi, ça
      prouve quoi, ça t’apprend quoi, justifiez, comment ça se fait que tu demandes, ça rime à
      quoi, quel sens ça a, d’où vient cette question
    `),
    numbers: list(`
      chiffres, les chiffres, montre les chiffres, montrez les chiffres, nombres, les nombres,
      les valeurs, quelles valeurs, quels chiffres, d où viennent les chiffres,
      d où vient ce chiffre, quelle certitude, quelle précision, c est précis, les sources,
      sources, quelle valeur attendue, valeur attendue, valeurs attendues,
      combien ça devrait être, combien faut-il, où se perdent les volts, où passent les volts,
      détails des mesures
    `),
    back: list(`
      retour, revenir, reviens, revenez, reviens en arrière, en arrière, retour en arrière,
      question précédente, précédente, précédent, la question d avant, annule ma réponse, annuler
      la réponse, défaire, reculer d une question, revenons en arrière, étape précédente, étape
      d’avant, page précédente, celle d’avant, un pas en arrière, remonte d’un cran, remonter,
      rembobine, rewind, back, retour à l’étape d’avant, reprendre la précédente, on revient
    `),
    repeat: list(`
      répète, répétez, répéter, tu peux répéter, vous pouvez répéter, répète la question, redis,
      redites, redis-le, encore une fois, une fois de plus, pardon, comment, hein, plaît-il, c
      était quoi la question, c est quoi la question, quelle était la question, quelle question,
      pas compris, je n ai pas compris, j ai pas compris, je ne comprends pas, je comprends pas, qu
      est-ce que vous voulez dire, reformulez, redemande, reposer la question, repose la question,
      comment dis-tu, qu’as-tu dit, qu’avez-vous dit, vous disiez, comprends pas la question, pas
      clair, en d’autres mots, autrement dit, plus simplement, relire la question, tu peux préciser
    `),
    person: list(`
      un humain, humain, une vraie personne, vraie personne, parler à une personne, parler à quelqu
      un, parler à un humain, parler à un conseiller, parler à un agent, je veux parler à quelqu
      un, je voudrais parler à quelqu un, je veux un humain, un conseiller, un opérateur, une
      opératrice, passez-moi quelqu un, passez-moi un conseiller, appelez-moi, rappelez-moi,
      rappelez-moi svp, je veux être rappelé, besoin de parler à quelqu un, j ai besoin d une
      personne, contacter quelqu un, quelqu un au téléphone, service client, un vrai humain, un
      agent, passe-moi le responsable, mettez-moi en relation, mise en relation, transférez-moi,
      transférer à un agent, un vrai technicien, envoyez un mécanicien, une dépanneuse, il me faut
      une dépanneuse, une remorqueuse, que quelqu’un m’appelle, numéro à appeler, assistance
      dépannage, l’assistance, tu es un robot, vous êtes un robot, pas un robot, marre du robot,
      marre de la machine
    `),
    stop: list(`
      stop, je veux arrêter, je voudrais arrêter, on peut arrêter, je préfère arrêter, quitter, je
      quitte, fin, sortir, au revoir, aurevoir, bye, ciao, pause, plus tard, à plus tard, on verra
      plus tard, je reviens plus tard, je reviendrai, annuler, annule tout, abandonner, j
      abandonne, laisse tomber, laissez tomber, ça suffit, j en ai marre, tant pis, arrêtez, arrête
      tout, arrêtons, mettre fin, fin de la conversation, interrompre, cessez, plus de questions,
      ne pose plus de questions, ne continue pas, pas la peine de continuer, on laisse faire
    `),
    language: list(`
      langue, changer de langue, change de langue, autre langue, une autre langue, anglais,
      en anglais, english, in english
    `),
  },
  retractions: list(`
    n importe quoi, c est n importe quoi, des bêtises, c est faux, c était faux, faux, ce n est pas
    vrai, c est pas vrai, vous m avez mal compris, tu m as mal compris, mal compris, malentendu, un
    malentendu, c est un malentendu, ce n est pas ce que je voulais dire, c est pas ce que je
    voulais dire, ce n est pas ce que j ai dit, c est pas ce que j ai dit, je n ai pas dit ça, j ai
    pas dit ça, je n ai jamais dit ça, c est une erreur, c était une erreur, erreur, mon erreur, je
    me suis trompé, par erreur, rien de tel
  `),
  neverWas: list(`
    il n y a jamais eu, n y a jamais eu, y a jamais eu, il n y avait pas, n y avait pas, y avait
    pas, il n y a pas eu, n y a pas eu, y a pas eu, ce n était pas, c était pas, je n ai pas dit, j
    ai pas dit, je n ai jamais dit, jamais eu
  `),
  corrections: list(`
      correction, corrige, corriger, corrigez, je corrige, je veux corriger, rectification,
      rectifie, je rectifie, je voulais dire, voulais dire, je veux dire, veux dire, pardon je
      voulais dire, désolé je voulais dire, je me suis trompé, me suis trompé, je me suis gouré,
      erreur, mon erreur, faute de frappe, c était faux, faux, mauvais chiffre, en réalité,
      modifie, modifier, remplace, change, changer ma réponse, il fallait lire, je me suis trompé,
      trompé de réponse, erreur de ma part, c’était une erreur, je corrige, je rectifie, plutôt
      l’autre, je me reprends, je reviens sur ma réponse, modifier ma réponse, je change d’avis,
      corriger ma réponse, langue a fourché, j’ai confondu, confusion, oups, oups mauvaise réponse,
      mauvaise réponse, efface ça, oublie ce que j’ai dit, je retire ce que j’ai dit, autant pour
      moi, j’ai gaffé, j’ai cliqué à côté
    `),
  earlier: ['était', 'étaient', 'devait être', 'aurait dû être', 'c était'],
  statements: [
    {
      set: { 'vehicle.nominal': 24 },
      said: list(`
        véhicule 24 v, système 24 v, camion 24 v, poids lourd 24 v, bus 24 v, véhicule 24 volts,
        système 24 volts, camion 24 volts, poids lourd 24 volts, bus 24 volts, véhicule en 24 v,
        véhicule en 24 volts, véhicule est en 24 v, camion est en 24 v, camion est en 24 volts,
        circuit 24 v, circuit 24 volts, véhicule vingt quatre volts, camion vingt quatre volts,
        deux batteries en série
      `),
    },
    {
      set: { 'vehicle.nominal': 12 },
      said: list(`
        véhicule 12 v, système 12 v, voiture 12 v, véhicule 12 volts, système 12 volts,
        voiture 12 volts, véhicule en 12 v, véhicule est en 12 v, véhicule est en 12 volts,
        circuit 12 v, circuit 12 volts, véhicule douze volts, voiture douze volts
      `),
    },
    {
      set: { 'vehicle.fuel': 'diesel' },
      said: list(`
        diesel, c est un diesel, moteur diesel, roule au diesel, voiture diesel, véhicule diesel,
        gazole, gasoil, roule au gazole, c est une diesel, mazout
      `),
    },
    {
      set: { 'vehicle.fuel': 'petrol' },
      said: list(`
        essence, c est une essence, moteur essence, moteur à essence, roule à l essence,
        voiture essence, véhicule essence, sans plomb, benzine
      `),
    },
    {
      set: { 'vehicle.transmission': 'automatic' },
      said: list(`
        automatique, boîte automatique, boîte auto, c est une automatique,
        transmission automatique
      `),
    },
    {
      set: { 'vehicle.transmission': 'manual' },
      said: list(`
        manuelle, boîte manuelle, c est une manuelle, boîte mécanique, transmission manuelle
      `),
    },
    {
      set: { 'vehicle.ignition': 'button' },
      said: list(`
        bouton de démarrage, bouton start, démarrage par bouton, il y a un bouton de démarrage
      `),
    },
    {
      set: { 'vehicle.ignition': 'key' },
      said: ['démarrage à clé', 'démarre avec une clé', 'clé de contact'],
    },
    {
      set: { 'meter.class': 'simple' },
      said: list(`
        multimètre bon marché, multimètre pas cher, mon multimètre est bon marché,
        petit multimètre, multimètre simple, voltmètre simple, voltmètre bon marché,
        multimètre premier prix, multimètre cheap, appareil bon marché
      `),
    },
    {
      set: { 'meter.class': 'fine' },
      said: list(`
        bon multimètre, multimètre précis, mon multimètre est précis, multimètre de précision,
        multimètre étalonné, multimètre de qualité, appareil précis, multimètre professionnel,
        multimètre haut de gamme
      `),
    },
    {
      set: { 'vehicle.hybrid': 'full' },
      said: ['hybride', 'full hybride', 'c est une hybride', 'voiture hybride', 'véhicule hybride'],
    },
  ],
  accuracy: {
    meter: ['multimètre', 'voltmètre', 'appareil', 'mesureur'],
    clamp: ['pince', 'ampèremétrique'],
    percent: ['%', 'pourcent'],
    counts: ['points', 'point', 'comptes', 'counts'],
  },
  speaking: list(`
    parle, parles, parlez, parler, parlons, continuer, écrire, écris, écrivez, comprends, comprenez, passer, en, à
  `),
  having: list(`
    ai, avons, as, il y a, trouvé, emprunté, acheté, apporté, amené, ramené, récupéré, prêté,
    sous la main, à disposition, disponible, voici, arrivé, peux utiliser, peut utiliser, possède,
    dispose
  `),
  kit: {
    voltmeter: ['voltmètre', 'multimètre', 'contrôleur universel', 'volt mètre', 'multi mètre'],
    'test-lamp': ['lampe test', 'lampe témoin', 'lampe de test', 'lampe d essai'],
    'clamp-meter': list(`
      pince ampèremétrique, pince de courant, pince à courant, pince multimètre, pince ampère
    `),
    'load-tester': list(`
      testeur en charge, testeur de batterie en charge, testeur à résistance, testeur de décharge
    `),
    'electronic-tester': list(`
      testeur électronique, testeur de batterie, testeur de conductance, analyseur de batterie
    `),
    'boost-source': list(`
      câbles de démarrage, câbles, booster, câbles à booster, câbles de survoltage,
      pinces crocodile, démarreur de secours, lance-batterie, voiture de secours, pinces et câbles
    `),
    charger: ['chargeur', 'chargeur de batterie', 'mainteneur de charge'],
    'code-reader': list(`
      lecteur de codes, lecteur de codes défaut, lecteur obd, valise diag, valise de diagnostic,
      outil de diagnostic, scanner
    `),
    'second-key': list(`
      double de clé, double des clés, clé de secours, deuxième clé, seconde clé, autre clé,
      clé de rechange, double de clef, autre clef, second badge
    `),
    helper: list(`
      quelqu un pour aider, quelqu un pour m aider, quelqu un avec moi, une aide,
      un ami pour aider, deuxième personne, un voisin, un collègue, un copain
    `),
    'hand-tools': list(`
      outils, outils à main, clés plates, caisse à outils, boîte à outils, coffre à outils,
      trousse à outils, douilles
    `),
    'bench-tester': ['banc d essai', 'banc de test', 'banc démarreur'],
  },
};
