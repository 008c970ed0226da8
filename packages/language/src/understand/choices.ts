import { denialOf, type Heard, isPhrase, findPhrase, partOf, says } from '../typed/heard.ts';
import { type Fit, fitOptions } from './fit.ts';
import type { CheckPhrases, Lexicon, OptionPhrases } from './lexicon.ts';
import { figureWordsOf } from '../words/words.ts';
import { mostOf } from './learned.ts';
import { onceFor, onceWith } from '../once.ts';
import type { Sense } from './taught.ts';
import type { Terms } from '../typed/terms.ts';

/** What came of holding a text against the answers of one check. */
export type Choice =
  | { readonly type: 'one'; readonly fit: Fit }
  /** Two or three that it may be. */
  | { readonly type: 'close'; readonly fits: readonly Fit[] }
  | { readonly type: 'none' };

/** Limits of the share, common practice, no source: set by leaving phrases out of the lists. */
const taken = 0.45;
const margin = 0.27;
const offered = 0.2;
const closeBy = 0.42;

/** The least that the words themselves must fit where little is known of what people say. */
const leastFit = 0.2;

/** Less than this says nothing where the words themselves do not fit either. */
const leastShare = 0.35;

/** An answer as sure as this, by all that people are heard to say, is the one that is meant. */
const sure = 0.75;

/** One as sure as this is meant as well, where no other is likelier than that or fits as well as that. */
const alone = 0.55;
const otherShare = 0.12;
const otherFit = 0.6;

/** Above this nothing that is said beside makes the answer doubtful. */
const beyondDoubt = 0.985;

/** A phrase of another answer as sure as this on its own is another answer. */
const sureBeside = 0.75;

/** From here on a text is talk, and no answer. */
const isTalkFrom = 0.6;

/** How much what the phrases taught counts beside the fit. */
const learnedShare = 0.6;

/** More terms than this are a story; which of the answers it denies is then left alone. */
const shortTerms = 4;

/** More than three are no help. */
const mostOffers = 3;

/** The answer that the text is word for word, or else undefined. */
export function exactChoice(heard: Heard, options: readonly OptionPhrases[]): string | undefined {
  const exact = options.filter(({ phrasesIn }) =>
    phrasesIn(heard).some((phrase) => isPhrase(heard, phrase)),
  );
  return exact.length === 1 ? exact[0]?.id : undefined;
}

/** How well some answers fit by their words and by what people are heard to say, best first. */
function weigh(
  heard: Heard,
  check: CheckPhrases,
  by: { readonly sense: Sense; readonly options: readonly OptionPhrases[] },
): Fit[] {
  const { sense, options } = by;
  const shareOf = new Map(check.options.map(({ id }, index) => [id, sense.answers[index] ?? 0]));
  return fitOptions(heard, { ...check, options })
    .map((fit) => {
      if (fit.score < 0) return fit;
      const share = shareOf.get(fit.id) ?? 0;
      const isTold = fit.score >= leastFit || (check.isWellHeard && share >= leastShare);
      const learned = isTold ? share : 0;
      return { ...fit, score: (1 - learnedShare) * fit.score + learnedShare * learned };
    })
    .sort((one, other) => other.score - one.score);
}

/** Which of a check's answers the text means. */
export const chooseOption: typeof chooseTrue = onceWith(chooseTrue);

/**
 * Which answer is meant where a text begins by denying another and then says which is true: "not
 * slow, it spins just fine". Where the text as a whole says something else, it is asked.
 */
function chooseTrue(heard: Heard, check: CheckPhrases): Choice {
  const whole = choose(heard, check);
  const first = heard.terms.findIndex((term) => !term.startsWith('!'));
  if (first <= 0) return whole;
  const isTrue = choose(
    partOf(heard, (term) => !term.startsWith('!')),
    check,
  );
  if (isTrue.type !== 'one') return whole;
  const { id } = isTrue.fit;
  if (whole.type === 'one' && whole.fit.id === id) return whole;
  const denied = fitsOf(choose(denialOf(partOf(heard, (_, at) => at < first)), check));
  if (denied.length === 0 || denied.some((fit) => fit.id === id)) return whole;
  return whole.type === 'one' ? { type: 'close', fits: [isTrue.fit, whole.fit] } : isTrue;
}

/** The answers that came of it. */
export function fitsOf(choice: Choice): readonly Fit[] {
  if (choice.type === 'one') return [choice.fit];
  return choice.type === 'close' ? choice.fits : [];
}

/** Another answer, and the one that a text says best. */
interface Pair {
  readonly fit: Fit;
  readonly best: Fit;
}

/**
 * True where a whole phrase of another answer is said as well, by words that the best one has not:
 * "loose and corroded" is two answers.
 */
