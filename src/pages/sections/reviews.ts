import { partsOf } from "../../record/parts.ts";
import { reviewByWords } from "../../record/words/later-words.ts";
import type { CaseSource } from "../case-source.ts";
import { momentWords } from "../moment-words.ts";
import type { Page } from "../page-model.ts";
import { textBlock } from "./presenting.ts";

/** What was read, asked and signed by others, with the answer. */
export function reviewPages({ parts }: CaseSource): Page[] {
  return partsOf(parts, "review").map(({ body }) => ({
    title: "Review",
    subtitle: `${momentWords(body.on, parts)}, by the ${reviewByWords[body.by]}, ${body.signed ? "signed" : "not signed"}`,
    on: body.on,
    blocks: [...textBlock("Read and asked", body.says), ...textBlock("Answer", body.answer)],
    notes: [],
  }));
}
