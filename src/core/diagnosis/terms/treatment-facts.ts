import type { Examined } from "./examined.ts";
import { answerIs, type Fact, fact, joined, type Truth } from "./fact.ts";

/** What was done in the canals before: filled, opened, and whether record and film agree. @source docs/methods/diagnosis, C2 */
export function treatmentFacts({ input: { existing, onFilm } }: Examined) {
  const inCanals = (...states: readonly string[]): Truth => {
    if (existing === undefined) return "unknown";
    return existing.some(({ is }) => states.includes(is)) ? "yes" : "no";
  };
  const canals = [...(existing ?? [])].sort((a, b) => (a.canal < b.canal ? -1 : 1));
  const asTold =
    canals.length === 0 ? "the tooth was never opened" : canals.map(({ canal, is }) => `${canal} ${is}`).join(", ");
  const filledByRecord = fact(inCanals("filled"), asTold, "existing");
  const filledOnFilm = fact(
    answerIs(onFilm.earlierFilling, ["present"]),
    onFilm.earlierFilling === "present" ? "a root filling on the film" : "no root filling on the film",
    "onFilm.earlierFilling",
  );
  return {
    filled: joined(knownBy([filledByRecord, filledOnFilm]), [filledByRecord, filledOnFilm]),
    filledByRecord,
    filledOnFilm,
    opened: fact(inCanals("opened", "medicated"), asTold, "existing"),
  };
}

/** One place that shows it is enough; without one, a place that was looked at and shows none. */
function knownBy(places: readonly Fact[]): Truth {
  if (places.some(({ is }) => is === "yes")) return "yes";
  return places.some(({ is }) => is === "no") ? "no" : "unknown";
}
