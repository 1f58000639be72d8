import { type Part, type PartOf, partsOf } from "../../../../record/parts.ts";
import { dayInWords } from "../../../parts/days-in-words.ts";
import type { EntrySubject } from "./subject-words.ts";

/** The computations that are about an instrument or a piece of one. */
const aboutInstruments: ReadonlySet<string> = new Set(["instrument", "bend", "lifeUsed", "fit", "fracture", "removal"]);

/**
 * What an entry about an instrument is about: `25/.06 in MB1` of a visit, `File 25/.06 B` over the case, or the canal in which
 * one broke, on the day that it did. Undefined for entries of other topics.
 */
export function instrumentSubject(topic: string, about: string, parts: readonly Part[]): EntrySubject | undefined {
  if (!aboutInstruments.has(topic)) return undefined;
  const [first = "", ...others] = about.split(" ");
  if (first === "file") return { canal: `File ${labelOf(others.join(" "), parts)}`, film: "counted files", day: "" };
  const part = parts.find(({ id }) => id === first);
  if (part?.kind === "visit") {
    const { on } = part.body;
    return { canal: usedIn(topic, others), film: `instruments of ${dayInWords(on)}`, day: on };
  }
  const broke = part?.kind === "removal" ? partsOf(parts, "mishap").find(({ id }) => id === part.body.mishap) : part;
  return broke?.kind === "mishap" ? atBreak(broke) : { canal: "", film: "", day: "" };
}

/** The name of an instrument holds a blank where it is counted on: `25/.06 (2)`. */
const usedIn = (topic: string, [first = "", ...name]: readonly string[]): string =>
  topic === "bend" ? `${name.join(" ")} in ${first}` : [first, ...name].join(" ");

const atBreak = ({ body }: PartOf<"mishap">): EntrySubject => ({
  canal: body.canal ?? "",
  ...{ film: `broken instrument of ${dayInWords(body.on)}`, day: body.on },
});

/** A counted file as the clinic marks it. */
function labelOf(id: string, parts: readonly Part[]): string {
  const rows = partsOf(parts, "visit").flatMap(({ body }) => body.instruments);
  return rows.findLast(({ file }) => file?.id === id)?.file?.label ?? id;
}
