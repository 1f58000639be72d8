import type { CabinetItem, CabinetItemOf } from "./cabinet-item.ts";
import { filesOf, instrumentsOf } from "./items-of-cabinet.ts";

/** One instrument on its way into a canal: how far and how long, and which counted file of it. */
export interface UseStep {
  readonly instrument: CabinetItemOf<"instrument">;
  readonly shortByMm?: number | undefined;
  readonly seconds?: number | undefined;
  /** All counted files of this instrument, those in use first. */
  readonly files: readonly CabinetItemOf<"file">[];
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
  const { shortByMm, seconds = instrument.body.seconds } = step;
  return { instrument, shortByMm, seconds, files: [...files.filter(isInUse), ...files.filter((one) => !isInUse(one))] };
}

/** Whether a counted file was not discarded. */
const isInUse = ({ body }: CabinetItemOf<"file">): boolean => body.discarded === undefined;

/** The files of a step that are in use. */
export const filesInUse = ({ files }: Pick<UseStep, "files">): readonly CabinetItemOf<"file">[] =>
  files.filter(isInUse);

/** The counted file that goes without saying: the only one that is in use. */
export function fileAtFirst(step: Pick<UseStep, "files">): CabinetItemOf<"file"> | undefined {
  const inUse = filesInUse(step);
  return inUse.length === 1 ? inUse[0] : undefined;
}
