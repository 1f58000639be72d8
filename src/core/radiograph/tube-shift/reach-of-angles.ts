import { deg, radiansOf } from "../../units.ts";
import type { Receptor } from "../two-view/camera.ts";
import { levelViews } from "../two-view/ready-views.ts";
import { twoViewInput } from "../two-view/two-view-input.ts";
import { readingOfFilms } from "./reading-of-films.ts";
import { shiftReach } from "./shift-reach.ts";
import { supposedBend, supposedCanal } from "./supposed-canal.ts";
import { type SupposedCourse, supposedCourse } from "./supposed-course.ts";
import type { TubeShiftInput } from "./tube-shift-input.ts";
import type { ShiftReach, TubeShiftOutput } from "./tube-shift-output.ts";

const stepDeg = 5;
/** Angles nearer than this are one angle. */
const leastShiftDeg = 1;
/** Points of the film that the supposed canal is laid through. */
const mostPoints = 60;

/** What the films at hand tell, and what they would with one more under each angle within reach. */
export function reachOfAngles(input: TubeShiftInput): {
  readonly now?: ShiftReach;
  readonly candidates: TubeShiftOutput["candidates"];
} {
  const taken = input.views.map(({ horizontalAngleDeg }) => horizontalAngleDeg ?? 0);
  const least = Math.min(...taken.map(Math.abs));
  const hiding = taken.findIndex((angleDeg) => Math.abs(angleDeg) === least);
  const supposed = coursesOf(input, hiding, taken[hiding] ?? 0);
  const reach = (anglesDeg: readonly number[]): ShiftReach => {
    const readings = supposed.map(({ receptor, course }) =>
      readingOfFilms(course, { ...input, anglesDeg, receptor }, hiding),
    );
    return shiftReach(readings, spanOf(anglesDeg));
  };
  const candidates = anglesInReach(input, taken).map((angleDeg) => ({
    horizontalAngleDeg: angleDeg,
    ...reach([...taken, angleDeg]),
  }));
  return spanOf(taken) < leastShiftDeg ? { candidates } : { now: reach(taken), candidates };
}

const spanOf = (anglesDeg: readonly number[]): number => Math.max(...anglesDeg) - Math.min(...anglesDeg);

function anglesInReach({ reachDeg }: TubeShiftInput, taken: readonly number[]): number[] {
  const low = Math.ceil(-reachDeg.distal / stepDeg);
  const high = Math.floor(reachDeg.mesial / stepDeg);
  return Array.from({ length: high - low + 1 }, (_, index) => stepDeg * (low + index)).filter((angleDeg) =>
    taken.every((one) => Math.abs(one - angleDeg) >= stepDeg / 2),
  );
}

interface Supposing {
  readonly receptor: Receptor;
  readonly course: SupposedCourse;
}

/** The bend that is looked for, to buccal and to lingual, on the film nearest to straight on, for each kind of receptor. */
function coursesOf(input: TubeShiftInput, hiding: number, angleDeg: number): Supposing[] {
  const { views, wanted, sigmaMm } = input;
  const points = levelViews(twoViewInput.parse({ views }))[hiding]?.points ?? [];
  const step = Math.max(1, Math.ceil(points.length / mostPoints));
  const film = points.filter((_, index) => index % step === 0 || index === points.length - 1);
  const bend = supposedBend(film, sigmaMm);
  const receptors = input.receptor === "unknown" ? (["turnsWithBeam", "fixed"] as const) : [input.receptor];
  return receptors.flatMap((receptor) =>
    [wanted.outOfFilmDeg, -wanted.outOfFilmDeg].map((outOfFilmDeg): Supposing => {
      const places = supposedCanal(film, { outOfFilmDeg, angleDeg, receptor, bend });
      return { receptor, course: supposedCourse(places, sigmaMm, { angle: radiansOf(deg(angleDeg)), receptor }) };
    }),
  );
}
