/** A key that answered the last question and bounces answers nothing else: milliseconds. */
export const settleMs = 400;

/** A digit that is followed by more within this time begins a text, and answers nothing: milliseconds. */
export const typingMs = 300;

/** The same where the number of a receipt is typed off the paper before anything else: milliseconds. */
export const slowTypingMs = 900;
