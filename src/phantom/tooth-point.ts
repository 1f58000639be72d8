/**
 * A place in the tooth's own axes, in mm: x from mesial to distal, y from lingual to buccal, z from crown to apex;
 * (0,0,0) is the middle of the tooth at the height of its cementoenamel junction.
 */
export interface ToothPoint {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** The place with these three coordinates, in mm. */
export const toothPoint = (x: number, y: number, z: number): ToothPoint => ({ x, y, z });

/** The place a fraction of the way from one place to another; 0 gives the first, 1 the second. */
export const between = (a: ToothPoint, b: ToothPoint, fraction: number): ToothPoint => ({
  x: a.x + (b.x - a.x) * fraction,
  y: a.y + (b.y - a.y) * fraction,
  z: a.z + (b.z - a.z) * fraction,
});

/** Distance of two places in mm. */
export const distanceMm = (a: ToothPoint, b: ToothPoint): number => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);

/** A box with edges along the tooth's axes. */
export interface ToothBox {
  readonly from: ToothPoint;
  readonly to: ToothPoint;
}

/** The box around a place that reaches this far to each side. */
export const boxAround = (middle: ToothPoint, reach: ToothPoint): ToothBox => ({
  from: toothPoint(middle.x - reach.x, middle.y - reach.y, middle.z - reach.z),
  to: toothPoint(middle.x + reach.x, middle.y + reach.y, middle.z + reach.z),
});
