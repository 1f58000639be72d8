import { z } from "zod";
import { Refusal } from "../core/refusal.ts";
import type { Exercise } from "../record/exercise.ts";
import type { Settings } from "../record/settings.ts";

const pairs = z.int().min(1);
const answered = z.object({
  ...{ n: pairs, sigmaPx: z.number() },
  without: z.object({ n: pairs, sigmaPx: z.number() }).optional(),
});

/**
 * The click error that an exercise gives to the settings, in thousandths of a pixel, with where it came from.
 * Takes which of its errors: that of all pairs, or that without the outliers.
 * @throws Refusal `input.impossible` where the exercise is not finished, has no such error, or gave none above 0
 */
export function sigmaOfExercise(
  { id, finished }: Exercise,
  which: "all" | "without",
): Pick<Settings, "clickSigmaPx" | "clickSigmaFrom"> {
  if (finished === undefined) throw cannot("the exercise is not finished");
  const all = answered.parse(finished.answer);
  const wanted = which === "all" ? all : all.without;
  if (wanted === undefined) throw cannot("it has no pair that is out of line");
  const clickSigmaPx = Math.round(wanted.sigmaPx * 1_000) / 1_000;
  if (clickSigmaPx <= 0 || clickSigmaPx > 20) throw cannot(`${clickSigmaPx} px is no click error (0 to 20 px)`);
  return { clickSigmaPx, clickSigmaFrom: { exerciseId: id, at: finished.at, n: 2 * wanted.n } };
}

const cannot = (why: string): Refusal => new Refusal("input.impossible", `Cannot use this click error: ${why}`);
