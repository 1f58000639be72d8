import type { CanalBending } from "./canal-bending.ts";

/** What a measured value is beside the true one. */
export type Bound = "asMeasured" | "lower" | "upper" | "none";

/** How the course was seen and how tightly the canal holds the instrument. */
export interface Seeing {
  readonly films: "one" | "space";
  readonly longAxis: "parallel" | "notKnown";
  /** The largest turn that another view or a scan leaves open, in degrees. */
  readonly turnAtMostDeg: number | undefined;
  readonly clearance: "none" | "some" | "notKnown";
}

/** A value's bound with its reason. */
export interface NamedBound {
  readonly name: "turnDeg" | "radiusMm" | "peakStrain";
  readonly bound: Bound;
  readonly why: string;
}

/** Past this turn one film may show a sharper bend than there is: sin squared of it is 1/3. */
const mayReadSharperDeg = (Math.asin(Math.sqrt(1 / 3)) * 180) / Math.PI;

/**
 * What turn, radius and strain of a course bound of the true ones.
 * Takes how the canal bends, and how that was seen. Where two effects pull in opposite directions there is no bound.
 * @source plane geometry of parallel rays, docs/methods/bend C5; clearance: Burklein S and others, Appl Sci 2021;11:4950
 * (seen)
 */
export function strainBounds(bending: CanalBending, seeing: Seeing): NamedBound[] {
  const turn = turnBound(bending, seeing);
  const sharpness = sharpnessBound(bending, seeing);
  const opposite: Record<Bound, Bound> = { lower: "upper", upper: "lower", none: "none", asMeasured: "asMeasured" };
  return [
    { name: "turnDeg", ...turn },
    { name: "radiusMm", bound: opposite[sharpness.bound], why: sharpness.why },
    { name: "peakStrain", ...withClearance(sharpness, seeing.clearance) },
  ];
}

type Reasoned = Omit<NamedBound, "name">;

function turnBound({ bends }: CanalBending, { films, longAxis }: Seeing): Reasoned {
  if (films === "space") return inSpace;
  if (bends === undefined || bends > 1)
    return none("on one film a second bend may read larger or smaller, as the first has turned the canal");
  if (longAxis === "notKnown")
    return none("an oblique view lowers the turn, a foreshortened long axis raises it; which, one film can't show");
  return { bound: "lower", why: "on one film along the long axis a turn reads no larger than it is" };
}

function sharpnessBound({ bends, turnDeg }: CanalBending, seeing: Seeing): Reasoned {
  const { films, longAxis, turnAtMostDeg } = seeing;
  if (films === "space") return inSpace;
  if (bends === undefined || bends > 1) return none("of more than one bend one film bounds nothing");
  if (longAxis === "notKnown")
    return none("an oblique view lowers the curvature, a foreshortened long axis raises it, by 13 % at 20 degrees");
  if (turnDeg >= mayReadSharperDeg)
    return none("past 35 degrees of turn one film may show more curvature than there is, at 60 up to 1.8 times");
  if (turnAtMostDeg === undefined || turnAtMostDeg > mayReadSharperDeg)
    return none("one film can't show that the true turn is below 35 degrees, past which it may show more curvature");
  return { bound: "lower", why: "below 35 degrees of turn, along the long axis, one film shows no more curvature" };
}

function withClearance({ bound, why }: Reasoned, clearance: Seeing["clearance"]): Reasoned {
  if (clearance === "none" || bound === "none") return { bound, why };
  const wide = "in a canal wider than the instrument it straightens, and the strain is less";
  if (bound === "lower") return none(`${why}; but ${wide}: the two pull in opposite directions`);
  return { bound: "upper", why: wide };
}

const none = (why: string): Reasoned => ({ bound: "none", why });

const inSpace: Reasoned = { bound: "asMeasured", why: "the course is known in its own plane or in space" };