function isSaidBeside(
  { fit, best }: Pair,
  heard: Heard,
  { options, weights }: CheckPhrases,
): boolean {
  if (fit === best || fit.recall < wholePhrase) return false;
  const own = options.find(({ id }) => id === best.id)?.terms ?? new Set();
  return fit.phrase.some(
    (term) => !own.has(term) && says(heard, term) && (weights.get(term) ?? 0) >= tellingWeight,
  );
}

/** True where no other answer is likely, nor fits by its words. */
function isAlone({
  meant,
  fits,
  sense,
  likeliest,
}: {
  readonly meant: Fit | undefined;
  readonly fits: readonly Fit[];
  readonly sense: Sense;
  readonly likeliest: number;
}): boolean {
  return (
    sense.answers.every((share) => share === likeliest || share <= otherShare) &&
    fits.every((fit) => fit === meant || fit.score < otherFit)
  );
}

/** True where another answer is said beside the one that is meant, and is one on its own as well. */
function isSaidToo({ fit, best }: Pair, heard: Heard, check: CheckPhrases): boolean {
  const { phrase } = fit;
  if (bandOf(check, fit.id) === bandOf(check, best.id)) return false;
  if (phrase.some((term) => term.startsWith('!')) || !isSaidBeside({ fit, best }, heard, check))
    return false;
  if (best.recall < wholePhrase || findPhrase(heard, phrase) < 0) return false;
  const usual = check.options.find(({ id }) => id === best.id)?.usual();
  if (phrase.every((term) => usual?.has(term) === true)) return false;
  const shares = check.taught()({ terms: phrase, words: phrase }).answers;
  return (shares[check.options.findIndex(({ id }) => id === fit.id)] ?? 0) >= sureBeside;
}

/** So much of a phrase is all of it. */
const wholePhrase = 0.9;

/** A word that weighs as much tells an answer. */
const tellingWeight = 0.5;

/** What an answer says: what a test lamp shows stands for a band. */
function bandOf({ check: { form } }: CheckPhrases, id: string): string {
  return form.kind === 'reading' ? (form.lamp[id] ?? id) : id;
}

/** What is heard in a text, and which answer says it best. */
interface Meant extends Sense {
  readonly likeliest: number;
  readonly meant: string | undefined;
}

/** What is heard in a text, with what a lamp shows and the band that it stands for as one answer. */
function senseOf(heard: Heard, check: CheckPhrases): Meant {
  const sense = check.taught()(heard);
  const bands = check.options.map(({ id }) => bandOf(check, id));
  const whole = (band: string | undefined): number =>
    sense.answers.reduce((sum, share, index) => (bands[index] === band ? sum + share : sum), 0);
  const answers = bands.map(whole);
  const likeliest = Math.max(0, ...answers);
  // Of a lamp and its band the one that is said.
  const [meant] = check.options
    .map(({ id }, index) => ({ id, whole: answers[index] ?? 0, own: sense.answers[index] ?? 0 }))
    .filter((one) => one.whole === likeliest)
    .sort((one, other) => other.own - one.own);
  return { ...sense, answers, likeliest, meant: meant?.id };
}

function choose(heard: Heard, check: CheckPhrases): Choice {
  const [word, more] = heard.terms;
  if (word !== undefined && more === undefined && check.factsElsewhere().has(word))
    return { type: 'none' };
  const sense = senseOf(heard, check);
  const { likeliest } = sense;
  if (check.isWellHeard && sense.talk >= Math.max(isTalkFrom, likeliest)) return { type: 'none' };
  const isDenial = heard.terms.every((term) => term.startsWith('!'));
  // Beside an answer beyond doubt no other is weighed, short of a text that only denies.
  const isOnly = check.isWellHeard && likeliest >= beyondDoubt && !isDenial;
  const { options } = check;
  const fits = weigh(heard, check, {
    sense,
    options: isOnly ? options.filter(({ id }) => id === sense.meant) : options,
  });
  const meant = fits.find(({ id }) => id === sense.meant);
  const isDeniedAlone = isDenial && (meant?.score ?? 0) < 0;
  const isMeant =
    likeliest >= sure || (likeliest >= alone && isAlone({ meant, fits, sense, likeliest }));
  if (check.isWellHeard && meant !== undefined && isMeant && !isDeniedAlone) {
    const rival =
      likeliest >= beyondDoubt
        ? undefined
        : fits.find((fit) => isSaidToo({ fit, best: meant }, heard, check));
    return rival === undefined
      ? { type: 'one', fit: { ...meant, score: Math.max(meant.score, likeliest) } }
      : { type: 'close', fits: [meant, rival] };
  }
  const [best] = fits;
  if (best === undefined) return { type: 'none' };
  const second = fits.find(({ id }) => bandOf(check, id) !== bandOf(check, best.id));
  if (best.score >= taken && best.score - Math.max(second?.score ?? 0, 0) >= margin) {
    const rival = fits.find((fit) => isSaidBeside({ fit, best }, heard, check));
    return rival === undefined
      ? { type: 'one', fit: best }
      : { type: 'close', fits: [best, rival] };
  }
  const left = fits.filter(({ score }) => score >= 0);
  const isDeniedBeside = left.length < fits.length && heard.at.length <= shortTerms;
  // Of two answers the one that is not denied is meant; of more, one of the others.
  if (best.score < offered && isDeniedBeside) {
    const [only] = left;
    if (only !== undefined && left.length === 1) return { type: 'one', fit: only };
    return left.length <= mostOffers ? { type: 'close', fits: left } : { type: 'none' };
  }
  const close = fits.filter(({ score }) => score >= offered && best.score - score <= closeBy);
  return close.length === 0
    ? { type: 'none' }
    : { type: 'close', fits: close.slice(0, mostOffers) };
}

