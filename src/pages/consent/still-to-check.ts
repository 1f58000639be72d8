import { type Block, says } from "../page-model.ts";
import type { ConsentCase } from "./consent-case.ts";
import { consentWords } from "./consent-words.ts";

/** What a way waits for, in words for the patient: by the fact that is not known or not as it should be, or by the row that asks. */
export const plainChecks: Readonly<Record<string, string>> = {
  pulpal: "How sick the nerve in your tooth is.",
  apical: "How the bone at the end of the root is.",
  lesion: "If there is a dark spot at the end of the root.",
  earlierFillingIs: "How good the old root filling is.",
  apex: "If the end of the root is closed.",
  caries: "How deep the hole in your tooth goes.",
  exposure: "If the hole goes down to the nerve.",
  pain: "If the tooth hurts.",
  crack: "If there is a crack in the tooth.",
  mobility: "How loose the tooth is.",
  ferruleHeightMm: "How much of the tooth is left to build on.",
  deepestProbingMm: "How well the gum holds on to the tooth.",
  narrowDefect: "If the gum has come off the root in one thin line.",
  medicalTaken: "How your health is, and which drugs you take.",
  antiresorptive: "If you take, or took, a drug that slows the healing of bone.",
  jawIrradiation: "If your jaw was treated with rays.",
  allergyAnaesthetic: "Which numbing drug you can have.",
  "full-lesion": "If the nerve in the roots is alive.",
  "surgery-bone-drug": "What your doctor says about this work on the bone.",
  "surgery-irradiated": "What your doctor says about this work on the bone.",
  "replantation-bone-drug": "What your doctor says about an open wound in the bone.",
  "replantation-irradiated": "What your doctor says about an open wound in the bone.",
  "extraction-bone-drug": "What your doctor says about an open wound in the bone.",
  "extraction-irradiated": "What your doctor says about an open wound in the bone.",
};

/** What stands between the advice and its start: what must be checked first, or that the facts point to another way. */
export function stillToCheck({ ways, plan }: Pick<ConsentCase, "ways" | "plan">): Block[] {
  const chosen = ways.options.find(({ way }) => way === plan.chosen);
  if (chosen?.standing === "does not fit") return [{ kind: "text", lines: [says(consentWords.againstFacts)] }];
  if (chosen?.standing !== "needs an answer first") return [];
  const facts = ways.ask.filter((asked) => asked.ways.includes(chosen.way)).map(({ fact }) => fact);
  const rows = chosen.why.filter(({ speaks }) => speaks === "asks").map(({ row }) => row);
  const checks = new Set([...facts, ...rows].flatMap((one) => plainChecks[one] ?? []));
  return [
    { kind: "text", lines: [says(consentWords.checkFirst)] },
    ...(checks.size === 0 ? [] : [{ kind: "text" as const, points: true, lines: [...checks].map(says) }]),
  ];
}
