import type { Canal } from "../anatomy/canal.ts";
import { type Course, courseOfPolyline, directionAt, partOf, placeAt } from "../course.ts";
import type { Ball } from "../exposure/ball-chain.ts";
import type { Strand } from "../jaw-segment.ts";
import type { ToothPoint } from "../tooth-point.ts";

/** An instrument by its geometry and alloy. */
export interface InstrumentShape {
  /** Diameter at the tip. */
  readonly sizeMm: number;
  /** Growth of the diameter, mm per mm. */
  readonly taper: number;
  /** Length of the cutting part. */
  readonly cuttingMm: number;
  readonly alloy: "steel" | "nickelTitanium";
}

/** An instrument in a canal: its line from the stop outside to the tip, and what it looks like. */
export interface PlacedInstrument {
  readonly strands: readonly Strand[];
  /** From the place where its stop sits to its tip. */
  readonly stop: ToothPoint;
  readonly tip: ToothPoint;
  /** Length from stop to tip along the instrument: what the ruler read. */
  readonly lengthMm: number;
}

/** Above the orifice an instrument straightens up: its lean dies out over this length. */
const leanMm = 4;

/** The line of an instrument: the canal down to the tip, and out of the orifice towards the handle. */
function lineOf(canal: Canal, tipAtMm: number, aboveMm: number): Course {
  const inside = partOf(canal.course, 0, tipAtMm);
  const out = directionAt(inside, 0.4);
  const orifice = placeAt(inside, 0);
  const above = Math.ceil(aboveMm / 0.1);
  const outside = Array.from({ length: above }, (_, i): ToothPoint => {
    const away = ((above - i) / above) * aboveMm;
    const lean = leanMm * (1 - Math.exp(-away / leanMm));
    return { x: orifice.x - out.x * lean, y: orifice.y - out.y * lean, z: orifice.z - away * (0.3 * out.z + 0.7) };
  });
  return courseOfPolyline([...outside, ...inside.points]);
}

const threadMm = 0.9;

/** Balls of the cutting part at one place: a core, and two edges that wind around it. */
function flutedBalls(middle: ToothPoint, radius: number, fromTipMm: number): Ball[] {
  const turn = (2 * Math.PI * fromTipMm) / (threadMm + fromTipMm * 0.03);
  const [dx, dy] = [Math.cos(turn) * radius * 0.55, Math.sin(turn) * radius * 0.55];
  const ball = (x: number, y: number, r: number): Ball => ({ middle: { x, y, z: middle.z }, rx: r, ry: r, rz: r });
  return [
    ball(middle.x, middle.y, radius * 0.72),
    ball(middle.x + dx, middle.y + dy, radius * 0.45),
    ball(middle.x - dx, middle.y - dy, radius * 0.45),
  ];
}

/** Balls of an instrument between two distances from its tip. */
function ballsOf(line: Course, shape: InstrumentShape, part: { fromTipMm: number; toTipMm: number }): Ball[] {
  const balls: Ball[] = [];
  for (let fromTip = part.fromTipMm; fromTip <= Math.min(part.toTipMm, line.lengthMm); fromTip += 0.04) {
    const middle = placeAt(line, line.lengthMm - fromTip);
    const cone = (shape.sizeMm + shape.taper * Math.min(fromTip, shape.cuttingMm)) / 2;
    const radius = fromTip < 0.12 ? cone * (0.35 + (0.65 * fromTip) / 0.12) : cone;
    if (fromTip < shape.cuttingMm) balls.push(...flutedBalls(middle, radius, fromTip));
    else balls.push({ middle, rx: radius, ry: radius, rz: radius });
  }
  return balls;
}

/**
 * An instrument in a canal.
 * Takes the tip's place in mm from the orifice, and the length that its stop was set to. What runs inside the canal takes the
 * place of soft tissue, the rest stands in the open.
 */
export function instrumentIn(
  canal: Canal,
  shape: InstrumentShape,
  at: { readonly tipAtMm: number; readonly stopMm: number },
): PlacedInstrument {
  const line = lineOf(canal, at.tipAtMm, 26 - at.tipAtMm);
  const inside = ballsOf(line, shape, { fromTipMm: 0, toTipMm: at.tipAtMm });
  const outside = ballsOf(line, shape, { fromTipMm: at.tipAtMm, toTipMm: line.lengthMm });
  const stop = placeAt(line, line.lengthMm - at.stopMm);
  const disc = [-0.3, -0.15, 0, 0.15, 0.3].map(
    (dz): Ball => ({ middle: { ...stop, z: stop.z - 0.4 + dz }, rx: 0.95, ry: 0.95, rz: 0.3 }),
  );
  return {
    strands: [
      { chain: { balls: inside }, material: shape.alloy, replaces: "soft" },
      { chain: { balls: outside }, material: shape.alloy, replaces: "nothing" },
      { chain: { balls: disc }, material: "silicone", replaces: "nothing" },
    ],
    stop,
    tip: placeAt(line, line.lengthMm),
    lengthMm: at.stopMm,
  };
}

/** A broken-off tip that stayed in a canal: its tip lies `tipAtMm` from the orifice. */
export function fragmentIn(
  canal: Canal,
  shape: InstrumentShape,
  at: { readonly tipAtMm: number; readonly lengthMm: number },
): Strand {
  const line = lineOf(canal, at.tipAtMm, 1);
  return {
    chain: { balls: ballsOf(line, shape, { fromTipMm: 0, toTipMm: at.lengthMm }) },
    material: shape.alloy,
    replaces: "soft",
  };
}
