import { type Examined, sensibilityOf } from "./examined.ts";
import { answerIs, type Fact, fact } from "./fact.ts";

/** What the pain behaves like, and whether a test brings it back. @source docs/methods/diagnosis, C1 */
export function originFacts(examined: Examined) {
  const { painLike, reproduced } = examined.input.history;
  const like = [...painLike].sort();
  const at = "history.painLike";
  return {
    painLike: fact(like.length > 0 ? "yes" : "unknown", `pain that behaves like ${like.join(" and ")}`, at),
    painLikeHeart: fact(like.includes("heart") ? "yes" : "unknown", "pain that behaves like heart", at),
    notReproduced:
      reproduced === "notTried"
        ? silentExamination(examined)
        : fact(
            answerIs(reproduced, ["byNoTest"]),
            reproduced === "byNoTest" ? "no test brings the pain back" : "a test brings the pain back",
            "history.reproduced",
          ),
  };
}

/** Pain is told, every test that could bring it back was done, and none did. */
function silentExamination({ tooth, input: { history } }: Examined): Fact {
  const told = [history.spontaneousPain, history.painToCold, history.painToHeat, history.painOnBiting].includes("yes");
  const tests = sensibilityOf(tooth);
  const done =
    tests.some(({ test }) => test === "cold") &&
    (history.painToHeat !== "yes" || tests.some(({ test }) => test === "heat"));
  const quiet = tests.every((one) => one.replies && !one.heightened) && !lasts(tooth.cold) && !lasts(tooth.heat);
  const untouched = [tooth.percussion, tooth.palpation, tooth.bite].every((one) => one === "none");
  if (!told || !done || !quiet || !untouched || history.painToSweet === "yes") return fact("unknown", "");
  return fact("yes", "pain is told, and no test of the tooth brought it back", `tooth ${tooth.tooth}`, "history");
}

/** A reply that lasts any longer than a healthy one (2 s) has brought something back. */
const lasts = ({ lingersSeconds }: Examined["tooth"]["cold"]): boolean => (lingersSeconds ?? 0) > 2;
