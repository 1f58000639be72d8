import jacobsen from "../../../../data/jacobsen-1980/source.json" with { type: "json" };
import type { Examined } from "./examined.ts";
import { answerIs, anyOf, type Fact, fact, joined, type Truth, yesNoFact } from "./fact.ts";

const daysAMonth = 365.25 / 12;

/** Days after an injury within which necrosis was mostly found, and until which replies still changed. */
const traumaSpan = {
  newUntilDays: Math.round(jacobsen.foundWithinMonths * daysAMonth),
  oldFromDays: Math.round(jacobsen.repliesChangedUntilMonths * daysAMonth),
} as const;

/**
 * What makes a silent test doubtful: an open apex, a calcified canal, a new injury.
 * @source Jacobsen I, Scand J Dent Res, 1980, 306-312 (seen); Bastos JV et al., Dent Traumatol, 2014, 188-192 (seen); docs/methods/diagnosis, C4
 */
export function doubtFacts(examined: Examined, film: { readonly openApex: Fact; readonly calcified: Fact }) {
  const { trauma, traumaOn } = examined.input.history;
  const newTrauma = newTraumaOf(examined.input);
  const reasons = [film.openApex, film.calcified, newTrauma];
  const day = "history.traumaOn";
  return {
    newTrauma,
    ...dentitionFacts(examined),
    doubtful: joined(anyOf(reasons.map(({ is }) => is)), reasons),
    traumaDated: fact(trauma === "yes" && newTrauma.is === "unknown" ? "unknown" : "yes", "", day),
    traumaTold: yesNoFact(trauma, "trauma", "history.trauma"),
    traumaDay: fact(traumaOn === undefined ? "unknown" : "yes", `a day of trauma, ${traumaOn}`, day),
  };
}

/** What sensibility tests say of a primary tooth is not published here (common practice: little). */
function dentitionFacts({ tooth: { tooth } }: Examined) {
  const primary = tooth >= "51";
  return {
    permanentTooth: fact(primary ? "unknown" : "yes", "", "teeth"),
    primaryTooth: fact(primary ? "yes" : "no", `${tooth} is a primary tooth`, "teeth"),
  };
}

function newTraumaOf({ takenOn, history: { trauma, traumaOn }, newTraumaUntilDays: cut }: Examined["input"]): Fact {
  if (trauma !== "yes") return fact(answerIs(trauma, ["yes"]), "no trauma", "history.trauma");
  if (takenOn === undefined || traumaOn === undefined) return fact("unknown", "");
  const days = Math.round((Date.parse(takenOn) - Date.parse(traumaOn)) / 86_400_000);
  return fact(newAt(days, cut), `trauma ${days} days before`, "history.traumaOn");
}

function newAt(days: number, cut: number | undefined): Truth {
  if (days <= (cut ?? traumaSpan.newUntilDays)) return "yes";
  return days > (cut ?? traumaSpan.oldFromDays) ? "no" : "unknown";
}
