/**
 * Units that live in the types. A bare number that stands for a length, an angle or a time gets its unit here
 * and keeps it; where a number leaves the code, its name carries the unit (`lengthMm`).
 */
declare const unit: unique symbol;
type Quantity<Unit extends string> = number & { readonly [unit]: Unit };

/** Millimetres, in the plane of the tooth unless a name says otherwise. */
export type Mm = Quantity<"mm">;
/** Pixels of one image. */
export type Px = Quantity<"px">;
/** Degrees. */
export type Deg = Quantity<"deg">;
/** Radians. */
export type Rad = Quantity<"rad">;

/** A number known to be millimetres. */
export const mm = (value: number): Mm => value as Mm;
/** A number known to be pixels. */
export const px = (value: number): Px => value as Px;
/** A number known to be degrees. */
export const deg = (value: number): Deg => value as Deg;
/** A number known to be radians. */
export const rad = (value: number): Rad => value as Rad;

/** Degrees of an angle in radians. */
export const degreesOf = (angle: Rad): Deg => deg((angle * 180) / Math.PI);
/** Radians of an angle in degrees. */
export const radiansOf = (angle: Deg): Rad => rad((angle * Math.PI) / 180);

/** A place in an image: column to the right, row down, in pixels; (0,0) is the centre of the first pixel. */
export interface ImagePoint {
  readonly column: Px;
  readonly row: Px;
}

/** A calibrated place in the plane of the tooth: x to the right, y down, in mm. Never mixed with {@link ImagePoint}. */
export interface PlanePoint {
  readonly x: Mm;
  readonly y: Mm;
}
