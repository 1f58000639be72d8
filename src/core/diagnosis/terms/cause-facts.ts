import type { Examined } from "./examined.ts";
import { answerIs, anyOf, type Fact, fact, joined, yesNoFact } from "./fact.ts";

/** What could have harmed the pulp: caries, exposure, a crack. @source docs/methods/diagnosis, C5 */
export function causeFacts({ input: { seen, history } }: Examined) {
  const caries = (yes: string[], words: string): Fact => fact(answerIs(seen.caries, yes), words, "seen.caries");
  const laidOpen = answerIs(seen.exposure, ["caries", "excavation", "trauma"]);
  const byExposure = fact(
    laidOpen,
    laidOpen === "yes" ? `pulp exposed by ${seen.exposure}` : "no exposure",
    "seen.exposure",
  );
  const byCaries = caries(
    ["exposed"],
    seen.caries === "exposed" ? "pulp exposed in the cavity" : "no exposure in a cavity",
  );
  const crack = answerIs(seen.crack, ["suspected", "present"]);
  return {
    exposed: joined(anyOf([byExposure.is, byCaries.is]) === "yes" ? "yes" : laidOpen, [byExposure, byCaries]),
    deepCaries: caries(["deep"], seen.caries === "deep" ? "deep caries" : "no deep caries"),
    cariesExposed: byCaries,
    noCaries: caries(["none"], seen.caries === "none" ? "no caries" : "caries"),
    noExposure: fact(answerIs(seen.exposure, ["none"]), "no exposure", "seen.exposure"),
    exposedByCaries: fact(
      answerIs(seen.exposure, ["caries", "excavation"]),
      `exposure by ${seen.exposure}`,
      "seen.exposure",
    ),
    crack: fact(crack, crack === "yes" ? `a crack ${seen.crack}` : "no crack", "seen.crack"),
    painOnRelease: yesNoFact(history.painOnRelease, "pain on release of the bite", "history.painOnRelease"),
  };
}
