import { type Fault, Refusal } from "../../refusal.ts";
import type { IrrigationInput, Step } from "./irrigation-input.ts";
import { believedPercent } from "./solution-kinds.ts";

/**
 * Refuses strengths that no such solution has, and a protocol that can't be met.
 * @throws Refusal `input.impossible` with a fault for each.
 * @source common practice; docs/methods/irrigation.md C9
 */
export function refuseFaults({ sequence, settings = {} }: IrrigationInput): void {
  const faults = [
    ...sequence.flatMap((step, index) => strengthFaults(step, `sequence[${index}]`)),
    ...(settings.protocol ?? []).flatMap(({ minutesAtLeast, minutesAtMost }, index): Fault[] =>
      minutesAtLeast === undefined || minutesAtMost === undefined || minutesAtLeast <= minutesAtMost
        ? []
        : [
            {
              path: `settings.protocol[${index}].minutesAtMost`,
              says: `${minutesAtMost} is below the ${minutesAtLeast} min that are wanted at least`,
            },
          ],
    ),
  ];
  if (faults.length > 0) throw new Refusal("input.impossible", "Cannot judge the irrigation", {}, faults);
}

function strengthFaults({ solution, percent }: Step, path: string): Fault[] {
  if (percent === undefined || typeof solution !== "string") return [];
  const range = believedPercent[solution];
  const at = `${path}.percent`;
  if (range === undefined) return [{ path: at, says: `${solution} has no strength; leave percent out` }];
  const [low, high] = range;
  if (percent >= low && percent <= high) return [];
  const share = percent < low ? "; 5.25 % is written 5.25, not 0.0525" : "";
  return [
    { path: at, says: `${percent} is no strength of ${solution} in percent: ${low} to ${high} is accepted${share}` },
  ];
}
