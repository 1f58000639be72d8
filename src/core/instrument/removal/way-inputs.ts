import { seededRandom } from "../../statistics/seeded-random.ts";
import type { RemovalInput } from "../removal-input.ts";
import type { RemovalOutput } from "../removal-output.ts";
import { type AttemptArm, attemptArms } from "./attempt-chance.ts";
import {
  freeArm,
  keptAfterSurgeryArm,
  keptArm,
  leftArm,
  perforationArm,
  sealedArm,
  surgeryArm,
} from "./published-arms.ts";
import { countedShare, type UncertainShare, unknownShare } from "./uncertain-share.ts";

/** What the ways are computed from; each is a share. */
export interface WayShares {
  /** Removed or bypassed in the attempt. */
  readonly success: number;
  /** Of what a canal without a fragment heals better than one with it, the part that the attempt reaches. */
  readonly gain: number;
  readonly bypassed: number;
  readonly worth: number;
  readonly perforation: number;
  readonly sealed: number;
  readonly bypass: number;
  readonly left: number;
  readonly free: number;
  readonly surgery: number;
  readonly kept: number;
  readonly keptAfterSurgery: number;
}

/** The shares at their means and as they were drawn. */
export interface WayInputs {
  readonly means: WayShares;
  readonly draws: readonly WayShares[];
  /** The part of the gain that the attempt reaches on average, at other values of what a bypass is. */
  readonly gainAt: (bypassed: number, worth: number) => number;
}

const defaultDraws = 4_000;

/**
 * What the ways are computed from, at the means and drawn by a seed.
 * @source docs/methods/removal.md C8 to C12
 */
export function wayInputs(input: RemovalInput, chances: RemovalOutput["removalChance"]): WayInputs {
  const attempt = attemptArms(chances);
  const parts = {
    ...{ bypassed: unknownShare, worth: unknownShare, perforation: perforationArm, sealed: sealedArm },
    ...{ bypass: bypassShare(chances), left: leftArm(input.lesion), free: freeArm(input.lesion), surgery: surgeryArm },
    ...{ kept: keptArm, keptAfterSurgery: keptAfterSurgeryArm },
  };
  const means = partsBy(parts, ({ mean }) => mean);
  const gainAt = (bypassed: number, worth: number): number =>
    attempt.reduce((sum, { weight, mean, reach }) => sum + weight * mean * reach(bypassed, worth), 0);
  const random = seededRandom(input.seed ?? 1);
  const draws = Array.from({ length: input.draws ?? defaultDraws }, () => {
    const drawn = partsBy(parts, ({ draw }) => draw(random));
    const arm = armDrawn(attempt, random.uniform());
    const success = arm.draw(random);
    return { ...drawn, success, gain: success * arm.reach(drawn.bypassed, drawn.worth) };
  });
  const success = attempt.reduce((sum, { weight, mean }) => sum + weight * mean, 0);
  return { means: { ...means, success, gain: gainAt(means.bypassed, means.worth) }, draws, gainAt };
}

type Part = Exclude<keyof WayShares, "success" | "gain">;

/** The same value of every part. */
const partsBy = (
  parts: Readonly<Record<Part, UncertainShare>>,
  value: (share: UncertainShare) => number,
): Readonly<Record<Part, number>> => ({
  ...{ bypassed: value(parts.bypassed), worth: value(parts.worth), perforation: value(parts.perforation) },
  ...{ sealed: value(parts.sealed), bypass: value(parts.bypass), left: value(parts.left), free: value(parts.free) },
  ...{ surgery: value(parts.surgery), kept: value(parts.kept), keptAfterSurgery: value(parts.keptAfterSurgery) },
});

function armDrawn(arms: readonly AttemptArm[], place: number): AttemptArm {
  let below = 0;
  const found = arms.find(({ weight }) => {
    below += weight;
    return place < below;
  });
  const arm = found ?? arms.at(-1);
  if (arm === undefined) throw new RangeError("some series always matches");
  return arm;
}

/** Bypass alone was counted where the head was hidden. */
function bypassShare(chances: RemovalOutput["removalChance"]): UncertainShare {
  const { events = 0, n = 0 } = chances.find(({ success }) => success === "bypassed") ?? {};
  return countedShare({ events, n });
}
