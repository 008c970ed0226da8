/**
 * No answer is held to be impossible: people err, and parts fail in ways that nobody listed.
 * Out of one.
 */
export const leastLikelihood = 0.0003;
