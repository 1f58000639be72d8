import { latest } from "../../record/in-order.ts";
import { partsOf } from "../../record/parts.ts";
import { partsOn } from "../../record/parts-on.ts";
import { apicalWords, pulpalWords } from "../../record/words/case-words.ts";
import { handledWords, mishapWords, thirdWords } from "../../record/words/later-words.ts";
import { momentWords } from "../moment-words.ts";
import { type Line, type Page, says } from "../page-model.ts";
import { textBlock } from "../sections/presenting.ts";
import { sentence } from "../sentence.ts";
import type { LetterCase } from "./letter-case.ts";

/** Why the patient was sent and what was diagnosed. */
export function whySent({ about, source, handback }: LetterCase): Page[] {
  const stood = handback === undefined ? source.parts : partsOn(source.parts, handback.on);
  const diagnosis = latest(partsOf(stood, "diagnosis"))?.body;
  const terms = diagnosis && `${pulpalWords[diagnosis.pulpal]}; ${apicalWords[diagnosis.apical]}`;
  const blocks = [
    ...textBlock("Sent for", about?.referredFor ?? ""),
    ...textBlock("Diagnosis", terms === undefined ? "" : sentence(terms)),
  ];
  return blocks.length === 0 ? [] : [{ title: "Why the patient was sent", on: "", blocks, notes: [] }];
}

/** Each mishap in a sentence, and whether the patient knows. */
export function mishapsInLetter(of: LetterCase): Page[] {
  const lines = of.mishaps.map((mishap) => mishapLine(mishap, of));
  if (lines.length === 0) return [];
  return [{ title: "What went otherwise", on: "", blocks: [{ kind: "text", points: true, lines }], notes: [] }];
}

function mishapLine({ body }: LetterCase["mishaps"][number], { source }: LetterCase): Line {
  const { what, canal, third, fragmentMm, handled, toldPatient, on } = body;
  const place = [canal, third === "notRecorded" ? undefined : thirdWords[third]];
  const piece = fragmentMm === undefined ? undefined : `a piece of ${fragmentMm} mm`;
  const named = [mishapWords[what], ...place, piece].filter((word) => word !== undefined).join(", ");
  const told = toldPatient === "told" ? "The patient was told." : "The patient has not been told yet.";
  return says(`${sentence(named)}, ${momentWords(on, source.parts)}: ${handledWords[handled]}. ${told}`);
}
