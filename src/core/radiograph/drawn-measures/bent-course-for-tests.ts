import type { z } from "zod";
import { Refusal } from "../../refusal.ts";
import { seededRandom } from "../../statistics/seeded-random.ts";
import { answer, type Topic } from "../../topic.ts";

/** A place in mm. */
export type At = [number, number];

/** Where a canal is so far from its orifice at (20, 5): 10 mm straight down, then an arc of radius 5 mm to the right; and how far to its left. */
export function onBentCourse(alongMm: number, asideMm = 0): At {
  if (alongMm <= 10) return [20 + asideMm, 5 + alongMm];
  const turn = (alongMm - 10) / 5;
  const radius = 5 - asideMm;
  return [25 - radius * Math.cos(turn), 15 + radius * Math.sin(turn)];
}

/** The length of that canal: its arc turns by 60 degrees. */
export const bentLengthMm = 10 + (5 * Math.PI) / 3;

/** That canal, a point about every 0.12 mm as a followed line has them. */
export const bentCourse: At[] = Array.from({ length: 129 }, (_, at) => onBentCourse((bentLengthMm * at) / 128));

/** A place off by a click. */
export type Clicked = (at: At) => At;

/** Mean and standard deviation of what `measure` gives over 4000 seeded clicks. */
export function overClicks(sigmaMm: number, measure: (clicked: Clicked) => number): { mean: number; sigma: number } {
  const { normal } = seededRandom(11);
  const found = Array.from({ length: 4000 }, () =>
    measure(([x, y]) => [x + sigmaMm * normal(), y + sigmaMm * normal()]),
  );
  const mean = found.reduce((sum, value) => sum + value, 0) / found.length;
  return { mean, sigma: Math.sqrt(found.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (found.length - 1)) };
}

/** Half the width of a 95 % interval in standard deviations: normal distribution. */
export const halfOf95 = 1.96;

/** What a topic refuses with. */
export function refusalOf<Input extends z.ZodType, Output extends z.ZodType>(
  topic: Topic<Input, Output>,
  input: unknown,
): Refusal {
  try {
    answer(topic, input);
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  throw new Error("not refused");
}
