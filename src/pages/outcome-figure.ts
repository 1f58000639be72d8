import { type OutcomeRow, outcomeRows } from "../figures/outcome-rows.ts";
import type { Figure } from "../figures/svg-tree.ts";
import type { ThemeName } from "../figures/theme.ts";
import type { WayTold } from "../ledger/plan-told.ts";
import { sentence } from "./sentence.ts";
import { sourceWithStar } from "./source-name.ts";

type Outcome = WayTold["outcomes"][number];

const imagingWords: Readonly<Record<Outcome["imaging"], string>> = {
  film: "by film",
  cbct: "by CBCT",
  none: "without a film",
  notStated: "imaging not stated",
};
const definitionWords: Readonly<Record<Outcome["definition"], string>> = {
  strict: "strict: ",
  loose: "loose: ",
  survival: "",
  asPrinted: "",
};

/** A series of a way as its drawing takes it; a star marks a value that was recalled. */
function outcomeRow(outcome: Outcome): OutcomeRow {
  const { kind, what, proportion, interval, events, n, nearest } = outcome;
  return {
    ...{ kind, mean: proportion, interval, isNearest: nearest === "nearest" },
    name: `${sentence(what)}, ${sourceWithStar(outcome)}`,
    says: outcomeSays(outcome),
    counts: events === undefined || n === undefined ? undefined : { events, n },
  };
}

/** How a series was told: `strict: no lesion; by film; 4 years; seen again 61 %; teeth with a lesion`. */
const outcomeSays = ({ definition, definitionSays, imaging, followUp, recall, group }: Outcome): string =>
  [
    `${definitionWords[definition]}${definitionSays}`,
    imagingWords[imaging],
    followUp,
    ...(recall === undefined ? [] : [`${recall.examined} of ${recall.of} seen again`]),
    lowered(group),
  ]
    .filter((piece) => piece !== "")
    .join("; ");

/** Begins small, unless it begins with letters that stand for words. */
const lowered = (text: string): string =>
  /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;

/** The drawing of a way's published outcomes; undefined where none is kept. */
export function outcomeFigure(
  { outcomes }: Pick<WayTold, "outcomes">,
  shown: { theme: ThemeName; widthPx: number; letters?: number },
): Figure | undefined {
  return outcomes.length === 0 ? undefined : outcomeRows({ rows: outcomes.map(outcomeRow), ...shown });
}
