import { type BodyOf, partsOf, thePart } from "../../record/parts.ts";
import { flagWords } from "../../record/words/case-words.ts";
import type { CaseSource } from "../case-source.ts";
import { momentWords } from "../moment-words.ts";
import { type Block, type Page, says } from "../page-model.ts";
import { sentence } from "../sentence.ts";

/** Why the person came, and what the tooth and the person bring with them. */
export function presentingPages({ parts }: CaseSource): Page[] {
  const about = thePart(parts, "case")?.body;
  if (about === undefined) return [];
  const blocks: Block[] = [
    ...textBlock("Complaint", about.complaint),
    ...textBlock("Referred for", about.referredFor),
    ...textBlock("This tooth until now", about.background),
    ...medicalBlock(partsOf(parts, "medicalHistory").at(-1)?.body),
  ];
  return blocks.length === 0
    ? []
    : [
        {
          title: "Presenting",
          subtitle: momentWords(about.presentedOn, parts),
          on: about.presentedOn,
          blocks,
          notes: [],
        },
      ];
}

/** A heading with the person's own words, paragraph by paragraph; nothing where there are none. */
export function textBlock(heading: string, text: string): Block[] {
  const paragraphs = text.split(/\n+/).filter((paragraph) => paragraph.trim() !== "");
  return paragraphs.length === 0 ? [] : [{ kind: "text", heading, lines: paragraphs.map(says) }];
}

function medicalBlock(history: BodyOf<"medicalHistory"> | undefined): Block[] {
  if (history === undefined) return [];
  const flags = history.flags.map(({ flag, detail }) =>
    says(sentence(detail === undefined ? flagWords[flag] : `${flagWords[flag]}: ${detail}`)),
  );
  const medicines = history.medicines.length > 0 ? [says(`Medicines: ${history.medicines.join(", ")}`)] : [];
  const nothing = history.nothingToNote ? [says("Nothing to note")] : [];
  const note = history.note === "" ? [] : [says(history.note)];
  return [{ kind: "text", heading: "Medical history", lines: [...nothing, ...flags, ...medicines, ...note] }];
}
