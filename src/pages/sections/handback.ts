import { partsOf } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { momentWords } from "../moment-words.ts";
import type { Page } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { textBlock } from "./presenting.ts";

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
      ...textBlock(
        "Recall",
        body.recallOn === undefined ? "" : `${sentence(momentWords(body.recallOn, parts))}. ${body.recallAsks ?? ""}`,
      ),
    ],
    notes: [],
  }));
}
