import { assumedInnerSide, type RemovalInput, type RootSide } from "../removal-input.ts";
import type { RemovalOutput } from "../removal-output.ts";
import type { CoursePlaces } from "./course-places.ts";
import { type LineOffset, lineOffsets } from "./straight-line.ts";
import { isBelow, wallGrade } from "./wall-grade.ts";
import { type WallAlong, wallsAlong } from "./walls-along.ts";

type SightLine = NonNullable<RemovalOutput["sightLine"]>;
type SideOfPath = SightLine["sides"][number];

/**
 * The straight line from the orifice to the head: how far it lies off the canal, what it takes off each wall, what is left.
 * Takes the input and the course; the head's depth is known and lies on it.
 * @source plane geometry; docs/methods/removal.md C1 to C4
 */
export function sightLine(input: RemovalInput, course: CoursePlaces, headDepthMm: number): SightLine {
  const offsetsAt = lineOffsets(course, headDepthMm);
  const offsets = offsetsAt(input.orificeShiftMm ?? 0);
  const widest = farthest(offsets, distanceOf);
  const sides = sidesOf(offsets, input);
  const worst = worstOf(sides);
  const most = shiftThatLeavesMost((shiftMm) => worstOf(sidesOf(offsetsAt(shiftMm), input)).wallLeftMm);
  return {
    ...{ maxOffsetMm: distanceOf(widest), offsetAtMm: widest.atMm },
    ...{ dentineToCutMm: worst.dentineToCutMm, atMm: worst.atMm, side: worst.side },
    ...(worst.wallLeftMm === undefined ? {} : { wallLeftMm: worst.wallLeftMm }),
    sides,
    ...(most === undefined ? {} : { shiftThatLeavesMost: most }),
    path: pathOf(worst, input.limits?.wallLeftMm),
    profile: offsets.filter((_, index) => index % 10 === 0).map(({ atMm, innerMm }) => ({ atMm, offsetMm: innerMm })),
  };
}

const sidesOf = (offsets: readonly LineOffset[], input: RemovalInput): SideOfPath[] =>
  wallsAlong(input).flatMap((wall) => sideOf(wall, offsets, input));

function worstOf(sides: readonly SideOfPath[]): SideOfPath {
  const [worst] = sides.toSorted((a, b) => left(a) - left(b) || b.dentineToCutMm - a.dentineToCutMm);
  if (worst === undefined) throw new RangeError("the furcation's side is always shown");
  return worst;
}

/** Shifts of the orifice that are tried, mm. */
const shifts = Array.from({ length: 21 }, (_, index) => index / 10);

/** The smallest of the tried shifts that leaves the most of the thinnest wall; undefined where no wall is known. */
function shiftThatLeavesMost(leaves: (shiftMm: number) => number | undefined): SightLine["shiftThatLeavesMost"] {
  const tried = shifts.flatMap((orificeShiftMm) => {
    const wallLeftMm = leaves(orificeShiftMm);
    return wallLeftMm === undefined ? [] : [{ orificeShiftMm, wallLeftMm }];
  });
  return tried.toSorted((a, b) => b.wallLeftMm - a.wallLeftMm)[0];
}

const distanceOf = ({ innerMm, acrossMm }: LineOffset): number => Math.hypot(innerMm, acrossMm);
const left = ({ wallLeftMm }: SideOfPath): number => wallLeftMm ?? Number.POSITIVE_INFINITY;

function farthest(offsets: readonly LineOffset[], value: (one: LineOffset) => number): LineOffset {
  const none = { atMm: 0, innerMm: 0, acrossMm: 0 };
  return offsets.reduce((most, one) => (value(one) > value(most) ? one : most), offsets[0] ?? none);
}

/** A cut below this is none, mm: digits of a double. */
const hardlyMm = 1e-6;

/** A side of which nothing is known is shown where the line runs towards it. */
function sideOf({ side, mmAt }: WallAlong, offsets: readonly LineOffset[], input: RemovalInput): SideOfPath[] {
  const towards = towardsOf(side, input.innerSide ?? assumedInnerSide);
  const { canalDiameterMm: canal, fragment } = input;
  // A line of no width in a canal of some would cut too little: the wall left would be told too thick.
  const widerBy =
    canal === undefined || fragment.headDiameterMm === undefined ? 0 : (fragment.headDiameterMm - canal) / 2;
  const cutAt = (one: LineOffset): number => Math.max(0, towards(one) + widerBy);
  const most = farthest(offsets, cutAt);
  const dentineToCutMm = cutAt(most);
  if (mmAt(most.atMm) === undefined)
    return side === "furcation" || dentineToCutMm > hardlyMm ? [{ side, dentineToCutMm, atMm: most.atMm }] : [];
  const thinnest = farthest(offsets, (one) => cutAt(one) - (mmAt(one.atMm) ?? 0));
  const wallMm = mmAt(thinnest.atMm) ?? 0;
  const wallLeftMm = wallMm - cutAt(thinnest);
  return [{ side, dentineToCutMm, wallMm, wallLeftMm, atMm: thinnest.atMm, grade: wallGrade(wallLeftMm) }];
}

const facing: Readonly<Record<RootSide, readonly RootSide[]>> = {
  furcation: ["mesial", "distal"],
  mesial: ["distal"],
  distal: ["mesial"],
  buccal: ["lingual"],
  lingual: ["buccal"],
};

/**
 * How far the line lies towards a side. The furcation is mesial or distal of its root: where the inner wall is one of them
 * and it is not said which one faces the furcation, the larger distance counts for it.
 */
function towardsOf(side: RootSide, inner: RootSide): (one: LineOffset) => number {
  if (side === inner) return ({ innerMm }) => innerMm;
  if (facing[inner].includes(side)) return ({ innerMm }) => -innerMm;
  if (side === "furcation" && (inner === "mesial" || inner === "distal")) return ({ innerMm }) => Math.abs(innerMm);
  return ({ acrossMm }) => acrossMm;
}

function pathOf({ side, wallLeftMm, atMm }: SideOfPath, limitMm: number | undefined): SightLine["path"] {
  if (wallLeftMm === undefined)
    return { verdict: "wall not known", says: "No wall along the canal is known: what is left can't be told." };
  const place = `${Math.abs(wallLeftMm).toFixed(2)} mm on the ${side} side, ${atMm.toFixed(1)} mm from the orifice`;
  const leaves =
    wallLeftMm <= 0
      ? `The straight path passes through the root's surface by ${place}`
      : `The straight path leaves ${place}`;
  if (limitMm === undefined) return { verdict: "no limit set", says: `${leaves}; no limit was set beforehand.` };
  const by = Math.abs(wallLeftMm - limitMm).toFixed(2);
  if (isBelow(wallLeftMm, limitMm))
    return { verdict: "refused", says: `${leaves}: ${by} mm below the limit of ${limitMm} mm. This path is refused.` };
  return { verdict: "above the limit", says: `${leaves}: ${by} mm above the limit of ${limitMm} mm.` };
}
