import type { TerminalTexts } from './terminal-words.ts';

/** The terminal's words in French. */
export const fr: TerminalTexts = {
  title: (flow) => `KEYTURN : ${flow}`,
  goingOn: (at, answers) => `Suite du dossier du ${at}. Réponses jusqu’ici : ${String(answers)}.`,
  soFar: 'Ce que l’on sait jusqu’ici',
  torn: 'La dernière ligne du fichier a été coupée pendant l’écriture ; cette réponse est donc redemandée.',
  demo: 'DÉMONSTRATION. Personne ne répond ; un cas inventé est donc joué : le véhicule, sa panne et tous les chiffres sont inventés. Lancez-le dans un terminal, ou donnez-lui des lignes à lire, pour avoir votre propre dossier.',
  demoEnd: 'C’était la démonstration, avec un véhicule et des chiffres inventés.',
  kept: (file, command) => `Le dossier est conservé dans ${file}. Pour le reprendre :\n${command}`,
  closedKept: (file) => `Le dossier est conservé dans ${file}.`,
  notKept: (reason) =>
    `Le dossier ne peut pas être écrit dans son fichier en ce moment (${reason}). Vous pouvez continuer ; un nouvel essai a lieu à chaque réponse.`,
  until: (time) => `L’attente se termine à ${time}.`,
  notYet: (time, minutes) =>
    `Pas encore : il reste ${String(minutes)} min, jusqu’à ${time}. Dites « prêt » si le temps est déjà écoulé.`,
  offer: (letters) => `(${letters} pour choisir, ou dites-le autrement ; ? pour l’aide)`,
  prompt: {
    choice: (count) =>
      `(1${['', '', ' ou 2'][count] ?? ` à ${String(count)}`}, ou un mot ; ? pour l’aide)`,
    choices: (count) =>
      `(un ou plusieurs de 1 à ${String(count)}, comme 1 3, ou des mots ; ? pour l’aide)`,
    date: (count) => `(un jour, comme 2026-01-31, ou de 1 à ${String(count)} ; ? pour de l’aide)`,
    reading: (unit) => `(la valeur en ${unit}, ou plusieurs mesures par leur nom ; ? pour l’aide)`,
    lamp: '(ce que montre la lampe ; ? pour l’aide)',
    work: '(1 ou « fait » quand c’est fait ; ? pour l’aide)',
    confirm: '(1 oui, ou 2 je ne peux pas ; ? pour l’aide)',
    wait: '(1 ou « prêt » quand le temps est écoulé, Entrée pour voir l’heure ; ? pour l’aide)',
    closed: '(Entrée pour quitter, ou « retour », ou « correction » avec la réponse fausse)',
    resume: '(1 ou « c’est fini » quand on peut continuer sans danger ; ? pour l’aide)',
  },
  expected: 'attendu',
  dontKnow: 'je ne sais pas',
  helpNow: 'Vous pouvez toujours écrire',
  help: [
    ['pourquoi', 'à quoi sert la question et ce que voudrait dire chaque réponse'],
    ['chiffres', 'chaque mesure avec son incertitude, ce qui est attendu, et les sources'],
    ['retour', 'reprendre la dernière réponse et être interrogé à nouveau'],
    ['correction repos 12,1', 'corriger une réponse précédente'],
    ['je ne sais pas', 'cela reste ouvert, et le dossier continue'],
    ['je ne peux pas', 'impossible ou dangereux ; on cherche un autre chemin'],
    ['repos 12,5, 170 A', 'plusieurs mesures sur une ligne, par nom ou par unité'],
    ['j’ai une pince', 'votre matériel a changé'],
    ['répéter', 'la question encore une fois'],
    ['une personne', 'passer le dossier à quelqu’un'],
    ['stop', 'mettre le dossier de côté ; il est conservé et peut être repris'],
    ['English, Deutsch, …', 'continuer dans une autre langue'],
    ['fumée, odeur d’essence, blessé', 'tout danger, avec vos mots, à tout moment'],
  ],
};
