// Case cards: read, and played through their flow.
export { CardError, readCards, type Card } from './card.ts';
export { replayCard, replayDecision, type Replayed, type ReplayedDecision } from './replay-card.ts';

// The flows of this checkout.
export { FlowError, shippedFlow, shippedTexts, type ShippedFlow } from '@keyturn/flows';

// What typed texts mean, for statistics and for authors of phrases.
export { meaningOf, type Meaning, type SaidAnswer } from './meaning.ts';

// Questions answered with a figure, its spread and its source.
export { answerQuestion, type Reply } from './numbers/answer-question.ts';
export { layOutHelp, layOutReply } from './numbers/lay-out.ts';

// A page of what is said, as lines.
export { plain } from './emphasis.ts';
export { layOutPage, type Page } from './page.ts';
