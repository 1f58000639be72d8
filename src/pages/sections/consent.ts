import { partsOf } from "../../record/parts.ts";
import {
  answeredByWords,
  answerWords,
  capacityWords,
  explainedByWords,
  imagesForWords,
} from "../../record/words/later-words.ts";
import type { CaseSource } from "../case-source.ts";
import { momentWords } from "../moment-words.ts";
import { type Page, says } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { textBlock } from "./presenting.ts";

/** Each consent as an event: who explained what, who answered how, and what the images may be used for. */
export function consentPages({ parts }: CaseSource): Page[] {
  return partsOf(parts, "consent").map(({ body }) => {
    const images = body.imagesFor.map((use) => imagesForWords[use]).join(", ");
    const facts = [
      `Explained by the ${explainedByWords[body.explainedBy]}; answered by the ${answeredByWords[body.answeredBy]}, ${capacityWords[body.capacity]}`,
      images === "" ? "No use of images was agreed to" : `Images may be used for ${images}`,
    ];
    return {
      title: "Consent",
      subtitle: momentWords(body.on, parts),
      on: body.on,
      blocks: [
        ...textBlock("To what", body.to),
        { kind: "text", heading: "Answer", lines: [sentence(answerWords[body.answer]), ...facts].map(says) },
        ...textBlock("Note", body.note),
      ],
      notes: [],
    };
  });
}
