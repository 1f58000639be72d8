import type { Truth } from "./fact.ts";
import type { Facts } from "./facts-of.ts";
import type { Wanted, When } from "./rules.ts";

/**
 * Whether a row holds: yes, no, or unknown because something that it wants was not done.
 * Takes what the row wants, and the facts; a fact that is wanted as unknown, or as not yes, is settled by not being known.
 * @source three-valued logic; docs/methods/diagnosis, C9
 */
export function holds(when: When, facts: Facts): Truth {
  const found = Object.entries(when).map(([name, wanted]) => meets(truthOf(name, facts), wanted));
  if (found.includes("no")) return "no";
  return found.includes("unknown") ? "unknown" : "yes";
}

function meets(is: Truth, wanted: Wanted): Truth {
  if (wanted === "unknown") return is === "unknown" ? "yes" : "no";
  if (wanted === "notYes") return is === "yes" ? "no" : "yes";
  if (wanted === "notNo") return is === "no" ? "no" : "yes";
  if (is === "unknown") return "unknown";
  return is === wanted ? "yes" : "no";
}

/** Whether a thing holds, by its name; one that is no fact is not known. */
export const truthOf = (name: string, facts: Facts): Truth => facts[name]?.is ?? "unknown";

/** What was found of the things that a row looks at, in words. */
export function findingOf(when: When, facts: Facts): string {
  const told = Object.entries(when).flatMap(([name, wanted]) => {
    const { is = "unknown", says = "" } = facts[name] ?? {};
    return says !== "" && (wanted === is || wanted === "notNo") ? says.split("; ") : [];
  });
  return [...new Set(told)].join("; ");
}

/** Where in the input the things that a row looks at stand. */
export const placesOf = (when: When, facts: Facts): string[] => [
  ...new Set(Object.keys(when).flatMap((name) => facts[name]?.at ?? [])),
];
