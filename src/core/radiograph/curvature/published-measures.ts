import { bentPlace } from "../../geometry/bent-line.ts";
import { type Mm, mm, type Rad, rad } from "../../units.ts";

/** One bend with the straight parts that belong to it. */
export interface BendMeasured {
  /** Straight part before the bend (L1). */
  readonly before: Mm;
  /** Length of the bend along the canal; R t for an arc. */
  readonly length: Mm;
  /** Angle between the tangents before and after it (t); never negative. */
  readonly turn: Rad;
  /** The share of its length that each of its two ramps takes; 0 for an arc. */
  readonly rampShare: number;
  /** Straight part after the bend (L2). */
  readonly after: Mm;
}

/** Every published measure of one bend. */
export interface PublishedMeasures {
  readonly schneider: Rad;
  /** Absent where the course of this bend is shorter than the length of the apical line. */
  readonly weine: Rad | undefined;
  readonly pruett: Rad;
  /** Absent for a bend of no angle. */
  readonly pruettRadius: Mm | undefined;
  readonly accessAngle: Rad;
  /** From the point of departure to the line from orifice to foramen. */
  readonly height: Mm;
  /** Along that line from the orifice to the foot of the height. */
  readonly heightDistance: Mm;
  /** The largest distance between the canal and that line. */
  readonly heightMax: Mm;
}

/**
 * The published measures of one bend, by the closed forms (a ramped bend by the same constructions on its own course).
 * Takes the bend with its straight parts and the length s of canal over which the apical line of Weine is drawn.
 * Gives angles 0 to pi and lengths in mm.
 * @source constructions of Schneider 1971, Weine 1982, Pruett 1997 and Gunday 2005 (memory); plane geometry,
 * docs/methods/curvature.md C7 to C11
 */
export function publishedMeasures(bend: BendMeasured, apicalLine: Mm): PublishedMeasures {
  const foramen = placeFromDeparture(bend, bend.length + bend.after);
  // C7: tan S = (R(1-cos t) + L2 sin t) / (R sin t + L2 cos t)
  const schneider = rad(Math.abs(Math.atan2(foramen.aside, foramen.along)));
  // C10: the same place seen from the orifice
  const access = Math.abs(Math.atan2(foramen.aside, bend.before + foramen.along));
  const height = bend.before * Math.sin(access);
  return {
    schneider,
    weine: weineAngle(bend, foramen, apicalLine),
    pruett: bend.turn,
    pruettRadius: pruettRadius(bend),
    accessAngle: rad(access),
    height: mm(height),
    heightDistance: mm(bend.before * Math.cos(access)),
    heightMax: mm(Math.max(height, largestDistance(bend, access))),
  };
}

/** C9: the circle that touches both tangents where the canal leaves them: R = T / tan(t/2). */
function pruettRadius(bend: BendMeasured): Mm | undefined {
  if (bend.turn === 0) return undefined;
  if (bend.rampShare === 0) return mm(bend.length / bend.turn);
  const end = placeFromDeparture(bend, bend.length);
  // A bend with equal ramps is its own mirror image: both tangents are as long from their crossing.
  const tangentLength = end.along - end.aside / Math.tan(bend.turn);
  return mm(tangentLength / Math.tan(bend.turn / 2));
}

/** C8: the angle between the coronal axis and the chord of the last length s of the canal. */
function weineAngle(bend: BendMeasured, foramen: Place, apicalLine: Mm): Rad | undefined {
  const start = bend.length + bend.after - apicalLine;
  if (start < -bend.before) return undefined;
  const from = placeFromDeparture(bend, start);
  return rad(Math.abs(Math.atan2(foramen.aside - from.aside, foramen.along - from.along)));
}

/** C11: the canal is farthest from the line orifice-foramen where its tangent runs along that line. */
function largestDistance(bend: BendMeasured, access: number): number {
  if (bend.rampShare === 0)
    return bend.before * Math.sin(access) + (bend.turn === 0 ? 0 : (bend.length / bend.turn) * (1 - Math.cos(access)));
  let low = 0;
  let high: number = bend.length;
  for (let round = 0; round < 40; round++) {
    const middle = (low + high) / 2;
    if (placeFromDeparture(bend, middle).turned < access) low = middle;
    else high = middle;
  }
  const top = placeFromDeparture(bend, low);
  return (bend.before + top.along) * Math.sin(access) - top.aside * Math.cos(access);
}

interface Place {
  readonly along: number;
  readonly aside: number;
  readonly turned: number;
}

/** A place on the bend's course, counted along the coronal axis from the point where the canal leaves it. */
function placeFromDeparture(bend: BendMeasured, distance: number): Place {
  if (distance <= 0 || bend.length === 0) return { along: distance, aside: 0, turned: 0 };
  if (bend.rampShare === 0) return placeOnArc(bend, distance);
  const ramp = bend.rampShare * bend.length;
  const largest = bend.turn / (bend.length * (1 - bend.rampShare));
  const rate = ramp === 0 ? 0 : largest / ramp;
  let place: Place = { along: 0, aside: 0, turned: 0 };
  let left = distance;
  for (const [length, curvature, change] of [
    [ramp, 0, rate],
    [bend.length - 2 * ramp, largest, 0],
    [ramp, largest, -rate],
    [Number.POSITIVE_INFINITY, 0, 0],
  ] as const) {
    place = after(place, bentPlace(curvature, change, Math.min(left, length)));
    left -= length;
    if (left <= 0) break;
  }
  return place;
}

/** The same for an arc: the place on it, and beyond it on the tangent at its end. */
function placeOnArc(bend: BendMeasured, distance: number): Place {
  const inside = Math.min(distance, bend.length);
  const arc = bentPlace(bend.turn / bend.length, 0, inside);
  const rest = distance - inside;
  return rest === 0 ? arc : after(arc, { along: rest, aside: 0, turned: 0 });
}

function after(place: Place, step: Place): Place {
  const cosine = Math.cos(place.turned);
  const sine = Math.sin(place.turned);
  return {
    along: place.along + step.along * cosine - step.aside * sine,
    aside: place.aside + step.along * sine + step.aside * cosine,
    turned: place.turned + step.turned,
  };
}
