import type { CabinetItem, CabinetItemOf } from "./cabinet-item.ts";
import { filesOf, instrumentsOf } from "./items-of-cabinet.ts";

/** One instrument on its way into a canal: how far and how long, and which counted file of it. */
export interface UseStep {
  readonly instrument: CabinetItemOf<"instrument">;
  readonly shortByMm?: number | undefined;
  readonly seconds?: number | undefined;
  /** Files of this instrument that are not discarded. */
  readonly openFiles: readonly CabinetItemOf<"file">[];
  /** Every file of it was discarded; at least one was counted. */
  readonly noneLeft: boolean;
}

/**
 * The instruments that a sequence, or a single instrument, brings into a canal, in order.
 * Takes what was chosen and the whole cabinet. Gives one step an instrument; a counted file, or an instrument that does not
 * stand any more, brings none.
 */
export function stepsOf(chosen: CabinetItem | undefined, items: readonly CabinetItem[]): readonly UseStep[] {
  if (chosen?.kind === "instrument") return [stepOf(chosen, {}, items)];
  if (chosen?.kind !== "sequence") return [];
  return chosen.body.steps.flatMap((step) => {
    const found = instrumentsOf(items).find(({ id }) => id === step.instrument);
    return found === undefined ? [] : [stepOf(found, step, items)];
  });
}

function stepOf(
  instrument: CabinetItemOf<"instrument">,
  step: Pick<UseStep, "shortByMm" | "seconds">,
  items: readonly CabinetItem[],
): UseStep {
  const files = filesOf(items).filter(({ body }) => body.instrument === instrument.id);
  const openFiles = files.filter(({ body }) => body.discarded === undefined);
  const { shortByMm, seconds = instrument.body.seconds } = step;
  return { instrument, shortByMm, seconds, openFiles, noneLeft: files.length > 0 && openFiles.length === 0 };
}

/** The counted file that goes without saying: the only one that is open. */
export const fileAtFirst = ({ openFiles }: UseStep): CabinetItemOf<"file"> | undefined =>
  openFiles.length === 1 ? openFiles[0] : undefined;
