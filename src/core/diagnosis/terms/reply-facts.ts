import { usualRoots } from "../../tooth/usual-roots.ts";
import { type Examined, type Sensibility, sensibilityOf } from "./examined.ts";
import { answerIs, anyOf, type Fact, fact, type Truth } from "./fact.ts";

/**
 * Whether the pulp replies, what the controls do, and whether tests and history agree.
 * Thermal pain in the history counts as a reply; a test that was not done counts as nothing.
 * @source docs/methods/diagnosis, C3 and C4
 */
export function replyFacts(examined: Examined) {
  const { input, tooth } = examined;
  const tests = sensibilityOf(tooth);
  const says = tests.map((one) => one.says).join("; ");
  const at = tests.map((one) => one.at);
  const known = (holds: boolean): Truth => (tests.length === 0 ? "unknown" : holds ? "yes" : "no");
  const silent = known(tests.every((one) => !one.replies));
  const testReplies = fact(known(tests.some((one) => one.replies)), says, ...at);
  const thermalPain = thermalPainOf(input.history);
  const reply = anyOf([testReplies.is, thermalPain.is === "yes" ? "yes" : testReplies.is]);
  return {
    tested: fact(tests.length > 0 ? "yes" : "unknown", says, ...at),
    testReplies,
    thermalPain,
    silent: fact(silent, says, ...at),
    reply: fact(
      reply,
      [says, thermalPain.is === "yes" ? thermalPain.says : ""].filter((one) => one !== "").join("; "),
      ...at,
      ...thermalPain.at,
    ),
    normalReply: fact(known(tests.some((one) => one.replies) && !tests.some((one) => one.heightened)), says, ...at),
    twoTests: fact(known(tests.length > 1), `${tests.length === 1 ? "one test" : `${tests.length} tests`} done`, ...at),
    repliesDiffer: fact(known(tests.some((one) => one.replies) && tests.some((one) => !one.replies)), says, ...at),
    repliesAgree: agreement(tests, silent === "yes" && thermalPain.is === "yes"),
    controlsReply: controlsReply(examined, tests),
    severalRoots: fact(
      usualRoots(tooth.tooth).mostRoots > 1 ? "yes" : "no",
      usualRoots(tooth.tooth).mostRoots > 1 ? "a tooth with several roots" : "a tooth with one root",
      "teeth",
    ),
  };
}

function thermalPainOf({ painToCold, painToHeat }: Examined["input"]["history"]): Fact {
  const is = anyOf([answerIs(painToCold, ["yes"]), answerIs(painToHeat, ["yes"])]);
  const told = [...(painToCold === "yes" ? ["cold"] : []), ...(painToHeat === "yes" ? ["heat"] : [])];
  const at =
    told.length === 0
      ? ["history.painToCold", "history.painToHeat"]
      : told.map((one) => `history.painTo${one === "cold" ? "Cold" : "Heat"}`);
  return fact(is, is === "yes" ? told.map((one) => `pain to ${one}`).join("; ") : "no pain to cold or heat", ...at);
}

/** Unknown where one test is answered and another is not, or all are silent and thermal pain is told. */
function agreement(tests: readonly Sensibility[], silentButPainful: boolean): Fact {
  const differ = tests.some((one) => one.replies) && tests.some((one) => !one.replies);
  return fact(differ || silentButPainful ? "unknown" : "yes", "", ...tests.map((one) => one.at));
}

/** Yes where a control answers a test that the tooth had, no where the controls of such a test are silent too. */
function controlsReply({ controls }: Examined, tests: readonly Sensibility[]): Fact {
  const same = controls.flatMap((control) =>
    sensibilityOf(control)
      .filter((one) => tests.some(({ test }) => test === one.test))
      .map((one) => ({ ...one, says: `control ${control.tooth} ${one.says}` })),
  );
  const silentTest = tests.some(({ test }) => {
    const ofTest = same.filter((one) => one.test === test);
    return ofTest.length > 0 && ofTest.every((one) => !one.replies);
  });
  const is = silentTest ? "no" : same.some((one) => one.replies) ? "yes" : "unknown";
  return fact(is, same.map((one) => one.says).join("; "), ...same.map((one) => one.at));
}
