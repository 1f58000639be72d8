import type { AttemptsNow, RuleNow, RuleStanding } from "../../../../record/attempts-against-rules.ts";
import { countOf, numberInWords } from "../../../parts/figures-in-words.ts";

const two = (value: number) => String(value).padStart(2, "0");

/** What a running clock shows: `3:07`, `75:00`; never less than nothing. */
export function clockInWords(since: string, now: number): string {
  const seconds = Math.max(0, Math.floor((now - Date.parse(since)) / 1000));
  return `${Math.floor(seconds / 60)}:${two(seconds % 60)}`;
}

/** `19.5 min`. */
export const minutesInWords = (minutes: number): string => `${numberInWords(minutes, 1).replace(/\.0$/, "")} min`;

/** Its shape beside the words of a rule, so that neither stands for itself alone. */
export const standingMarks: Readonly<Record<RuleStanding, string>> = { within: "○", near: "◇", reached: "◆" };

/** A rule against what was done: `48 of 60 min: near the rule, decide now how you stop`. */
export function ruleInWords({ rule, done, limit, standing }: RuleNow): string {
  const [was, of] =
    rule === "minutes"
      ? [numberInWords(done, 1).replace(/\.0$/, ""), minutesInWords(limit)]
      : [numberInWords(done, 0), countOf(limit, "attempt")];
  const says = {
    within: "below your rule",
    near: "near your rule; decide now how you stop",
    reached: "your rule is reached; it says stop",
  }[standing];
  return `${was} of ${of}: ${says}`;
}

/** What is said aloud when a removal comes near its rules or reaches them; nothing before. */
export const rulesAloud = ({ rules }: AttemptsNow): string =>
  rules
    .filter(({ standing }) => standing !== "within")
    .map((rule) => `Stop rule: ${ruleInWords(rule)}`)
    .join(". ");
