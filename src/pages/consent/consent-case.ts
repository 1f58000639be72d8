import type { PlanTold, WayTold } from "../../ledger/plan-told.ts";
import type { BodyOf } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import type { LedgerReader } from "../ledger-reader.ts";
import { type Line, says } from "../page-model.ts";

/** What a consent page is made from. */
export interface ConsentCase {
  readonly source: CaseSource;
  readonly about: BodyOf<"case">;
  readonly plan: BodyOf<"plan">;
  readonly ways: PlanTold;
  readonly read: LedgerReader;
  /** What the entry of the ways is about. */
  readonly subject: string;
  readonly isMinor: boolean;
}

/** A way with its place in the ledger's output. */
export interface PlacedWay extends WayTold {
  readonly at: string;
}

/** The ways that are open and the one that was chosen, that one first. */
export function waysToTell({ ways, plan }: Pick<ConsentCase, "ways" | "plan">): readonly PlacedWay[] {
  const placed = ways.options.map((option, index) => ({ ...option, at: `options[${index}]` }));
  const chosen = placed.filter(({ way }) => way === plan.chosen);
  return [...chosen, ...placed.filter(({ way, standing }) => standing === "open" && way !== plan.chosen)];
}

/** A sentence of the ledger; one with a figure in it names the place that it came from. */
export function told({ read, subject }: ConsentCase, sentence: string, path: string): Line {
  const traced = /\d/.test(sentence) ? read.text(subject, path) : undefined;
  return traced === undefined ? says(sentence) : [traced];
}

/** Lines as one paragraph. */
export const inOneLine = (lines: readonly Line[]): Line =>
  lines.flatMap((line, index) => (index === 0 ? line : [{ text: " " }, ...line]));
