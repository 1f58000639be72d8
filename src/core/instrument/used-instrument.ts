import { faultAt, Refusal } from "../refusal.ts";
import { type CanalBending, canalBending } from "./canal-bending.ts";
import type { CanalCourse } from "./course-fields.ts";
import type { BendingUse, UsedInstrument } from "./fatigue-places.ts";
import type { FractureInput } from "./fracture-input.ts";
import type { InstrumentShape } from "./instrument-shape.ts";
import type { Use } from "./life-input.ts";
import { seatedInstrument } from "./seated-instrument.ts";
import { movementFaults, turnsOfUse } from "./turns-of-use.ts";

/** Courses are drawn anew for this many canals at most, the last used ones: each costs a tenth of a second. */
const drawnCanals = 2;

/**
 * The uses of an instrument as bending fatigue sees them: its stated ones, or else one in the canal of the break.
 * Takes the input, the shape and the least end in mm that the instrument must have.
 * Gives no use where neither uses nor a course with a depth are stated.
 * @throws Refusal `input.impossible` for a use without its movement or deeper than canal or instrument, a depth beyond the
 * canal; `trace.tooFewPoints` under 4 points of a course.
 * @source docs/methods/fracture.md C3
 */
export function usedInstrument(input: FractureInput, shape: InstrumentShape, leastMm: number): UsedInstrument {
  const { uses = [], course, tipDepthMm } = input;
  const faults = movementFaults(uses);
  if (faults.length > 0)
    throw new Refusal("input.impossible", "Cannot explain the break: its uses can't be as described", {}, faults);
  const canals = canalsOf(uses);
  const own = course === undefined ? undefined : (canals.get(written(course)) ?? canalBending(course, "course"));
  if (own !== undefined && tipDepthMm !== undefined) checkDepth(tipDepthMm, shape, own);
  else checkReach(tipDepthMm, shape);
  const stated = uses.map((use, index) => ofUse(use, shape, { canals, path: `uses[${index}].tipDepthMm` }));
  const seen = stated.length > 0 ? alike(stated) : inBreak(own, tipDepthMm);
  const deepest = Math.max(0, ...seen.map((use) => use.tipDepthMm));
  return { shape, uses: seen, endMm: shape.lengthMm ?? Math.max(shape.workingMm, deepest, leastMm) };
}

/** One turn in the canal of the break, at its depth; none where either is not known. */
const inBreak = (bending: CanalBending | undefined, tipDepthMm: number | undefined): BendingUse[] =>
  bending === undefined || tipDepthMm === undefined
    ? []
    : [{ bending, allowed: bending.drawn(), tipDepthMm: Math.min(tipDepthMm, bending.lengthMm), turns: 1 }];

const written = (course: CanalCourse): string => JSON.stringify(course);

/** Canals that are written alike are fitted once. */
function canalsOf(uses: readonly Use[]): Map<string, CanalBending> {
  const canals = new Map<string, CanalBending>();
  uses.forEach(({ course }, index) => {
    const key = written(course);
    if (!canals.has(key)) canals.set(key, canalBending(course, `uses[${index}].course`));
  });
  const last = [...canals.keys()].slice(-drawnCanals);
  return new Map([...canals].map(([key, canal]) => [key, last.includes(key) ? drawnOnce(canal) : asFitted(canal)]));
}

function drawnOnce(canal: CanalBending): CanalBending {
  const drawn = canal.drawn();
  return { ...canal, drawn: () => drawn };
}

const asFitted = (canal: CanalBending): CanalBending => ({ ...canal, drawn: () => [] });

function ofUse(
  use: Use,
  shape: InstrumentShape,
  { canals, path }: { canals: Map<string, CanalBending>; path: string },
): BendingUse {
  const bending = canals.get(written(use.course)) ?? canalBending(use.course, path);
  const { tipDepthMm } = seatedInstrument({ shape, bending, tipDepthMm: use.tipDepthMm, convention: "neutral" }, path);
  return { bending, allowed: bending.drawn(), tipDepthMm, turns: turnsOfUse(use).swept * (use.engagedFraction ?? 1) };
}

/** Uses of one depth in one canal as one: wear adds whatever came before. */
function alike(uses: readonly BendingUse[]): BendingUse[] {
  const groups: BendingUse[] = [];
  for (const use of uses) {
    const index = groups.findIndex((one) => one.bending === use.bending && one.tipDepthMm === use.tipDepthMm);
    const found = groups[index];
    if (found === undefined) groups.push(use);
    else groups[index] = { ...found, turns: found.turns + use.turns };
  }
  return groups;
}

const checkDepth = (tipDepthMm: number, shape: InstrumentShape, bending: CanalBending): void => {
  seatedInstrument({ shape, bending, tipDepthMm, convention: "neutral" }, "tipDepthMm");
};

function checkReach(tipDepthMm: number | undefined, { lengthMm }: InstrumentShape): void {
  if (tipDepthMm === undefined || lengthMm === undefined || tipDepthMm <= lengthMm) return;
  throw faultAt("tipDepthMm", `${tipDepthMm} is beyond the instrument, ${lengthMm} mm long`);
}
