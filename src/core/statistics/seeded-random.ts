/** A stream of random numbers that is the same for the same seed. */
export interface SeededRandom {
  /** The next number of the even distribution, 0 up to but not including 1. */
  readonly uniform: () => number;
  /** The next number of the normal distribution with mean 0 and standard deviation 1. */
  readonly normal: () => number;
}

/**
 * A stream of random numbers from a seed.
 * Takes any whole number; the same seed gives the same stream on every machine.
 * @source S. Vigna, "An experimental exploration of Marsaglia's xorshift generators", ACM Trans Math Softw 2016;42:30
 * (memory: the mixing step of splitmix in 32 bits); normal numbers by the polar method of G. Marsaglia and T. A. Bray,
 * SIAM Rev 1964;6:260-264 (memory).
 */
export function seededRandom(seed: number): SeededRandom {
  let state = seed >>> 0;
  let spare: number | undefined;
  const uniform = (): number => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 4294967296;
  };
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const a = 2 * uniform() - 1;
      const b = 2 * uniform() - 1;
      const square = a * a + b * b;
      if (square > 0 && square < 1) {
        const factor = Math.sqrt((-2 * Math.log(square)) / square);
        spare = b * factor;
        return a * factor;
      }
    }
  };
  return { uniform, normal };
}
