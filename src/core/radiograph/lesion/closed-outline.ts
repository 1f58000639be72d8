import { faultAt } from "../../refusal.ts";
import { mm, type PlanePoint } from "../../units.ts";
import type { LesionInput } from "./lesion-input.ts";
import { areaOf } from "./outline-area.ts";
import { crossingOf } from "./outline-crossing.ts";

/** Two places nearer together than this are one. */
const nearestMm = 1e-9;

/**
 * The corners of an outline that encloses one piece of the plane, none of them twice in a row.
 * Takes the corners as given, of which the first may stand again at the end, and the path at which they stand.
 * @throws Refusal `trace.tooFewPoints` under 3 different corners; `input.impossible` where the outline crosses or touches
 * itself, with the place, or encloses nothing.
 * @source plane geometry; docs/methods/lesion C2
 */
export function closedOutline(points: LesionInput["points"], path = "points"): PlanePoint[] {
  const places = points.map(([x, y]) => ({ x: mm(x), y: mm(y) }));
  const kept = places.filter((place, index) => !isSame(place, places.at(index - 1)) || places.length === 1);
  if (kept.length < 3) throw tooFew(path, points.length, kept.length);
  const crossing = crossingOf(kept);
  if (crossing !== undefined) {
    const given = crossing.stretches.map((index) => places.indexOf(kept[index] ?? kept[0] ?? origin));
    const { x, y } = crossing.at;
    throw faultAt(
      `${path}[${given[1]}]`,
      `the outline meets itself at [${x.toFixed(2)}, ${y.toFixed(2)}]: the stretch from corner ${given[0]} and the one ` +
        `from corner ${given[1]}; an outline that goes round once is accepted`,
    );
  }
  if (Math.abs(areaOf(kept)) < nearestMm)
    throw faultAt(path, "all corners lie in one line, which encloses nothing; go round the lesion");
  return kept;
}

const origin: PlanePoint = { x: mm(0), y: mm(0) };

const isSame = (a: PlanePoint, b: PlanePoint | undefined): boolean =>
  b !== undefined && Math.hypot(a.x - b.x, a.y - b.y) < nearestMm;

const tooFew = (path: string, given: number, different: number) =>
  faultAt(
    path,
    `holds ${given} corners, ${different} of them apart from their neighbour; at least 3 are needed to enclose an area`,
    "trace.tooFewPoints",
  );
