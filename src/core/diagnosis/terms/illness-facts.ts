import type { Examined } from "./examined.ts";
import { allOf, answerIs, anyOf, type Fact, fact, joined, type Truth, yesNoFact } from "./fact.ts";

/** Above this a temperature is a fever (common practice). */
const feverAboveC = 38;

/** Swelling, fever and the signs that can't wait. @source docs/methods/diagnosis, C1 and C6 */
export function illnessFacts({ input: { history, seen } }: Examined) {
  const swelling = swellingOf(seen);
  const rapid = onsetIs(seen.swellingOnset, "rapid");
  const pus = yesNoFact(seen.pus, "pus", "seen.pus");
  const told = yesNoFact(seen.fever, "fever", "seen.fever");
  const hot = temperature(seen.temperatureC);
  const fever = joined(hot.is === "unknown" || told.is === "yes" ? told.is : hot.is, [told, hot]);
  const tract = answerIs(seen.sinusTract, ["present", "traced"]);
  const collection = anyOf([swelling.is, pus.is === "yes" ? "yes" : swelling.is]);
  const withFever =
    collection === "yes" || tract === "yes" ? fever.is : anyOf([collection, tract]) === "no" ? "no" : "unknown";
  const acute = anyOf([allOf([collection, rapid.is]), withFever]);
  const nodes = yesNoFact(seen.nodes, "enlarged or tender lymph nodes", "seen.nodes");
  return {
    swelling,
    gradual: onsetIs(seen.swellingOnset, "gradual"),
    fever,
    feverTold: told,
    hot,
    pus,
    nodes,
    ...spreadFacts({ history, seen }, [swelling, pus, fever, nodes]),
    acute: joined(acute, [swelling, pus, rapid, fever]),
    extraoral: fact(answerIs(seen.swelling, ["extraoral"]), "swelling outside the mouth", "seen.swelling"),
    intraoral: fact(answerIs(seen.swelling, ["intraoral"]), "swelling inside the mouth", "seen.swelling"),
    placedWithout: fact(
      deniedAndPlaced(seen) ? "yes" : "unknown",
      "a place or an onset of a swelling that is not there",
      "seen.swelling",
      "seen.swellingAt",
    ),
    floorOrNeck: floorOrNeck(seen.swellingAt),
    trismus: yesNoFact(history.trismus, "trismus", "history.trismus"),
    swallowing: yesNoFact(history.troubleSwallowing, "trouble swallowing", "history.troubleSwallowing"),
    breathing: yesNoFact(history.troubleBreathing, "trouble breathing", "history.troubleBreathing"),
    numbLip: yesNoFact(history.numbLip, "a numb lip", "history.numbLip"),
  };
}

const placeWords = {
  vestibule: "the vestibule",
  palate: "the palate",
  cheek: "the cheek",
  floorOfMouth: "the floor of the mouth",
  neck: "the neck",
} as const;

type Seen = Examined["input"]["seen"];

const deniedAndPlaced = ({ swelling, swellingAt, swellingOnset }: Seen): boolean =>
  swelling === "none" && (swellingAt.length > 0 || swellingOnset !== "notAsked");

/** Whether anything shows an infection that may spread, and whether all that shows its spread was asked for. */
function spreadFacts({ history, seen }: Pick<Examined["input"], "history" | "seen">, signs: readonly Fact[]) {
  const answers = [history.trismus, history.troubleSwallowing, history.troubleBreathing];
  const placed = signs[0]?.is !== "yes" || seen.swellingAt.length > 0;
  const heat = seen.temperatureC !== undefined || seen.fever !== "notAsked";
  const all = placed && heat && !answers.includes("notAsked");
  return {
    ill: joined(anyOf(signs.map(({ is }) => is)), signs),
    spreadAsked: fact(all ? "yes" : "unknown", "", "history", "seen"),
  };
}

/** Denied and placed at once it is not known. */
function swellingOf(seen: Seen): Fact {
  const { swelling, swellingAt } = seen;
  if (deniedAndPlaced(seen)) return fact("unknown", "", "seen.swelling");
  const places = [...swellingAt].sort().map((one) => placeWords[one]);
  const is: Truth =
    swellingAt.length > 0 && swelling === "notDone" ? "yes" : answerIs(swelling, ["intraoral", "extraoral"]);
  const where =
    places.length > 0 ? ` of ${places.join(" and ")}` : swelling === "extraoral" ? " outside the mouth" : "";
  return fact(is, is === "yes" ? `swelling${where}` : "no swelling", "seen.swelling");
}

function onsetIs(onset: string, which: "rapid" | "gradual"): Fact {
  const is = answerIs(onset, [which]);
  return fact(is, `${onset} onset`, "seen.swellingOnset");
}

const temperature = (celsius: number | undefined): Fact =>
  celsius === undefined
    ? fact("unknown", "")
    : fact(celsius > feverAboveC ? "yes" : "no", `${celsius} °C`, "seen.temperatureC");

function floorOrNeck(at: readonly string[]): Fact {
  const grave = (["floorOfMouth", "neck"] as const).filter((one) => at.includes(one));
  const says = `swelling of ${grave.map((one) => placeWords[one]).join(" and ")}`;
  return fact(grave.length > 0 ? "yes" : "unknown", says, "seen.swellingAt");
}
