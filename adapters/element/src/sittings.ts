/** A case as it lies before a person, without a page: also for a worker, which has no document. */
export { offerInput, offerLetter } from '@keyturn/conversation';
export { askAgain } from './case/ask-again.ts';
export { besideKeys } from './case/beside-keys.ts';
export { messagesInHand } from './case/in-hand.ts';
export { packFlow, unpackFlow, type PackedFlow } from './case/packed-flow.ts';
export { pickedBefore } from './case/picked-before.ts';
export { openSitting, takeInputs, takeLine, type Sitting, type Taken } from './case/sitting.ts';
