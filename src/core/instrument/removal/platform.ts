import type { RemovalInput } from "../removal-input.ts";
import { rootSides } from "../removal-input.ts";
import type { RemovalOutput } from "../removal-output.ts";
import { isBelow, wallGrade, wallLimits } from "./wall-grade.ts";

type Platform = NonNullable<RemovalOutput["platform"]>;

/** How wide a platform has to be: the head and twice the room that a tip needs, in mm. */
export const platformWidth = (headMm: number, clearanceMm: number): number => headMm + 2 * clearanceMm;

/**
 * The platform at the head: how wide, what it leaves of each wall, and of the ring's moment of inertia.
 * Takes the input; undefined without the head's diameter or the clearance.
 * @source plane geometry; docs/methods/removal.md C5 and C6
 */
export function platformAtHead(input: RemovalInput): Platform | undefined {
  const { fragment, clearanceMm, canalDiameterMm: canal, offCentreMm = 0, walls = [], limits } = input;
  if (fragment.headDiameterMm === undefined || clearanceMm === undefined) return undefined;
  const widthMm = platformWidth(fragment.headDiameterMm, clearanceMm);
  const cut = canal === undefined ? undefined : Math.max(0, (widthMm - canal) / 2 + offCentreMm);
  const sides = cut === undefined ? [] : sidesLeft(walls, cut);
  const [worst] = sides.toSorted((a, b) => a.wallLeftMm - b.wallLeftMm);
  const own = limits?.wallLeftMm;
  const all = [...wallLimits, ...(own === undefined ? [] : [{ source: "own", limitMm: own, mark: "own" as const }])];
  return {
    widthMm,
    ...(worst === undefined ? {} : { wallLeftMm: worst.wallLeftMm, side: worst.side, grade: worst.grade }),
    sides,
    limits: all.map((one) => ({ ...one, ...(worst === undefined ? {} : { stands: standing(worst.wallLeftMm, one) }) })),
    ...(canal === undefined || walls.length === 0 ? {} : { ring: ringOf(walls, canal, widthMm) }),
  };
}

const standing = (wallLeftMm: number, { limitMm }: { limitMm: number }) =>
  isBelow(wallLeftMm, limitMm) ? ("below" as const) : ("above" as const);

type Walls = NonNullable<RemovalInput["walls"]>;

const sidesLeft = (walls: Walls, cutMm: number): Platform["sides"] =>
  walls
    .toSorted((a, b) => rootSides.indexOf(a.side) - rootSides.indexOf(b.side))
    .map(({ side, mm }) => ({ side, wallMm: mm, wallLeftMm: mm - cutMm, grade: wallGrade(mm - cutMm) }));

/** A round root about a round canal, widened about the same middle. */
function ringOf(walls: Walls, canalMm: number, widthMm: number): NonNullable<Platform["ring"]> {
  const outerMm = canalMm + (2 * walls.reduce((sum, { mm }) => sum + mm, 0)) / walls.length;
  const inertia = (innerMm: number): number => (Math.PI * (outerMm ** 4 - innerMm ** 4)) / 64;
  const [before, after] = [inertia(canalMm), inertia(Math.max(canalMm, widthMm))];
  return { outerMm, before, after, lostShare: 1 - after / before };
}
