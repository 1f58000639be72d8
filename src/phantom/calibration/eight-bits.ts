/** Samples of 12 bits as bytes: a film of the exercise is kept in 8 bits, which grain hides and the package feels. */
export const eightBits = (samples: Uint16Array): Uint8Array =>
  Uint8Array.from(samples, (sample) => Math.round((sample * 255) / 4095));
