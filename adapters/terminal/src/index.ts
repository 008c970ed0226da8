// Case cards: read, and played through their flow.
export { CardError, readCards, type Card } from './card.ts';
export { replayCard, type Replayed } from './replay-card.ts';

// The flows of this checkout.
export { FlowError, shippedFlow, type ShippedFlow } from './shipped-flow.ts';
