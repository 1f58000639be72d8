import { teeth } from "../../core/tooth/teeth.ts";
import { toothInMouth } from "../../figures/tooth-in-mouth.ts";
import { thePart } from "../../record/parts.ts";
import type { Block, Page } from "../page-model.ts";
import { says } from "../page-model.ts";
import { type ConsentCase, inOneLine, told } from "./consent-case.ts";
import { consentWords } from "./consent-words.ts";
import { toothPlainly } from "./tooth-plainly.ts";

/** Which tooth it is, in words and in a drawing of the mouth, and what is wrong with it by the clinician's diagnosis. */
export function aboutTooth(of: ConsentCase): Page {
  const wrong = of.ways.plain.whatIsWrong.map((one, at) => told(of, one, `plain.whatIsWrong[${at}]`));
  const said: Block = { kind: "text", heading: consentWords.wrong, lines: [inOneLine(wrong)] };
  const blocks = [...whichTooth(of), { kind: "text" as const, lines: [says(consentWords.sheet)] }, said];
  return { title: consentWords.tooth, on: "", blocks, notes: [] };
}

/** Which tooth it is, drawn in the mouth and in words. */
export function whichTooth({ source, about, read }: Pick<ConsentCase, "source" | "about" | "read">): Block[] {
  const tooth = teeth.find(({ twoDigit }) => twoDigit === about.tooth);
  if (tooth === undefined) return [];
  const number = read.text(`tooth of ${thePart(source.parts, "case")?.id ?? ""}`, source.notation);
  return [
    { kind: "figure", figure: toothInMouth({ tooth, theme: "print", widthPx: 640 }), caption: "" },
    {
      kind: "text",
      lines: [
        says(toothPlainly(tooth)),
        [{ text: `${consentWords.called} ` }, number ?? { text: about.tooth }, { text: "." }],
        says(consentWords.drawn),
      ],
    },
  ];
}
