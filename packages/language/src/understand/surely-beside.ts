import type { Token } from '../typed/token.ts';
import { hearTokens } from '../typed/heard.ts';
import { chooseOption, likeliest } from './choices.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { isOfKit } from './kit-told.ts';
import { answerShare } from './spans.ts';
import type { SurelyBeside } from './turn.ts';
import { namesCheck } from './volunteered.ts';

/**
 * A clause tells something else, whatever it would say to the question in hand, where it speaks of
 * that as surely as this, says it as surely as this, and is as unlikely as this to speak of what was
 * asked: "it's an auto" "and the lever's in park".
 */
const [surelyOther, surelySaid, hardlyAsked] = [0.9, 0.85, 0.04];

/** What a clause surely tells of something else that is known, or seen from the seat, or that it names. */
export function surelyBeside(
  clause: readonly Token[],
  inHand: CheckPhrases,
  lexicon: Lexicon,
): SurelyBeside | undefined {
  if (!lexicon.isHeard || clause.length < 2) return undefined;
  const heard = hearTokens(clause, lexicon);
  const subject = lexicon.subject()(heard);
  const check = lexicon.checks.get(subject.check);
  const asked = subject.shareOf(inHand.id);
  if (check === undefined || asked === undefined || asked > hardlyAsked) return undefined;
  if (subject.share < surelyOther || check.check.form.kind !== 'choice') return undefined;
  if ([inHand.id, inHand.check.like].includes(check.id) || isOfKit(check)) return undefined;
  const { at } = check.check;
  if (at !== 'memory' && at !== 'seat' && !namesCheck(heard, check)) return undefined;
  const choice = chooseOption(heard, check);
  if (choice.type !== 'one' || answerShare(heard, check, choice.fit.id) < surelySaid)
    return undefined;
  const told = [{ check: check.id, value: [choice.fit.id] }] as const;
  return { told, length: 1, asked: likeliest(heard, inHand).share };
}
