/** A key that answered the last question and bounces answers nothing else: milliseconds. */
export const settleMs = 400;

/** A digit that is followed by more within this time begins a text, and answers nothing: milliseconds. */
export const typingMs = 300;
