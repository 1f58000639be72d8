import burklein from "../../../data/burklein-2021/source.json" with { type: "json" };
import cheungDarvell from "../../../data/cheung-darvell-2007/source.json" with { type: "json" };
import hulsmann from "../../../data/hulsmann-2019/source.json" with { type: "json" };
import miner from "../../../data/miner-1945/source.json" with { type: "json" };
import mukhlif from "../../../data/mukhlif-2013/source.json" with { type: "json" };
import pruett from "../../../data/pruett-1997/source.json" with { type: "json" };
import { type Basis, sourcesOf } from "../basis.ts";
import type { LifeInput } from "./life-input.ts";

/** What the life used rests on. */
export const lifeSources = sourcesOf([cheungDarvell, miner, burklein, hulsmann, pruett, mukhlif]);

/** The published range of the strain-life slope: its weak end was read, its strong end recalled. */
export const publishedSlope = { strong: cheungDarvell.slope.strong.value, weak: cheungDarvell.slope.weak.value };

/** How the life used came about, and what it can and can't tell. */
export function lifeBasis({ slope, referenceStrain, uses }: LifeInput): Basis {
  const { strong, weak } = slope ?? publishedSlope;
  const origin = slope === undefined ? "published; the first end from memory" : "as given";
  return {
    formula:
      "Each turn at strain e costs (e / e0)^(1 / |c|) turns at the reference strain e0; costs add, section by section",
    assumptions: [
      `The strain-life slope c lies between ${strong} and ${weak} (${origin}); the bands hold that alone.`,
      referenceStrain === undefined
        ? "e0 is the largest strain of the same instrument in the reference canal: 60 degrees on 5 mm, its middle 5 mm from the tip."
        : `e0 is ${referenceStrain}, as given.`,
      "The reference minute turns as fast as the uses did on average.",
      ...(uses.some(({ reciprocation }) => reciprocation !== undefined)
        ? ["Reciprocation wears by all of its swept turning; limits of turns count what is left of both directions."]
        : []),
      "Each use's wear adds, whatever came before; twisting and bending are not coupled, since published results have no agreed sign.",
      "The instrument follows each course; in a wide canal it is bent less.",
      "This compares uses of one instrument. It does not tell how many turns are left.",
    ],
    sources: lifeSources.map(({ id }) => id),
  };
}

/** What a reader must know beside the life used. */
export function lifeCautions({ uses }: LifeInput): string[] {
  return [
    `Relative life alone: published lives of one and the same instrument differ by a factor of about ${hulsmann.lifeRatioBetweenStudies}, and the temperature of the test alone changes life by up to ${hulsmann.temperatureEffect * 100} %.`,
    "Whether speed itself shortens life is not agreed: one series found no effect on the turns to fracture (750 to 2000 a minute), another a shorter life at 400 than at 250; here it enters through turns only.",
    ...(uses.some(({ engagedFraction }) => engagedFraction === undefined)
      ? ["Where no share is stated, every turn counts as made at full depth, which counts too much."]
      : []),
  ];
}
