import type { Part } from "../../../../record/parts.ts";
import { dayInWords } from "../../../parts/days-in-words.ts";
import { capital } from "../../../words/capital.ts";
import type { EntrySubject } from "./subject-words.ts";

/** The computations that are about what a visit used. */
const aboutVisits: ReadonlySet<string> = new Set(["anaesthetic", "solvent", "irrigation", "ultrasonicHeat"]);

/**
 * What an entry about a visit's materials is about: the visit by its day; of an irrigation the canal, of one of several solvents its
 * name, and whether it is what the patient breathes. Undefined for entries of other topics.
 */
export function visitSubject(topic: string, subject: string, parts: readonly Part[]): EntrySubject | undefined {
  if (!aboutVisits.has(topic)) return undefined;
  const [, what = "", id = "", name = ""] = /^(.*?) of (\S+) ?(.*)$/.exec(subject) ?? [];
  const visit = parts.find((part) => part.id === id);
  if (visit?.kind !== "visit") return { canal: "", film: "", day: "" };
  const { on } = visit.body;
  const of = what === "extrusion" ? "past the foramen" : what.endsWith("for the patient") ? "the patient" : "";
  const canal = [of, name].filter((one) => one !== "").join(", ");
  return { canal: capital(canal), film: `visit of ${dayInWords(on)}`, day: on };
}
