// Case cards: read, and played through their flow.
export { CardError, readCards, type Card } from './card.ts';
export { replayCard, type Replayed } from './replay-card.ts';

// The flows of this checkout.
export { FlowError, shippedFlow, type ShippedFlow } from '@keyturn/flows';

// Questions answered with a figure, its spread and its source.
export { answerQuestion, type Reply } from './numbers/answer-question.ts';
export { layOutHelp, layOutReply } from './numbers/lay-out.ts';
