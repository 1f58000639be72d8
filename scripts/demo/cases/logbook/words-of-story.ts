import type { Story } from "./story.ts";

/** The complaint, as somebody with this diagnosis would put it. */
export function complaintOf({ pulpal, apical, dice }: Story): string {
  if (apical === "acuteApicalAbscess") return "Cheek swollen since yesterday, throbs all the time.";
  if (apical === "chronicApicalAbscess") return "A pimple on the gum that comes and goes.";
  if (pulpal === "symptomaticIrreversiblePulpitis")
    return dice.pick([
      ["Cold goes through it and stays.", 3],
      ["It wakes me at night and I can't say which tooth.", 2],
      ["Warm tea sets it off, cold water calms it for a moment.", 1],
    ]);
  if (pulpal === "reversiblePulpitis") return "Short and sharp with cold, gone at once.";
  if (apical === "symptomaticApicalPeriodontitis")
    return dice.pick([
      ["I can't bite on it.", 3],
      ["It feels too long and aches when I chew.", 2],
    ]);
  return "None; seen on a film.";
}

/** Why the referring dentist sent the patient. */
export function referredForOf({ treatment, calcified, curved, molar, dice }: Story): string {
  if (treatment === "surgery") return "Lesion that did not shrink after retreatment; root-end surgery.";
  if (treatment === "retreatment")
    return dice.pick([
      ["Retreatment: filling short, lesion.", 3],
      ["Retreatment before a new crown.", 2],
      ["Retreatment: a canal seems to have been missed.", 2],
    ]);
  if (treatment === "apicalBarrier") return "Root not finished, no reply to cold.";
  if (treatment === "vitalPulp") return "Deep caries, pulp to be kept alive if possible.";
  if (calcified) return "Canals could not be found.";
  return curved && molar ? "Strongly curved roots." : "Root canal treatment.";
}

/** Why the diagnosis is what it is, in a sentence. */
export function becauseOf({ pulpal, apical, lesionMm }: Story): string {
  const pulp = {
    symptomaticIrreversiblePulpitis: "Reply to cold outlasts the stimulus, the control's does not.",
    asymptomaticIrreversiblePulpitis: "Pulp exposed by caries, no complaint.",
    reversiblePulpitis: "Short reply to cold, gone with the stimulus.",
    pulpNecrosis: "No reply to cold where the control replies.",
    previouslyTreated: "Root-filled.",
    previouslyInitiatedTherapy: "Opened elsewhere, dressed.",
    normalPulp: "",
    notDetermined: "",
  }[pulpal];
  const bone = lesionMm === undefined ? "No lucency." : `Apical lucency of ${lesionMm} mm.`;
  const touch = apical === "symptomaticApicalPeriodontitis" ? " Painful to percussion." : "";
  return `${pulp} ${bone}${touch}`.trim();
}
