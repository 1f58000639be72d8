import { partsOf } from "../../record/parts.ts";
import { apicalWords, pulpalWords, wayWords } from "../../record/words/case-words.ts";
import type { CaseSource } from "../case-source.ts";
import { momentWords } from "../moment-words.ts";
import { type Page, says } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { textBlock } from "./presenting.ts";

/** The clinician's diagnosis, each time it was made. */
export function diagnosisPages({ parts }: CaseSource): Page[] {
  return partsOf(parts, "diagnosis").map(({ body }) => ({
    title: "Diagnosis",
    subtitle: momentWords(body.madeOn, parts),
    on: body.madeOn,
    blocks: [
      { kind: "text", heading: "Pulp", lines: [says(sentence(pulpalWords[body.pulpal]))] },
      { kind: "text", heading: "Apical tissues", lines: [says(sentence(apicalWords[body.apical]))] },
      ...textBlock("Because", body.because),
    ],
    notes: ["Terms of the AAE/ABE consensus of 2009. The diagnosis is the clinician's own."],
  }));
}

/** What could be done, what was chosen and why. */
export function planPages({ parts }: CaseSource): Page[] {
  return partsOf(parts, "plan").map(({ body }) => ({
    title: "Options and choice",
    subtitle: momentWords(body.madeOn, parts),
    on: body.madeOn,
    blocks: [
      {
        kind: "table" as const,
        caption: "Ways that were weighed",
        columns: [
          { head: "Way", align: "left" as const, share: 0.22 },
          { head: "For it", align: "left" as const, share: 0.39 },
          { head: "Against it", align: "left" as const, share: 0.39 },
        ],
        rows: body.options.map((option) => [
          says(`${sentence(wayWords[option.way])}${option.way === body.chosen ? " (chosen)" : ""}`),
          says(option.forIt),
          says(option.againstIt),
        ]),
      },
      ...textBlock(`Chosen: ${wayWords[body.chosen]}, because`, body.because),
      ...textBlock("Risks named to the patient", body.risksNamed.join("; ")),
    ],
    notes: [],
  }));
}

/** The tooth handed back: what must be restored by when, and what a later re-entry must know. */
export function handbackPages({ parts }: CaseSource): Page[] {
  return partsOf(parts, "handback").map(({ body }) => ({
    title: "Hand-back",
    subtitle: momentWords(body.on, parts),
    on: body.on,
    blocks: [
      ...textBlock("To be restored with", body.restoreWith),
      ...textBlock(
        "To be restored by",
        body.restoreBy === undefined ? "" : sentence(momentWords(body.restoreBy, parts)),
      ),
      ...textBlock("Orifices marked by", body.orificesMarkedBy),
      ...textBlock("For a later re-entry", body.warnings),
      ...textBlock("Outlook", body.prognosis),
    ],
    notes: [],
  }));
}
