import type { Examined } from "./examined.ts";
import { answerFact, answerIs, anyOf, type Fact, fact, type Truth, yesNoFact } from "./fact.ts";

/** What the film shows at the apex, and what makes a silent test doubtful on it. @source docs/methods/diagnosis, C7 */
export function filmFacts({ input: { onFilm } }: Examined) {
  const found = (
    field: "ligament" | "lamina" | "lucency" | "resorption" | "apex" | "lesionFits",
    yes: string[],
    words: string,
  ): Fact => answerFact(onFilm[field], yes, words, `onFilm.${field}`);
  const lucencyWords = {
    apical: "an apical radiolucency",
    lateral: "a lateral radiolucency",
    furcal: "a radiolucency at the furcation",
  };
  const at = onFilm.lucency === "none" || onFilm.lucency === "notDone" ? undefined : lucencyWords[onFilm.lucency];
  const widened = found("ligament", ["widened"], "a widened ligament space");
  const lost = found("lamina", ["lost"], "a lost lamina dura");
  const lucency = found("lucency", ["apical", "lateral", "furcal"], at ?? "a radiolucency");
  return {
    lucency,
    lucencyApical: found("lucency", ["apical"], "an apical radiolucency"),
    lucencyBeside: found("lucency", ["lateral", "furcal"], at ?? "a radiolucency beside the root"),
    widened,
    laminaLost: lost,
    laminaIntact: fact(answerIs(onFilm.lamina, ["intact"]), "lamina dura intact", "onFilm.lamina"),
    filmNormal: filmNormal(onFilm, [lucency, widened, lost]),
    sclerosis: yesNoFact(onFilm.sclerosis, "a diffuse radiopacity at the apex", "onFilm.sclerosis"),
    resorption: found(
      "resorption",
      ["internal", "external"],
      `${onFilm.resorption === "internal" ? "internal" : "external"} resorption`,
    ),
    lesionOdd: found("lesionFits", ["no"], "a lesion that does not fit a tooth's infection"),
    lesionFitting: fact(onFilm.lesionFits === "no" ? "unknown" : "yes", "", "onFilm.lesionFits"),
    openApex: found("apex", ["open"], "an open apex"),
    calcified: yesNoFact(onFilm.calcified, "a calcified canal", "onFilm.calcified"),
  };
}

/** Normal: no lucency, and of ligament and lamina at least one was read and none is changed. */
function filmNormal({ lucency, ligament, lamina }: Examined["input"]["onFilm"], changes: readonly Fact[]): Fact {
  const changed = changes.filter(({ is }) => is === "yes");
  const read = anyOf([answerIs(ligament, ["normal"]), answerIs(lamina, ["intact"])]);
  const is: Truth = changed.length > 0 ? "no" : lucency === "none" && read === "yes" ? "yes" : "unknown";
  const says =
    changed.length > 0 ? changed.map((one) => one.says).join("; ") : "no radiolucency, ligament or lamina dura normal";
  return fact(is, says, "onFilm.lucency", "onFilm.ligament", "onFilm.lamina");
}
