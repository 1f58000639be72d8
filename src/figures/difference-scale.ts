/**
 * How a difference picture is drawn, in standard deviations of what grain and small shifts leave: up to the first nothing
 * is shown, so that nobody reads noise; from the second on it is black or white.
 */
export const noiseSigmas = 2;
/** See {@link noiseSigmas}. */
export const fullSigmas = 8;
