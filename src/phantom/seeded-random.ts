/** Numbers that look random and are the same for the same seed, on every machine. */
export interface SeededRandom {
  /** A number from 0 up to but not including 1. */
  readonly uniform: () => number;
  /** A number of the normal law with mean 0 and standard deviation 1. */
  readonly normal: () => number;
}

/** Mixes the bits of a whole number so that neighbours come out unrelated. */
export function mixedBits(value: number): number {
  let bits = value | 0;
  bits = Math.imul(bits ^ (bits >>> 16), 0x21f0aaad);
  bits = Math.imul(bits ^ (bits >>> 15), 0x735a2d97);
  return (bits ^ (bits >>> 15)) >>> 0;
}

/**
 * A stream of numbers for a seed: a counter with the golden-ratio step whose bits are mixed (a Weyl sequence).
 * The normal law comes from twelve uniform numbers less six (Irwin-Hall): it needs no logarithm, whose last digit differs
 * between machines.
 */
export function seededRandom(seed: number): SeededRandom {
  let counter = mixedBits(seed + 1);
  const uniform = (): number => {
    counter = (counter + 0x9e3779b9) | 0;
    return mixedBits(counter) / 4294967296;
  };
  const normal = (): number => {
    let sum = -6;
    for (let draw = 0; draw < 12; draw++) sum += uniform();
    return sum;
  };
  return { uniform, normal };
}
