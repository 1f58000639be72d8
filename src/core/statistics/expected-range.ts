import { normalShareBelow } from "./normal-share.ts";

/**
 * How far apart the smallest and the largest of some normal numbers lie on average, in standard deviations.
 * Takes how many there are, a whole number of at least 2. Gives 1.128 for 2 and 3.778 for 21.
 * @source Tippett LHC, On the extreme individuals and the range of samples taken from a normal population, Biometrika,
 * 1925;17:364-387 (memory)
 */
export function expectedRange(count: number): number {
  // The chance that a place lies between the two ends, added up along the line; smooth and 0 at both ends of it.
  const steps = 4_000;
  const width = (2 * farOut) / steps;
  let sum = 0;
  for (let step = 0; step <= steps; step++) {
    const below = normalShareBelow(-farOut + step * width);
    sum += 1 - below ** count - (1 - below) ** count;
  }
  return sum * width;
}

const farOut = 9;
