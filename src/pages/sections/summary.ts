import { lastPlan } from "../../ledger/plan-told.ts";
import { type BodyOf, partsOf, thePart } from "../../record/parts.ts";
import { wayChosen } from "../../record/way-chosen.ts";
import { apicalWords, pulpalWords, wayWords } from "../../record/words/case-words.ts";
import type { CaseSource } from "../case-source.ts";
import { ledgerReader } from "../ledger-reader.ts";
import type { Block, Line, Page, Run } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { toothFigure } from "../tooth-figure.ts";
import { nearestOutcome } from "./plan.ts";
import { textBlock } from "./presenting.ts";

/** The case in a few lines beside its emblem: complaint, diagnosis, choice, roots and canals. */
export function summaryPage(source: CaseSource): Page {
  const { parts } = source;
  const about = thePart(parts, "case")?.body;
  const diagnosis = partsOf(parts, "diagnosis").at(-1)?.body;
  const plan = lastPlan(parts);
  const figure = toothFigure(source, 900);
  const blocks: Block[] = [
    ...(figure === undefined ? [] : [{ kind: "figure" as const, figure, caption: "" }]),
    ...textBlock("Complaint", about?.complaint ?? ""),
    ...textBlock(
      "Diagnosis",
      diagnosis === undefined ? "" : sentence(`${pulpalWords[diagnosis.pulpal]}; ${apicalWords[diagnosis.apical]}`),
    ),
    ...(plan === undefined ? [] : [...choiceInShort(plan.body), ...outcomeBlock(nearestOutcome(source, plan))]),
    ...rootsBlock(source),
  ];
  return { title: "Summary", on: about?.presentedOn ?? "", blocks, notes: [] };
}

function choiceInShort(plan: BodyOf<"plan">): Block[] {
  const chosen = wayChosen(plan);
  return chosen === undefined ? [] : textBlock(`Chosen: ${wayWords[chosen]}`, plan.because || "No reason is written.");
}

const outcomeBlock = (outcome: Line): Block[] =>
  outcome.length === 0 ? [] : [{ kind: "text", lines: [[{ text: "Nearest published series: " }, ...outcome]] }];

/** The tooth's code, and each root with its canals from orifice to foramen and their type. */
function rootsBlock({ parts, ledger }: CaseSource): Block[] {
  const anatomy = thePart(parts, "anatomy");
  if (anatomy === undefined) return [];
  const read = ledgerReader(ledger);
  const subject = `canals of ${anatomy.id}`;
  const code = read.text(subject, "code.display");
  const roots = anatomy.body.roots.map(({ name }, index): Line => {
    const sequence = read.text(subject, `roots[${index}].sequence`);
    const type = read.text(subject, `roots[${index}].vertucci`);
    const typed: Run[] = type === undefined ? [] : [{ text: " (" }, type, { text: ")" }];
    return [{ text: `${name} ` }, sequence ?? { text: "–" }, ...typed];
  });
  const listed = roots.flatMap((root, index): Run[] => (index === 0 ? [...root] : [{ text: ", " }, ...root]));
  const coded: Run[] =
    code === undefined ? [] : [{ text: "; code " }, code, { text: " (Ahmed and others 2017)", quiet: true }];
  return [
    {
      kind: "text",
      heading: "Roots, canals from orifice to foramen (Vertucci type)",
      lines: [[...listed, ...coded]],
    },
  ];
}
