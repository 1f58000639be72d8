import { type ToothBox, type ToothPoint, toothPoint } from "../tooth-point.ts";
import { type Tooth, type ToothShape, toothOf } from "./tooth.ts";

/** A tooth at its place in the row: the tooth that is treated stands at (0,0,0), untilted. */
export interface PlacedTooth {
  readonly tooth: Tooth;
  readonly at: ToothPoint;
  /** Above 0 the crown leans to mesial and the roots to distal. */
  readonly tiltDeg: number;
  /** The box that holds it in the axes of the treated tooth. */
  readonly box: ToothBox;
  /** A place of the treated tooth's axes in this tooth's own. */
  readonly toOwn: (x: number, y: number, z: number) => ToothPoint;
  /** A place of this tooth's own axes in the treated tooth's. */
  readonly fromOwn: (place: ToothPoint) => ToothPoint;
}

/** A tooth set at a place in the row. */
export function placedTooth(shape: ToothShape, at: ToothPoint, tiltDeg = 0): PlacedTooth {
  const tooth = toothOf(shape);
  const cos = Math.cos((tiltDeg * Math.PI) / 180);
  const sin = Math.sin((tiltDeg * Math.PI) / 180);
  const toOwn = (x: number, y: number, z: number): ToothPoint => {
    const [dx, dz] = [x - at.x, z - at.z];
    return { x: dx * cos - dz * sin, y: y - at.y, z: dx * sin + dz * cos };
  };
  const fromOwn = (p: ToothPoint): ToothPoint => ({
    x: at.x + p.x * cos + p.z * sin,
    y: at.y + p.y,
    z: at.z - p.x * sin + p.z * cos,
  });
  return { tooth, at, tiltDeg, box: turnedBox(tooth.box, fromOwn), toOwn, fromOwn };
}

function turnedBox(box: ToothBox, fromOwn: (p: ToothPoint) => ToothPoint): ToothBox {
  const ends = [box.from, box.to];
  const corners = ends.flatMap(({ x }) => ends.flatMap(({ y }) => ends.map(({ z }) => fromOwn(toothPoint(x, y, z)))));
  const low = (axis: "x" | "y" | "z"): number => Math.min(...corners.map((corner) => corner[axis]));
  const high = (axis: "x" | "y" | "z"): number => Math.max(...corners.map((corner) => corner[axis]));
  return { from: toothPoint(low("x"), low("y"), low("z")), to: toothPoint(high("x"), high("y"), high("z")) };
}
