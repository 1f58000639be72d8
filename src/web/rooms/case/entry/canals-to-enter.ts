import type { CanalEntered } from "../../../../record/cabinet/use-of-step.ts";
import type { BodyOf } from "../../../../record/parts.ts";

/**
 * The canals that instruments can go into: those of the visit's table with their lengths, then those that the case knows
 * and the table does not name. Without any, one without a name.
 */
export function canalsToEnter(
  rows: BodyOf<"visit">["canals"],
  known: readonly string[],
): readonly [CanalEntered, ...CanalEntered[]] {
  const named = rows
    .filter(({ canal }) => canal !== "")
    .map(({ canal, workingLengthMm }) => ({ canal, workingLengthMm }));
  const others = known.filter((canal) => !named.some((row) => row.canal === canal)).map((canal) => ({ canal }));
  const [first = {}, ...rest]: readonly CanalEntered[] = [...named, ...others];
  return [first, ...rest];
}
