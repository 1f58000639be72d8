import type { RemovalInput } from "../removal-input.ts";
import type { RemovalOutput } from "../removal-output.ts";
import { drawnInterval, type Estimate } from "./estimate.ts";
import {
  freeArm,
  keptAfterSurgeryArm,
  keptArm,
  leftArm,
  perforationArm,
  replacedFrom,
  sealedArm,
  surgeryArm,
} from "./published-arms.ts";
import type { From } from "./published-figures.ts";
import type { WayInputs, WayShares } from "./way-inputs.ts";
import { type HealingWay, healedBy, healingWays, keptBy } from "./way-outcomes.ts";

type Way = RemovalOutput["ways"][number];

const steps = {
  remove:
    "An attempt that removes or bypasses the fragment; where it fails the canal is filled to the fragment; where it perforates, the perforation is sealed.",
  bypass: "An attempt to pass beside the fragment; where it fails the canal is filled to the fragment.",
  leave: "The canal is cleaned and filled to the fragment.",
  surgery: "The root end is taken off and sealed.",
  extraction: "The tooth is taken out; what replaces it is not the tooth.",
} as const;

/**
 * Each way with the share that heals and the share of teeth that are kept, and the figures that both rest on.
 * @source docs/methods/removal.md C10 to C12
 */
export function weighedWays({ lesion }: RemovalInput, inputs: WayInputs): Way[] {
  const [left, free] = [leftArm(lesion).from, freeArm(lesion).from];
  const from: Readonly<Record<HealingWay, readonly From[]>> = {
    remove: [...left, ...free, ...perforationArm.from, ...sealedArm.from, ...keptArm.from],
    bypass: [...left, ...free, ...keptArm.from],
    leave: [...left, ...keptArm.from],
    surgery: [...surgeryArm.from, ...keptAfterSurgeryArm.from],
  };
  const healing = healingWays.map((way) => ({
    ...{ way, steps: steps[way], from: [...from[way]] },
    ...{ healed: estimateOf(inputs, healedBy[way]), kept: estimateOf(inputs, keptBy[way]) },
  }));
  const gone = { mean: 0, interval: { low: 0, high: 0, level: 0.95 } };
  return [...healing, { way: "extraction", steps: steps.extraction, kept: gone, from: [...replacedFrom] }];
}

/** The value at the means and the interval of the draws. */
export const estimateOf = ({ means, draws }: WayInputs, value: (shares: WayShares) => number): Estimate => ({
  mean: value(means),
  interval: drawnInterval(draws.map(value)),
});

/** Whether two intervals have a value in common. */
export const overlap = (a: Estimate, b: Estimate): boolean =>
  a.interval.low <= b.interval.high && b.interval.low <= a.interval.high;
