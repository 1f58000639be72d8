import type { CabinetItemOf } from "../../../record/cabinet/cabinet-item.ts";
import { limitsMet } from "../../../record/cabinet/limits-met.ts";
import { limitInWords } from "../../../record/words/cabinet-words.ts";
import type { CabinetView } from "../../../server/api.ts";
import { dayInWords } from "../../parts/days-in-words.ts";

/** How a counted file stands: in use, to be discarded by the person's own limits, at one of them, or discarded. */
export interface FileState {
  readonly is: "open" | "atLimit" | "overLimit" | "discarded";
  /** Each limit with by how much, or the day and the reason; empty for one in use. */
  readonly says: readonly string[];
}

/** See {@link FileState}. */
export function fileState({ id, body }: CabinetItemOf<"file">, view: Pick<CabinetView, "items" | "files">): FileState {
  if (body.discarded !== undefined)
    return { is: "discarded", says: [`${dayInWords(body.discarded.on)}: ${body.discarded.because}`] };
  const tally = view.files[id];
  if (tally === undefined) return { is: "open", says: [] };
  const of = view.items.find((item) => item.id === body.instrument);
  const met = limitsMet(of?.kind === "instrument" ? of.body.limits : undefined, tally).map(limitInWords);
  if (tally.over.length > 0) return { is: "overLimit", says: [...tally.over.map(limitInWords), ...met] };
  return met.length > 0 ? { is: "atLimit", says: met } : { is: "open", says: [] };
}

/** The state of a file in one or two words. */
export const fileStateWords: Readonly<Record<FileState["is"], string>> = {
  open: "in use",
  atLimit: "at its limit",
  overLimit: "discard: over its limit",
  discarded: "discarded",
};
