import { expOver } from "./exp-over.ts";
import type { ZoneName } from "./room-modes.ts";

/** One settling quantity over a stretch of time: y' = -rate y + steady + fading e^(-fadingPerMin t). */
export interface Settling {
  readonly ratePerMin: number;
  readonly start: number;
  readonly steady: number;
  readonly fading: number;
  readonly fadingPerMin: number;
  /** What it adds to the concentration of each zone. */
  readonly adds: Readonly<Record<ZoneName, number>>;
}

/** A stretch of time over which nothing changes its law. */
export interface VapourPiece {
  readonly startMin: number;
  readonly lengthMin: number;
  /** Concentration that is held all along, beside what settles. */
  readonly held: Readonly<Record<ZoneName, number>>;
  readonly settling: readonly Settling[];
  /** Vapour that came out of the liquid since the start, mg. */
  readonly released: (afterMin: number) => number;
}

const settledAt = (one: Settling, t: number): number =>
  one.start * Math.exp(-one.ratePerMin * t) +
  one.steady * t * expOver(0, -one.ratePerMin * t) +
  one.fading * t * expOver(-one.fadingPerMin * t, -one.ratePerMin * t);

const settledArea = (one: Settling, t: number): number =>
  one.start * t * expOver(0, -one.ratePerMin * t) +
  one.steady * t * t * expOver(0, 0, -one.ratePerMin * t) +
  one.fading * t * t * expOver(0, -one.fadingPerMin * t, -one.ratePerMin * t);

const settlingSlope = (one: Settling, t: number): number =>
  one.steady + one.fading * Math.exp(-one.fadingPerMin * t) - one.ratePerMin * settledAt(one, t);

const over = (piece: VapourPiece, zone: ZoneName, of: (one: Settling) => number): number =>
  piece.settling.reduce((sum, one) => sum + one.adds[zone] * of(one), 0);

/** The concentration of a zone some minutes after the start of a piece, mg/m3. */
export const levelIn = (piece: VapourPiece, zone: ZoneName, afterMin: number): number =>
  piece.held[zone] + over(piece, zone, (one) => settledAt(one, afterMin));

/** The area under the concentration of a zone since the start of a piece, mg min/m3; exact. */
export const areaIn = (piece: VapourPiece, zone: ZoneName, afterMin: number): number =>
  piece.held[zone] * afterMin + over(piece, zone, (one) => settledArea(one, afterMin));

/** How the concentration of a zone changes, mg/m3 a minute. */
export const slopeIn = (piece: VapourPiece, zone: ZoneName, afterMin: number): number =>
  over(piece, zone, (one) => settlingSlope(one, afterMin));
