import { mm, type PlanePoint } from "../../units.ts";

/** Where an outline meets itself. */
export interface OutlineCrossing {
  /** The corners at which the two stretches begin, the earlier first. */
  readonly stretches: readonly [number, number];
  readonly at: PlanePoint;
}

/**
 * The first place at which a closed outline crosses, touches or runs back along itself; undefined where it never does.
 * Takes the corners in order, each apart from its neighbours; the last joins the first.
 * @source plane geometry: signs of the areas of the four triangles; docs/methods/lesion C2
 */
export function crossingOf(corners: readonly PlanePoint[]): OutlineCrossing | undefined {
  const count = corners.length;
  const stretch = (index: number): Stretch | undefined => {
    const [from, to] = [corners[index], corners[(index + 1) % count]];
    return from && to ? { from, to } : undefined;
  };
  for (let first = 0; first < count; first++)
    for (let second = first + 1; second < count; second++) {
      const [a, b] = [stretch(first), stretch(second)];
      if (a === undefined || b === undefined) continue;
      const follows = second === first + 1 || (first === 0 && second === count - 1);
      const at = follows ? runsBack(a, b) : meeting(a, b);
      if (at !== undefined) return { stretches: [first, second], at };
    }
  return undefined;
}

interface Stretch {
  readonly from: PlanePoint;
  readonly to: PlanePoint;
}

/** Twice the area of a triangle, above 0 where the third corner lies to the one side, below 0 to the other. */
const turn = (a: PlanePoint, b: PlanePoint, c: PlanePoint): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Neighbouring stretches share a corner; they meet elsewhere only where one runs back along the other. */
function runsBack(a: Stretch, b: Stretch): PlanePoint | undefined {
  const [shared, before, after] = a.to === b.from ? [a.to, a.from, b.to] : [a.from, a.to, b.from];
  if (turn(before, shared, after) !== 0) return undefined;
  const ahead = (before.x - shared.x) * (after.x - shared.x) + (before.y - shared.y) * (after.y - shared.y);
  return ahead > 0 ? shared : undefined;
}

function meeting(a: Stretch, b: Stretch): PlanePoint | undefined {
  const apart =
    Math.max(a.from.x, a.to.x) < Math.min(b.from.x, b.to.x) ||
    Math.max(b.from.x, b.to.x) < Math.min(a.from.x, a.to.x) ||
    Math.max(a.from.y, a.to.y) < Math.min(b.from.y, b.to.y) ||
    Math.max(b.from.y, b.to.y) < Math.min(a.from.y, a.to.y);
  if (apart) return undefined;
  const [fromSide, toSide] = [turn(b.from, b.to, a.from), turn(b.from, b.to, a.to)];
  const [otherFrom, otherTo] = [turn(a.from, a.to, b.from), turn(a.from, a.to, b.to)];
  if (fromSide * toSide > 0 || otherFrom * otherTo > 0) return undefined;
  const share = fromSide === toSide ? 0 : fromSide / (fromSide - toSide);
  return { x: mm(a.from.x + share * (a.to.x - a.from.x)), y: mm(a.from.y + share * (a.to.y - a.from.y)) };
}