/** True where a text is more likely an answer to the check than anything else. */
export function isAbout(heard: Heard, check: CheckPhrases): boolean {
  return check.isWellHeard && senseOf(heard, check).likeliest >= taken;
}

/** True where a text only denies, and the answer is not said by that: "clamp meter I have not". */
function isLacking({ terms }: Heard, { id }: Fit, { options }: CheckPhrases): boolean {
  const isDenied = terms.every((term) => term.startsWith('!'));
  return isDenied && options.find((option) => option.id === id)?.isNegative !== true;
}

/** The vehicle stands so far before its owner at most, who is known by so many letters. */
const [nearVehicle, ownerLetters] = [3, 4];

/** True for one word right before a vehicle or behind it: "my neighbour's van" is no neighbour at hand. */
function isOwner([term = '', more]: Terms, { words }: Heard, lexicon: Lexicon): boolean {
  const { vehicle } = figureWordsOf(lexicon.words);
  const start = term.slice(0, ownerLetters);
  return (
    more === undefined &&
    words.some((word, at) => {
      const near = words.slice(Math.max(at - nearVehicle, 0), at + 2);
      const isVehicle = vehicle.includes(word);
      return word.startsWith(start) && !isVehicle && near.some((other) => vehicle.includes(other));
    })
  );
}

/** What gives no answer as likely as this names none. */
const leastAnswered = 0.15;

/** Every answer whose phrase stands whole in the text: for questions where several may hold. */
export function chooseSeveral(
  segments: readonly Heard[],
  check: CheckPhrases,
  lexicon: Lexicon,
): string[] {
  const chosen = segments.flatMap((heard) => {
    const choice = chooseOption(heard, check);
    const phrasesOf = ({ phrases }: OptionPhrases): readonly Terms[] =>
      phrases.filter((phrase) => findPhrase(heard, phrase) >= 0);
    const isOwnersOnly = (said: readonly Terms[]): boolean =>
      said.every((phrase) => isOwner(phrase, heard, lexicon));
    if (choice.type === 'one') {
      const { fit } = choice;
      const said = check.options.filter(({ id }) => id === fit.id).flatMap(phrasesOf);
      const isOfVehicle = said.length > 0 && isOwnersOnly(said);
      return isOfVehicle || isLacking(heard, fit, check) ? [] : [fit.id];
    }
    // "My daughter has an exam at noon" names somebody, and says of nobody that she helps.
    const isAnswer = !check.isWellHeard || likeliest(heard, check).share >= leastAnswered;
    return check.options
      .filter((option) => isAnswer && !isOwnersOnly(phrasesOf(option)))
      .map(({ id }) => id);
  });
  const ids = check.options.map(({ id }) => id).filter((id) => chosen.includes(id));
  // "Apart from that nothing" is not "none of these".
  return ids.length > 1 ? ids.filter((id) => id !== 'none') : ids;
}

/** Terms that are said now and then of some answer to a check. */
const usualTo = onceFor(
  ({ options }: CheckPhrases): ReadonlySet<string> =>
    new Set(options.flatMap(({ usual }) => [...usual()])),
);

/** True where what answers a check is now and then said by these words as well. */
export function isUsual(terms: Terms, check: CheckPhrases): boolean {
  const usual = usualTo(check);
  return terms.every((term) => usual.has(term));
}

/** The answer that a text gives likeliest: by what is learned of the check, or by its lists alone. */
export function likeliest(
  heard: Heard,
  check: CheckPhrases,
): { readonly id: string | undefined; readonly share: number } {
  if (!check.isWellHeard) {
    const choice = chooseOption(heard, check);
    const isSure = choice.type === 'one' && choice.fit.score >= sure;
    return isSure ? { id: choice.fit.id, share: choice.fit.score } : { id: undefined, share: 0 };
  }
  const { place, share } = mostOf(check.taught()(heard).answers);
  return { id: check.options[place]?.id, share };
}

/** True for a check to which several answers may hold. */
export function isOfSeveral(check: CheckPhrases | undefined): boolean {
  return check?.check.form.kind === 'choice' && check.check.form.several;
}
