import type { CaseFacts } from "./case-facts.ts";
import type { PlanInput } from "./plan-input.ts";
import type { PlanOutput } from "./plan-output.ts";
import { plainTexts } from "./plan-tables.ts";

/**
 * What is wrong with the tooth and what happens if nothing is done, for the patient, from the clinician's terms.
 * @source docs/methods/plan.md C11
 */
export function planPlain({ pulpal, apical }: PlanInput, facts: CaseFacts): PlanOutput["plain"] {
  const { pulpal: ofPulp, apical: ofApex, ifNothing } = plainTexts;
  return {
    whatIsWrong: [ofPulp[pulpal ?? "notDetermined"], ofApex[apical ?? "notDetermined"]].flatMap((text) => text ?? []),
    ifNothingIsDone: ifNothing[whatFollows(pulpal, apical, facts)],
  };
}

function whatFollows(
  pulpal: PlanInput["pulpal"],
  apical: PlanInput["apical"],
  facts: CaseFacts,
): keyof typeof plainTexts.ifNothing {
  if (pulpal === undefined || pulpal === "notDetermined") return "unknown";
  if (["acuteApicalAbscess", "chronicApicalAbscess"].includes(apical ?? "")) return "infected";
  if (["pulpNecrosis", "previouslyInitiatedTherapy"].includes(pulpal)) return "infected";
  if (pulpal === "previouslyTreated")
    return apical === "symptomaticApicalPeriodontitis" || facts.get("pain") === "present" ? "infected" : "silentFilled";
  if (["normalPulp", "reversiblePulpitis"].includes(pulpal) && facts.get("caries") !== "deep") return "sound";
  return "inflamed";
}
