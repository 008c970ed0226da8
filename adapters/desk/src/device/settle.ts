/** A key that answered the last question and bounces answers nothing else: milliseconds. */
export const settleMs = 400;
