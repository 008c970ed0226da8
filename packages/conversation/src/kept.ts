/** Conversations over a store, for a channel to hold: for servers, not for a page. */
export { createConversations } from './conversations.ts';
export type { VehicleSaid } from './vehicle-said.ts';
export type { Conversations, ConversationsOptions, OfferedFlow, Taking } from './conversations.ts';
