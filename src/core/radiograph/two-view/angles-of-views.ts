import { faultAt } from "../../refusal.ts";
import { deg, degreesOf, rad, radiansOf } from "../../units.ts";
import type { Receptor } from "./camera.ts";
import type { AngleKnown, LevelView } from "./ready-views.ts";
import { solveAngle } from "./solve-angle.ts";
import type { TwoViewInput } from "./two-view-input.ts";

/** An angle that is less sure than this fixes no depth. */
const surestDeg = 5;
const usualSigmaMm = 0.05;

/**
 * The horizontal angle of every view: as stated, or solved from two landmarks of known buccolingual separation; undefined
 * where nothing fixes one of them. Where no angle is stated, the first view is taken as straight on.
 * @throws Refusal `input.notDeterminable` where two angles fit, and it is not said to which side the tube moved.
 * @source docs/methods/two-view.md C12
 */
export function anglesOfViews(
  input: TwoViewInput,
  level: readonly LevelView[],
  receptor: Receptor,
): readonly AngleKnown[] | undefined {
  const stated = input.views.findIndex(({ horizontalAngleDeg }) => horizontalAngleDeg !== undefined);
  const from = Math.max(0, stated);
  const fromDeg = input.views[from]?.horizontalAngleDeg ?? 0;
  const angles = input.views.map(({ horizontalAngleDeg }, index): AngleKnown | undefined => {
    if (horizontalAngleDeg !== undefined) return { angleDeg: horizontalAngleDeg, sigmaDeg: input.angleSigmaDeg };
    if (index === from) return { angleDeg: fromDeg, sigmaDeg: input.angleSigmaDeg };
    return solved(input, level, { receptor, from, fromDeg, index });
  });
  const known = angles.filter((angle) => angle !== undefined);
  return known.length === angles.length ? known : undefined;
}

interface Which {
  readonly receptor: Receptor;
  readonly from: number;
  readonly fromDeg: number;
  readonly index: number;
}

function solved(input: TwoViewInput, level: readonly LevelView[], which: Which): AngleKnown | undefined {
  const { knownSeparation, views } = input;
  const firstMm = separationOn(level[which.from], knownSeparation?.landmarks);
  const secondMm = separationOn(level[which.index], knownSeparation?.landmarks);
  if (knownSeparation === undefined || firstMm === undefined || secondMm === undefined) return undefined;
  const { buccolingualMm, sigmaMm } = knownSeparation;
  const seen = {
    ...{ angle: radiansOf(deg(which.fromDeg)), firstMm, secondMm },
    ...{ buccalMm: buccolingualMm, buccalSigmaMm: sigmaMm, sigmaMm: input.sigmaMm ?? usualSigmaMm },
  };
  const moved = views[which.index]?.tubeMovedTo;
  const fitting = solveAngle(seen, which.receptor)
    .map(({ angle, sigma }) => ({ angleDeg: degreesOf(rad(angle)), sigmaDeg: degreesOf(rad(sigma)) }))
    .filter(({ angleDeg }) => moved === undefined || angleDeg > which.fromDeg === (moved === "mesial"));
  const [one, other] = fitting;
  if (one === undefined) return undefined;
  if (other !== undefined && Math.abs(one.angleDeg - other.angleDeg) > surestDeg)
    throw faultAt(
      `views[${which.index}].horizontalAngleDeg`,
      `is absent, and the landmarks allow ${one.angleDeg.toFixed(0)} and ${other.angleDeg.toFixed(0)} degrees; say tubeMovedTo, or give the angle`,
      "input.notDeterminable",
    );
  return one.sigmaDeg > surestDeg ? undefined : one;
}

/** How far the second landmark lies to distal of the first on a film. */
function separationOn(view: LevelView | undefined, names: readonly [string, string] | undefined): number | undefined {
  const [first, second] = (names ?? []).map((name) => view?.landmarks[name]);
  return first === undefined || second === undefined ? undefined : second.u - first.u;
}
