import { asMeant } from './as-meant.ts';
import { saidWholly } from './said-wholly.ts';
import { saysStart } from './start-said.ts';
import { surelyBeside } from './surely-beside.ts';
import { dangerTold, signsIn } from './told-danger.ts';
import { withoutDoubtful } from './told-doubtful.ts';
import { asAnswered } from './told-as-answer.ts';
import { toldOfEvery } from './told-of-every.ts';
import { toldSurely } from './told-surely.ts';
import { toldToo } from './told-too.ts';
import { withoutTrials } from './tried-things.ts';
import type { AsHeard } from './turn.ts';
import { fuelBeside } from './fuel-beside.ts';

/** What a bot and a terminal make of answers, which know what people are heard to say. */
export const asHeard: AsHeard = {
  asMeant,
  withMore: (given, turn) => {
    const all = [...given, ...toldToo(given, turn)];
    const sure = [...all, ...toldSurely(all, turn)];
    return [...sure, ...toldOfEvery(sure, turn)];
  },
  withoutDoubtful,
  withoutTrials,
  saidWholly,
  saysStart,
  asAnswered,
  surelyBeside: (clause, inHand, turn) =>
    fuelBeside(clause, inHand, turn) ?? surelyBeside(clause, inHand, turn.listener.lexicon),
  dangerTold,
  signsIn,
};
