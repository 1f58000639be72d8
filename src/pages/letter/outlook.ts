import { type FigureForOutlook, figureNamed } from "../../ledger/figures-for-outlook.ts";
import { ledgerReader } from "../ledger-reader.ts";
import { type Block, type Line, type Page, says } from "../page-model.ts";
import { textBlock } from "../sections/presenting.ts";
import { caution } from "../sections/sources.ts";
import { shareWithInterval } from "../share-with-interval.ts";
import { sourceName, sourceWithStar } from "../source-name.ts";
import type { LetterCase } from "./letter-case.ts";

/** The outlook in the person's words, with the published figure that was chosen for it. */
export function outlook(of: LetterCase): Page[] {
  const blocks: Block[] = [...textBlock("", of.handback?.prognosis ?? "").map(unheaded), ...figureBlock(of)];
  return blocks.length === 0 ? [] : [{ title: "Outlook", on: "", blocks, notes: [] }];
}

const unheaded = (block: Block): Block => (block.kind === "text" ? { kind: "text", lines: block.lines } : block);

function figureBlock(of: LetterCase): Block[] {
  if (of.handback?.figure === undefined) return [];
  const figure = figureOf(of);
  const lines =
    figure === undefined ? [says("The figure that was chosen for it is no longer kept.")] : figureLines(figure, of);
  return [{ kind: "text", lines }];
}

const entriesOf = ({ source }: LetterCase) => [...source.ledger, ...(source.kept ?? [])];

const figureOf = (of: LetterCase): FigureForOutlook | undefined =>
  of.handback?.figure && figureNamed(of.handback.figure, entriesOf(of));

/** `Published: healed in 80 of 100, 0.80 (0.71 to 0.87); after 4 years; teeth with a lesion. Ng 2011*.` and what it is not. */
function figureLines(figure: FigureForOutlook, of: LetterCase): Line[] {
  const { at, subject, outcome, entryId } = figure;
  const read = ledgerReader(entriesOf(of).filter(({ id }) => id === entryId));
  const count = (name: string) => read.number(subject, `${at}.${name}`, 0) ?? { text: "–" };
  const share = shareWithInterval(read, subject, { share: `${at}.proportion`, interval: `${at}.interval` });
  const whom = [outcome.definitionSays, outcome.followUp, outcome.group].filter((piece) => piece !== "").join("; ");
  const counted: Line = [{ text: `Published: ${outcome.what} in ` }, count("events"), { text: " of " }, count("n")];
  return [
    [...counted, { text: ", " }, ...share, { text: `; ${whom}. ${sourceWithStar(outcome)}.` }],
    says("A published series tells of its own patients; it is not the chance of this tooth."),
  ];
}

/** The study behind the figure in full, and what stands under every document. */
export function footOfLetter(of: LetterCase): Page {
  const figure = figureOf(of);
  const source = figure?.outcome.source;
  const known = source === undefined ? undefined : of.source.references.get(source);
  const recalled = figure?.outcome.mark === "memory" ? " (* value from memory)" : "";
  const behind: Line[] =
    source === undefined ? [] : [[{ text: `${known?.reference ?? sourceName(source)}${recalled}`, quiet: true }]];
  return { title: "", on: "", blocks: [{ kind: "text", lines: [...behind, says(caution)] }], notes: [] };
}
